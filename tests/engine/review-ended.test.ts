/** Review of a block that holds no more: withdrawn, over, or cut short by a break. */
import { expect, test } from 'vitest';
import { exercisesById } from '../../src/engine/block-context.js';
import { planReview } from '../../src/engine/review/plan-review.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { History } from '../../src/model/history.js';
import type { Review } from '../../src/model/review.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { sayReview, sayReviewLine } from '../../src/words/say-review.js';
import { on } from './make-block.js';
import { doneUpTo, EXERCISES, reviewOf, theClient, theProgramme } from './review-made.js';

const rules = ({ proposals }: Review): readonly string[] => proposals.map(({ reason }) => reason.rule);
const inputOf = ({ proposals }: Review, rule: string, name: string) =>
  proposals.find(({ reason }) => reason.rule === rule)?.reason.inputs.find((input) => input.name === name)?.value;

const withdrawnReview = (history: History, today: string, withdrawn: string): Review =>
  planReview({
    client: theClient(),
    history,
    rules: layOverrides([]).value,
    today: on(today),
    exercises: exercisesById(EXERCISES),
    programmes: [theProgramme],
    words: { by: 'from marks', testAgain: () => '' },
    withdrawn: on(withdrawn),
  });

const NAMES = { ...PLAIN_NAMES, client: 'Ada', programme: 'Base' };

test('a withdrawn edition is told as withdrawn, and nobody is silent or away from it', () => {
  // Six sessions done up to Friday 15 January; withdrawn on the Sunday after, and looked at three weeks later.
  const review = withdrawnReview(doneUpTo(6), '2027-02-05', '2027-01-17');
  expect(review.need).toBe('withdrawn');
  expect(review.silentDays).toBeNull();
  expect(rules(review)).not.toContain('propose-message');
  expect(rules(review)).not.toContain('propose-break');
  expect(sayReviewLine(review, NAMES, 'en')).toContain('withdrawn      on Sun 17 Jan, 6 of 6 sessions');
  expect(sayReview(review, NAMES, 'en').slice(0, 3).join(' ')).toContain('withdrawn on Sun 17 Jan');
  // The same without a withdrawal is silence.
  expect(reviewOf({ history: doneUpTo(6), today: '2027-02-05' }).need).toBe('gap');
});

test('days away before a withdrawal are still proposed as a break, up to the day before it', () => {
  const review = withdrawnReview(doneUpTo(3), '2027-02-10', '2027-01-30');
  expect(inputOf(review, 'propose-break', 'from')).toBe('2027-01-09');
  expect(inputOf(review, 'propose-break', 'until')).toBe('2027-01-29');
});

test('a withdrawal that is still to come says nothing yet', () => {
  expect(withdrawnReview(doneUpTo(3), '2027-01-09', '2027-01-17').need).not.toBe('withdrawn');
});

test('no gap counts days after the last day of the block', () => {
  const review = reviewOf({ history: doneUpTo(9), today: '2027-03-20' });
  expect(review.block?.ends).toBe('2027-02-14');
  expect(inputOf(review, 'propose-break', 'from')).toBe('2027-01-23');
  expect(inputOf(review, 'propose-break', 'until')).toBe('2027-02-14');
  // From Friday 22 January to Sunday 14 February.
  expect(review.silentDays).toBe(23);
});

test('what a break took was planned once: a block of which half was lost is proposed once more', () => {
  const breaks = [
    { from: on('2027-01-18'), until: on('2027-02-14'), cause: 'away', place: theClient().place },
  ] as const;
  const review = reviewOf({ history: doneUpTo(6), client: { breaks }, today: '2027-02-15' });
  expect(inputOf(review, 'propose-repeat', 'done')).toBe(6);
  expect(inputOf(review, 'propose-repeat', 'planned')).toBe(18);
  const said = sayReview(review, NAMES, 'en').join('\n');
  expect(said).toContain('0 of 3 (3 in a break)');
  expect(said).not.toContain('0 of 0');
  expect(sayReviewLine(review, NAMES, 'en')).toContain('6 of 18 sessions');
});
