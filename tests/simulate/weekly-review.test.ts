/**
 * What the coach is told of the simulated people, Sunday by Sunday. `CHALKLEAF_ALOUD=folder` writes it there, to be read.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { HURT, type Person, STALLS, THRIVES, VANISHES } from './people.js';
import { reviewWeek, tellReviews } from './review-week.js';
import { runBlocks } from './run-blocks.js';

const WHOLE = [3, 6];

function reviewed(person: Person) {
  const run = runBlocks(person, 1);
  const folder = process.env.CHALKLEAF_ALOUD;
  if (folder) writeFileSync(join(folder, `${person.name}-reviews.txt`), `${tellReviews(run, WHOLE)}\n`);
  return run.weeks.map((week) => ({ week, review: reviewWeek(person, week) }));
}
const proposed = ({ review }: ReturnType<typeof reviewed>[number]): readonly string[] =>
  review.proposals.map(({ reason }) => reason.rule);

describe('reviewed weekly', () => {
  test('who thrives is never a worry, and each block’s end leads to the next', () => {
    const all = reviewed(THRIVES);
    for (const { review } of all) expect(['alarm', 'pain', 'gap']).not.toContain(review.need);
    expect(all.flatMap(proposed)).toContain('propose-next-block');
    expect(all.flatMap(proposed)).not.toContain('propose-caution');
  });

  test('who stalls: what can be lifted now is shown with its spread, and nobody is blamed for it', () => {
    const all = reviewed(STALLS);
    const last = all.at(-1)?.review ?? expect.fail();
    expect(last.abilities.length).toBeGreaterThan(0);
    expect(all.flatMap(proposed)).not.toContain('propose-caution');
  });

  test('who is hurt is written to in that week, and a caution is proposed; later it is quiet', () => {
    const all = reviewed(HURT);
    const third = all.find(({ week }) => week.number === 3) ?? expect.fail();
    expect(third.review.need).toBe('pain');
    expect(proposed(third)).toEqual(expect.arrayContaining(['propose-message', 'propose-caution']));
    expect(all.at(-1)?.review.need).not.toBe('pain');
  });

  test('who vanishes is written to, and the break is proposed with its days', () => {
    const all = reviewed(VANISHES);
    const away = all.filter(({ week }) => week.number >= 4 && week.number <= 6);
    expect(away.flatMap(proposed)).toEqual(expect.arrayContaining(['propose-message', 'propose-break']));
    expect(away.at(-1)?.review.silentDays).toBeGreaterThanOrEqual(14);
    expect(away.map(({ review }) => review.need)).toEqual(['gap', 'gap', 'gap']);
    const back = all.filter(({ week }) => week.number >= 7);
    expect(back.map(({ review }) => review.need)).not.toContain('gap');
  });
});
