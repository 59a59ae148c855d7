/** What a review would write on a client's page, where that is more than figures and the page's own words. */
import { listed } from './problems/said.js';
import { type Speech, speechOf } from './speech.js';

export interface ReviewEditWords {
  readonly by: string;
  readonly testAgain: (names: readonly string[]) => string;
}

/** English until another language has them. A client reads the line about tests at the head of the next session. */
export function sayReviewEdits(language: string, coach: string): ReviewEditWords {
  const { words }: Speech = speechOf(language);
  return {
    by: coach,
    testAgain: (names) =>
      `We test again, once you are warm: ${listed(
        names.map((name) => words.sets.inSentence(name)),
        'and',
      )}.`,
  };
}
