/** The weekly review of one simulated week, as the program would print it for the coach. */

import { exercisesById } from '../../src/engine/block-context.js';
import { planReview } from '../../src/engine/review/plan-review.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Review } from '../../src/model/review.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { namesAmong } from '../../src/words/say-names.js';
import { sayReview, sayReviewLine } from '../../src/words/say-review.js';
import { sayReviewEdits } from '../../src/words/say-review-edits.js';
import { speechOf } from '../../src/words/speech.js';
import type { Person } from './people.js';
import type { ReviewedWeek, Run } from './run-blocks.js';

const LANGUAGE = 'en-GB';

export function reviewWeek({ library }: Person, { client, history, today }: ReviewedWeek): Review {
  return planReview({
    client,
    history,
    rules: layOverrides(library.overrides).value,
    today,
    exercises: exercisesById(library.exercises),
    programmes: library.programmes,
    words: sayReviewEdits(LANGUAGE, library.studio.coach),
  });
}

function namesIn({ library }: Person, { client }: ReviewedWeek, review: Review) {
  const exercises = exercisesById(library.exercises);
  const called = (id: string): string => exercises.get(id)?.name ?? PLAIN_NAMES.exercise(id);
  const ids = [...review.rows, ...review.abilities].map(({ exercise }): string => exercise);
  const programme = library.programmes.find(({ id }) => id === client.programme)?.name ?? '';
  const exercise = namesAmong(ids, called, speechOf(LANGUAGE));
  return { client: client.name, programme, exercise, load: PLAIN_NAMES.load };
}

/** One line for every Sunday, then the whole review of some of them. */
export function tellReviews({ person, weeks }: Run, whole: readonly number[]): string {
  const read = weeks.map((week) => ({ week, review: reviewWeek(person, week) }));
  const lines = read.map(({ week, review }) => {
    return `${String(week.number).padStart(2)} ${sayReviewLine(review, namesIn(person, week, review), LANGUAGE)}`;
  });
  const pages = read
    .filter(({ week }) => whole.includes(week.number))
    .map(({ week, review }) => sayReview(review, namesIn(person, week, review), LANGUAGE).join('\n'));
  return [lines.join('\n'), ...pages].join(`\n\n${'-'.repeat(80)}\n`);
}
