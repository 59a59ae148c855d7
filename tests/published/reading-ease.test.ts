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

  // Counts and score of the long passage in the tests of textstat, a readability library under the MIT licence
  // (tests/backend: test_count_words, test_count_sentences, test_count_syllables, test_flesch_reading_ease).
  test('17 sentences, 372 words and 519 syllables: 66.594', () => {
    expect(readingEase({ sentences: 17, words: 372, syllables: 519 })).toBeCloseTo(66.594, 3);
  });

  // Whole passages, with what was published of each. Syllables are counted by rule here, by a dictionary of hyphens or of
  // sounds there: of a passage as easy as ours, two points of a hundred are allowed for words the two divide differently.
  test.each([
    {
      // The easy passage in the tests of textstat (tests/backend/resources.py): 11 sentences, 81.482.
      passage:
        `Anna and her family love doing puzzles. Anna is best at little puzzles. Anna and her brother work on medium
        size puzzles together. Anna's Brother likes puzzles with cars in them. When the whole family does a puzzle, they do
        really big puzzles. It can take them a week to finish a really big puzzle. Last year they did a puzzle with 500
        pieces! Anna tries to finish one small puzzle a day by her. Her puzzles have about 50 pieces. They all glue their
        favorite puzzles together and frame them. The puzzles look so nice on the wall.`.replace(/\s+/g, ' '),
      counts: { sentences: 11 },
      ease: 81.482,
      within: 2,
    },
    {
      // The worked example of the encyclopedia article on the Flesch and Kincaid tests: 13 words and 24 syllables, as
      // confirmed in two copies of it; its score of 37.5 is from memory, and is what the two counts come to.
      passage: 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.',
      counts: { sentences: 1, words: 13, syllables: 24 },
      ease: 37.5,
      within: 0.05,
    },
  ])('$ease ± $within: $passage', ({ passage, counts, ease, within }) => {
    const counted = countText(passage);
    expect(counted).toMatchObject(counts);
    expect(Math.abs(readingEase(counted) - ease)).toBeLessThanOrEqual(within);
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
