/**
 * Two published tables of load against reps. Rows 1 to 10 agree and are confirmed; 11, 12 and 15 of the handbook are
 * from memory, 12 of the association's web chart is confirmed. They are never mixed.
 */
import { describe, expect, it } from 'vitest';
import { capacityOf, repsToFailure } from '../../src/engine/capacity.js';
import { percentForReps } from '../../src/engine/repetition-maximum.js';

const REPS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/** Printed rows of the web chart, from its load columns 10 and 130; the last is its row for 12 reps. Confirmed. */
const PRINTED: readonly (readonly [number, readonly number[]])[] = [
  [10, [10, 9.5, 9.3, 9, 8.7, 8.5, 8.3, 8, 7.7, 7.5, 7]],
  [130, [130, 123.5, 120.9, 117, 113.1, 110.5, 107.9, 104, 100.1, 97.5, 91]],
];

describe('load against reps', () => {
  it.each(PRINTED)('the printed row of %i', (maximum, row) => {
    const loads = [...REPS, 12].map((reps) => (maximum * (percentForReps(reps, 'web chart') ?? 0)) / 100);
    expect(loads.map((load) => Number(load.toFixed(1)))).toEqual(row);
  });

  it('the handbook differs at 12 and has rows of its own', () => {
    expect(percentForReps(12, 'handbook')).toBe(67);
    expect(percentForReps(12, 'web chart')).toBe(70);
    expect([percentForReps(11, 'handbook'), percentForReps(15, 'handbook')]).toEqual([70, 65]);
    expect([percentForReps(11, 'web chart'), percentForReps(15, 'web chart')]).toEqual([null, null]);
    expect([percentForReps(13, 'handbook'), percentForReps(0, 'handbook')]).toEqual([null, null]);
  });

  it('10 reps are 75 %, exactly as both deciding equations have it (recomputed)', () => {
    expect(percentForReps(10, 'handbook')).toBe(75);
    const test = { side: 'both', resisted: 75_000, reps: 100, weak: false } as const;
    for (const equation of ['epley', 'brzycki'] as const) {
      expect(repsToFailure(equation, capacityOf(equation, test, true), 100, 75_000)).toBe(100);
    }
    // Epley's load for no rep left is 4/3 of the ten-rep load, Brzycki's for one.
    expect(repsToFailure('epley', capacityOf('epley', test, true), 100, 100_000)).toBe(0);
    expect(repsToFailure('brzycki', capacityOf('brzycki', test, true), 100, 100_000)).toBe(10);
  });
});
