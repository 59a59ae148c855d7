/** The Flesch reading ease against the figures published with it. */
import { describe, expect, test } from 'vitest';
import { countSyllables, countText, readingEase } from '../studio/reading-ease.js';

describe('reading ease', () => {
  // Flesch 1948; the constants as printed on an archived page of the United States government on plain writing.
  test.each([
    { wordsASentence: 15, syllablesAWord: 1.5, ease: 64.71 },
    { wordsASentence: 20, syllablesAWord: 1.2, ease: 85.015 },
  ])('$wordsASentence words a sentence, $syllablesAWord syllables a word: $ease', (row) => {
    const words = 600;
    const counts = { words, sentences: words / row.wordsASentence, syllables: words * row.syllablesAWord };
    expect(readingEase(counts)).toBeCloseTo(row.ease, 3);
  });

  // Syllables as any English dictionary divides these words.
  test.each([
    ['bell', 1],
    ['knees', 1],
    ['heel', 1],
    ['through', 1],
    ['toes', 1],
    ['breathe', 1],
    ['laces', 2],
    ['little', 2],
    ['balance', 2],
    ['floor', 1],
    ['asked', 1],
    ['folded', 2],
    ['shoulder', 2],
    ['elbow', 2],
    ['quietly', 3],
    ['squat', 1],
    ['breastbone', 2],
    ['forearm', 2],
    ['opposite', 3],
    ['ceiling', 2],
    ['safely', 2],
    ['handle', 2],
    ['stretches', 2],
    ['anybody', 4],
  ] as const)('%s has %i', (word, syllables) => {
    expect(countSyllables(word)).toBe(syllables);
  });

  test('a line of text is counted whole', () => {
    expect(countText('Sit down. Stand up, slowly.')).toEqual({ sentences: 2, words: 5, syllables: 6 });
  });
});
