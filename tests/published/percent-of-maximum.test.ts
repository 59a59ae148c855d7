/**
 * Load as a part of one maximum against reps, beside what the planner decides by. The handbook's chart is Baechle &
 * Earle, Essentials of Strength Training and Conditioning (its table of percentages; rows 1 to 10 confirmed, 12 from
 * memory); Epley 1985, Poundage Chart, as quoted in reviews. They stand here as checks from outside: the chart decides
 * nothing.
 */
import { describe, expect, it } from 'vitest';
import { capacityOf, repsToFailure } from '../../src/engine/capacity.js';
import { percentForReps } from '../../src/engine/repetition-maximum.js';
import { PERCENT_OF_MAXIMUM } from '../../src/engine/rules/percent-of-maximum.js';

const RESISTED = 100_000;
const maximumOf = (reps: number): number => {
  const test = { side: 'both', resisted: RESISTED, reps: 10 * reps, weak: false } as const;
  return capacityOf('epley', test, true) / PERCENT_OF_MAXIMUM.value;
};

describe('a part of a maximum', () => {
  // Printed per cent of one repetition maximum for so many repetitions.
  it.each([
    [1, 100],
    [2, 95],
    [3, 93],
    [4, 90],
    [5, 87],
    [6, 85],
    [7, 83],
    [8, 80],
    [9, 77],
    [10, 75],
    [12, 67],
  ])(
    '%i reps are %i %% in the handbook, within 7 of the equation made to agree with itself at one',
    (reps, percent) => {
      expect(percentForReps(reps, 'handbook')).toBe(percent);
      const ours = (100 * RESISTED) / maximumOf(reps);
      // The closed form: (300 + 10) / (300 + 10 n). The chart falls off faster beyond ten.
      expect(ours).toBeCloseTo((100 * 310) / (300 + 10 * reps), 9);
      expect(Math.abs(ours - percent)).toBeLessThan(7.1);
    },
  );

  it('is exact at one rep, and never promises more than Epley’s own maximum', () => {
    expect(maximumOf(1)).toBe(RESISTED);
    // Epley prints 1 + n / 30 of the load, 103.33 for one rep: ours is that over 31 / 30, so always the lower.
    for (let reps = 1; reps <= 12; reps += 1) {
      expect(maximumOf(reps)).toBeCloseTo((RESISTED * (1 + reps / 30)) / (31 / 30), 6);
    }
  });

  it('at 100 % of it one rep and no more is predicted', () => {
    for (const reps of [1, 5, 8, 10, 12]) {
      const test = { side: 'both', resisted: RESISTED, reps: 10 * reps, weak: false } as const;
      const k = capacityOf('epley', test, true);
      const load = Math.floor(k / PERCENT_OF_MAXIMUM.value);
      expect(repsToFailure('epley', k, 10 * reps, load)).toBe(10);
    }
  });
});
