/** Words parted at a line's end: where dictionaries part them, never near an edge, never in a name, never in silence. */
import { beforeAll, describe, expect, test } from 'vitest';
import { loadHyphenation, type PartWord } from '../../src/print/hyphenation.js';

let part: PartWord;
beforeAll(async () => {
  part = await loadHyphenation();
});
const shown = (word: string, language: string): string => part(word, language).join('-');

describe('a word parts where a dictionary parts it', () => {
  // British divisions by origin and sound; from memory, no source at hand.
  test.each([
    ['comfortably', 'com-fort-ably'],
    ['understand', 'under-stand'],
    ['strengthening', 'strength-en-ing'],
    ['repetitions', 'repe-ti-tions'],
  ])('English: %s', (word, parted) => {
    expect(shown(word, 'en-GB')).toBe(parted);
  });
  // Joints of compounds first, then syllables; from memory, no source at hand.
  test.each([
    ['styrketrening', 'styrke-tre-ning'],
    ['treningsøkten', 'tre-nings-øk-ten'],
    ['kroppsvekten', 'kropps-vek-ten'],
  ])('Norwegian: %s', (word, parted) => {
    expect(shown(word, 'nb')).toBe(parted);
  });
});

test('a word of one language is not parted by the rules of another', () => {
  expect(part('styrketrening', 'nb')).not.toEqual(part('styrketrening', 'en'));
});

test.each([
  ['too short', 'squat', 'en'],
  ['a name', 'Harrowbyside', 'en'],
  ['capitals', 'PHYSIOTHERAPY', 'en'],
  ['a figure in it', 'a4understanding', 'en'],
  ['a language without patterns here', 'Trainingseinheit'.toLowerCase(), 'de'],
])('kept whole: %s', (_, word, language) => {
  expect(part(word, language)).toEqual([word]);
});

test('three letters at least stand on either side, and nothing of the word is lost', () => {
  const words =
    'about between exercise physiotherapist shoulders comfortable øvelsene skulderbladene fysioterapeut økter'.split(
      ' ',
    );
  for (const word of words) {
    for (const language of ['en', 'nb']) {
      const parts = part(word, language);
      expect(parts.join('')).toBe(word);
      if (parts.length === 1) continue;
      expect(parts[0]?.length).toBeGreaterThanOrEqual(3);
      expect(parts.at(-1)?.length).toBeGreaterThanOrEqual(3);
    }
  }
});
