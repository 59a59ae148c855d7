/** What holds of the doses of every stage, whatever the way of working and the dose. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dosesOf } from '../../src/engine/ladder/rungs-of-way.js';
import type { Asked } from '../../src/engine/ladder/stage-doses.js';
import { plannedBy } from '../../src/engine/rows/planned-by.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Dose } from '../../src/model/dose.js';
import { WAYS } from '../../src/model/exercise.js';
import type { RungDose } from '../../src/model/ladder.js';
import { anExercise } from './make-block.js';

const range = (least: number, most: number) =>
  fc
    .tuple(fc.integer({ min: least, max: most }), fc.nat({ max: most }))
    .map(([min, more]) => ({ min, max: min + more }));
const doses: fc.Arbitrary<Dose> = fc.oneof(
  range(1, 30).map((reps): Dose => ({ kind: 'sets', sets: 3, reps, eachSide: false })),
  range(5, 90).map((seconds): Dose => ({ kind: 'timed', sets: 3, seconds, eachSide: false })),
  range(5, 60).map((metres): Dose => ({ kind: 'distance', sets: 3, metres, eachSide: false })),
  fc
    .tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 20 }), fc.constantFrom(30, 60, 90))
    .map(([minutes, reps, everySeconds]): Dose => ({ kind: 'every', minutes, reps, everySeconds })),
  fc
    .tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 20 }))
    .map(([main, next]): Dose => ({ kind: 'main-next', main, next })),
  fc
    .array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 })
    .map((reps): Dose => ({ kind: 'steps', reps, times: 2 })),
  fc.constant<Dose>({ kind: 'rounds', rounds: 3 }),
);
const asked: fc.Arbitrary<Asked> = fc
  .record({
    dose: doses,
    way: fc.constantFrom(...WAYS),
    holds: fc.constantFrom('total', 'per-hand', 'band', 'assisted'),
    mostReps: fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }),
    fresh: fc.boolean(),
    nextUp: fc.boolean(),
  })
  .map(({ dose, way, holds, mostReps, fresh, nextUp }) => {
    const { facts } = anExercise('x', { way, holds, ...(mostReps === undefined ? {} : { mostReps }) });
    return { dose, facts, fresh, nextUp, inForce: layOverrides([]).value.valueOf };
  })
  .filter(({ facts, dose }) => plannedBy(facts, dose) === 'ladder');

/** How much work a rung is; within a stage all of one unit but for a dead stop. */
function workIn(dose: RungDose): number {
  switch (dose.kind) {
    case 'reps':
      return dose.reps;
    case 'seconds':
      return dose.seconds;
    case 'metres':
      return dose.metres;
    case 'every':
      return dose.reps * dose.minutes;
    case 'main-next':
      return dose.main + dose.next;
    case 'steps':
      return dose.reps.reduce((sum, reps) => sum + reps, 0);
    case 'round':
      return 1;
  }
}

/** The most the programme asks of a set, or of the minutes. */
function mostIn(dose: Dose): number {
  switch (dose.kind) {
    case 'sets':
      return dose.reps.max;
    case 'timed':
      return dose.seconds.max;
    case 'distance':
      return dose.metres.max;
    case 'every':
      return dose.reps * dose.minutes;
    case 'main-next':
      return dose.main + dose.next;
    case 'steps':
      return dose.reps.reduce((sum, reps) => sum + reps, 0);
    case 'rounds':
      return 1;
  }
}

const always = (check: (one: Asked) => void): void => fc.assert(fc.property(asked, check), { numRuns: 600 });

describe('the doses of every stage', () => {
  it('are some, whole, and never more than the programme asks', () => {
    always((one) => {
      const { doses: rungs, known } = dosesOf(one);
      expect(rungs[known]).toBeDefined();
      for (const { dose } of rungs) {
        expect(Number.isInteger(workIn(dose))).toBe(true);
        expect(workIn(dose)).toBeGreaterThan(0);
        expect(workIn(dose)).toBeLessThanOrEqual(mostIn(one.dose));
      }
    });
  });

  it('each ask for more than the one before', () => {
    always((one) => {
      const ordinary = dosesOf(one).doses.filter(({ deadStop }) => !deadStop);
      ordinary.slice(1).forEach(({ dose }, index) => {
        const before = ordinary[index];
        expect(before !== undefined && workIn(dose) > workIn(before.dose)).toBe(true);
      });
    });
  });

  it('of fast lifts never have more reps in a set than keep their quality, and a dead stop only first and when new', () => {
    always((one) => {
      if (one.facts.way !== 'swing') return;
      const most = one.facts.mostReps ?? 15;
      dosesOf(one).doses.forEach(({ dose, deadStop }, index) => {
        if (dose.kind === 'reps' || dose.kind === 'every') expect(dose.reps).toBeLessThanOrEqual(most);
        if (dose.kind === 'main-next') expect(Math.max(dose.main, dose.next)).toBeLessThanOrEqual(most);
        if (dose.kind === 'steps') expect(Math.max(...dose.reps)).toBeLessThanOrEqual(most);
        if (dose.kind === 'seconds') expect(dose.seconds).toBeLessThanOrEqual(2.7 * most);
        expect(deadStop).toBe(one.fresh && index === 0 && deadStop);
      });
    });
  });

  it('of mobility are one', () => {
    always((one) => {
      if (one.facts.way === 'mobility' && !['band', 'assisted'].includes(one.facts.holds)) {
        expect(dosesOf(one).doses).toHaveLength(1);
      }
    });
  });
});
