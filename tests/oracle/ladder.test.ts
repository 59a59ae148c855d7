/** The engine's walk of rungs beside the oracle's, on ladders worked out by hand and on generated ones. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LadderStep } from '../../src/engine/ladder/ladder-step.js';
import { planLadder } from '../../src/engine/ladder/plan-ladder.js';
import { rulesOfTheLadder } from '../../src/engine/rules-of-the-ladder.js';
import type { LadderInput } from '../../src/model/ladder.js';
import { runs } from '../deep.js';
import { type LadderJson, type RungStep, walkLadder } from './ladder.js';

const SEED = 20_261_126;
/** A hundred and fifty thousand in `npm run verify:deep`. */
const RUNS = runs(4000, 150_000);

const occurrences = fc
  .array(
    fc.record({
      sessions: fc.integer({ min: 0, max: 3 }),
      easy: fc.oneof({ weight: 4, arbitrary: fc.constant(false) }, { weight: 1, arbitrary: fc.constant(true) }),
      sets: fc.integer({ min: 1, max: 5 }),
      held: fc.oneof({ weight: 6, arbitrary: fc.constant(false) }, { weight: 1, arbitrary: fc.constant(true) }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((weeks) =>
    weeks.flatMap(({ sessions, easy, sets, held }, index) =>
      Array.from({ length: sessions }, () => ({
        week: index + 1,
        easy,
        sets,
        ...(held ? { held: { why: 'pain' } } : {}),
      })),
    ),
  );

const ladders = fc
  .record({
    stages: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 4 }),
    kind: fc.constantFrom('reps', 'seconds', 'every'),
    at: fc.nat(),
    earned: fc.constantFrom(0, 0, 0, 1, 2),
    gates: fc.constantFrom(true, true, true, false),
    occurrences,
    rules: fc.constantFrom(
      { earned: 2, weeks: 2, easyDown: 1 },
      { earned: 1, weeks: 1, easyDown: 1 },
      { earned: 3, weeks: 2, easyDown: 2 },
      { earned: 2, weeks: 3, easyDown: 1 },
    ),
  })
  .map(({ stages, kind, at, earned, rules, ...more }): LadderJson => {
    const rungs = stages.flatMap((count, stage) =>
      Array.from({ length: count }, (_, index) => ({ stage, ...rungAt(stage, index, kind) })),
    );
    return { ...more, rungs, rules, start: at % rungs.length, earned: Math.min(earned, rules.earned) };
  });

const rungAt = (stage: number, index: number, kind: string) => ({
  exercise: 'move',
  load: { grams: 4000 * (stage + 1), mode: 'total', pieces: [{ id: `bell-${stage}`, grams: 4000 * (stage + 1) }] },
  nextUp: null,
  deadStop: false,
  dose: kind === 'every' ? { kind, reps: 5, everySeconds: 60, minutes: 4 + 2 * index } : { kind, [kind]: 5 + index },
});

/** The engine is handed the ladder as an outsider would: through JSON. */
function inputOf(ladder: LadderJson): LadderInput {
  const whole = { id: 'A/row', session: 'A', row: 'row', way: 'swing', ...ladder };
  return JSON.parse(JSON.stringify(whole));
}

const told = (steps: readonly LadderStep[]) =>
  steps.map(({ week, easy, rung, sets, earned, gate, otherwise, considered }) => ({
    week,
    easy,
    rung,
    sets,
    earned,
    needs: gate?.needs,
    otherwise,
    asked: considered,
  }));
const again = (steps: readonly RungStep[]) =>
  steps.map(({ week, easy, rung, sets, earned, needs, otherwise, asked }) => ({
    week,
    easy,
    rung,
    sets,
    earned,
    needs,
    otherwise,
    asked,
  }));

describe('the walk of rungs, twice', () => {
  it(`agrees on ${RUNS} ladders, step by step`, () => {
    fc.assert(
      fc.property(ladders, (ladder) => {
        const { steps, findings } = planLadder(inputOf(ladder));
        expect(told(steps)).toEqual(again(walkLadder(ladder)));
        const tops = [...new Set(walkLadder(ladder).flatMap(({ top, week }) => (top ? [week] : [])))];
        expect(findings.flatMap(({ rule, weeks }) => (rule === 'ladder-top' ? weeks : []))).toEqual(tops);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  it('disagrees as soon as the engine forgets a rule', () => {
    const samples = fc.sample(ladders, { numRuns: 1500, seed: SEED });
    for (const forgotten of rulesOfTheLadder) {
      const rules = rulesOfTheLadder.filter((rule) => rule !== forgotten);
      const differs = samples.some((ladder) => {
        const { steps, findings } = planLadder(inputOf(ladder), rules);
        const tops = walkLadder(ladder).some(({ top }) => top);
        return (
          JSON.stringify(told(steps)) !== JSON.stringify(again(walkLadder(ladder))) || (tops && findings.length === 0)
        );
      });
      expect(differs, forgotten.row.id).toBe(true);
    }
  });
});
