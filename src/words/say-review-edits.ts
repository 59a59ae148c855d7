/** What a review would write on a client's page, where that is more than figures and the page's own words. */
import { speechOf } from './speech.js';

export interface ReviewEditWords {
  readonly by: string;
  /** A client reads it at the head of the next session. */
  readonly testAgain: (names: readonly string[]) => string;
}

/** `language` is the client's own, a BCP 47 tag. */
export function sayReviewEdits(language: string, coach: string): ReviewEditWords {
  const { sets, booklet } = speechOf(language).words;
  return { by: coach, testAgain: (names) => booklet.testAgain(names.map((name) => sets.inSentence(name))) };
}
