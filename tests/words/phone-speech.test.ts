/** What the training screens say in each language: short, whole, its own, and no more of a language than they need. */
import { describe, expect, test } from 'vitest';
import { BOOKLET_LANGUAGES } from '../../src/model/languages.js';
import { englishPhone } from '../../src/words/english-phone.js';
import { norwegianPhone } from '../../src/words/norwegian-phone.js';
import type { PhoneWords } from '../../src/words/phone-words.js';
import { speechOf } from '../../src/words/speech.js';
import { phoneSpeechOf } from '../fixtures/phone-speech.js';
import { bannedIn, longestSentence } from './ban-list.js';

type Said = readonly (readonly [string, string])[];

/** What a sentence may be given: counts and what is said already, in every mixture a screen could have. */
const GIVEN: readonly (readonly (number | string)[])[] = [
  [0, 1],
  [1, 1],
  [1, 2],
  [2, 60],
  [3, 180],
  [12, 90],
];
/** Of these it is given a side of the body, or what is said already. */
const SIDED = /\/ofSide$/;
const SORE = /\/whatHurts$/;
const TEXTED = /\/(hurtOn|startSession|finished|nextIs|lastTime|paper|instead)$/;

function givenTo(place: string): readonly (readonly (number | string)[])[] {
  if (SORE.test(place))
    return [
      ['Knee', 'left'],
      ['Knee', 'right', 3],
    ];
  if (SIDED.test(place)) return [['left'], ['right']];
  return TEXTED.test(place) ? [['Session A', 'Mon 4 Jan']] : GIVEN;
}

/** Everything a record of words can say, with the place it stands in. */
function everythingIn(words: unknown, place = ''): Said {
  if (typeof words === 'string') return [[place, words]];
  if (typeof words === 'function') {
    return givenTo(place).flatMap((given) =>
      everythingIn(Reflect.apply(words, undefined, given), `${place}(${given.join()})`),
    );
  }
  if (typeof words !== 'object' || words === null) return [];
  return Object.entries(words).flatMap(([key, one]) => everythingIn(one, `${place}/${key}`));
}

const LANGUAGES = [
  ['en', englishPhone],
  ['nb', norwegianPhone],
] as const satisfies readonly (readonly [string, PhoneWords])[];

test('every language a booklet is made in has its training screens, in the same words as its booklet', () => {
  expect(LANGUAGES.map(([tag]) => tag)).toEqual([...BOOKLET_LANGUAGES]);
  for (const [tag, words] of LANGUAGES) {
    const { phone, ...rest } = phoneSpeechOf(tag).words;
    expect(phone).toBe(words);
    expect(speechOf(tag).words).toMatchObject(rest);
  }
  expect(phoneSpeechOf('nb-NO').words.phone).toBe(norwegianPhone);
  expect(phoneSpeechOf('vi').words.phone).toBe(englishPhone);
});

describe.each(LANGUAGES)('%s', (_, words) => {
  const said = everythingIn(words);

  test('no sentence has more than 12 words, or is empty, or broken', () => {
    expect(said.length).toBeGreaterThan(300);
    for (const [place, text] of said) {
      expect(text.trim(), place).toBe(text);
      expect(text, place).not.toBe('');
      expect(longestSentence(text), `${place}: ${text}`).toBeLessThanOrEqual(12);
      expect(text, place).not.toMatch(/undefined|NaN| {2}|\.\.| [.,:;?]/);
      expect(bannedIn(text), place).toEqual([]);
    }
  });

  test('two different answers to one question never read alike', () => {
    for (const record of [words.today, words.take, words.parts, words.unit, words.signs, words.side]) {
      const answers = Object.values(record);
      expect(new Set(answers).size).toBe(answers.length);
    }
  });
});

test('nothing of the one is left in the other', () => {
  const english = new Map(everythingIn(englishPhone));
  const same = everythingIn(norwegianPhone).filter(([place, text]) => english.get(place) === text);
  // The trade’s own words are the same in both.
  expect([...new Set(same.map(([, text]) => text))].sort()).toEqual(['Start', 'Test.']);
});

test('one takes its own form in Norwegian, whatever it counts', () => {
  const { wasOnSet, shortIs, away, notSent, marksKept } = norwegianPhone;
  const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
  expect(wasOnSet(2, 1)).toBe('Du var på sett 2 for ett minutt siden.');
  expect(wasOnSet(2, 4)).toBe('Du var på sett 2 for fire minutter siden.');
  expect(wasOnSet(2, 180)).toBe('Du var på sett 2 for tre timer siden.');
  expect(plain(shortIs(1, 9))).toBe('I dag: én øvelse, omtrent 9 minutter. Det teller.');
  expect(away(9)[0]).toBe('Det er ni dager siden sist.');
  expect([1, 2].map((n) => plain(notSent(n)))).toEqual([
    '1 økt er ikke sendt til treneren ennå.',
    '2 økter er ikke sendt til treneren ennå.',
  ]);
  expect([1, 2].map((n) => plain(marksKept(n)))).toEqual([
    '1 strek er lagret på denne telefonen.',
    '2 streker er lagret på denne telefonen.',
  ]);
});
