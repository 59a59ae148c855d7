import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LadderStep } from '../../src/engine/ladder/ladder-step.js';
import { planLadder } from '../../src/engine/ladder/plan-ladder.js';
import { rulesOfTheLadder } from '../../src/engine/rules-of-the-ladder.js';
import type { LadderInput } from '../../src/model/ladder.js';
import { LADDER_CHECKS } from './ladder-check-values.js';
import { climbOf, ladderOf, refusalsText, type WrittenLadder } from './ladder-notation.js';

describe('the ladder', () => {
  it.each(LADDER_CHECKS)('$why', ({ climb, found, ...written }) => {
    const input = ladderOf(written);
    const { findings } = planLadder(input);
    expect(climbOf(written)).toBe(climb);
    expect(findings.map(({ rule, weeks }) => `${rule} ${weeks.join(', ')}`).join(' · ')).toBe(found ?? '');
  });

  it('says why not the next rung and why not the next load', () => {
    const input = ladderOf({ rungs: '16: 8 9 | 20: 8 | 24: 8', weeks: '3 3 3 3 3 3h' });
    expect(refusalsText(input, planLadder(input))).toBe(
      [
        '9@16 ladder-earned, 8@20 ladder-one-at-a-time',
        '9@16 ladder-earned, 8@20 ladder-one-at-a-time',
        '9@16 open, 8@20 ladder-one-at-a-time',
        '8@20 ladder-earned',
        '8@20 open',
        '8@24 ladder-held',
      ].join(' · '),
    );
  });

  it('gives each refusal and each step a reason with the figures it went by', () => {
    const input = ladderOf({ rungs: '16: 8 9 | 20: 8', weeks: '3 3 3' });
    const { steps } = planLadder(input);
    expect(steps.map(({ reasons }) => reasons.map(({ rule, audience }) => `${rule} ${audience}`))).toEqual([
      ['ladder-earned coach', 'ladder-one-at-a-time coach'],
      ['ladder-earned coach', 'ladder-one-at-a-time coach'],
      ['ladder-up client', 'ladder-one-at-a-time coach'],
    ]);
    expect(steps[0]?.reasons[0]?.inputs).toEqual([
      { name: 'exercise', value: 'move', unit: '' },
      { name: 'load', value: 16_000, unit: 'g' },
      { name: 'reps', value: 9, unit: 'reps' },
      { name: 'rung', value: 2, unit: '' },
      { name: 'of', value: 3, unit: '' },
      { name: 'earned', value: 0, unit: '' },
      { name: 'needed', value: 2, unit: '' },
    ]);
  });
});

describe('no rule of the ladder is idle', () => {
  const told = (rules = rulesOfTheLadder): readonly string[] =>
    LADDER_CHECKS.map((written) => {
      const input = ladderOf(written);
      return `${climbOf(written, rules)} / ${refusalsText(input, planLadder(input, rules))}`;
    });
  const whole = told();

  it.each(rulesOfTheLadder.map((rule) => rule.row.id))('without %s some ladder comes out otherwise', (id) => {
    expect(told(rulesOfTheLadder.filter((rule) => rule.row.id !== id))).not.toEqual(whole);
  });
});

describe('what would be without a rule, by hand', () => {
  const rungs = '16: 8 9 | 20: 8 9 | 24: 8';
  const start = 1;
  it.each<[string, WrittenLadder, string]>([
    ['ladder-up', { rungs, weeks: '3 3 3' }, '8@16 · 8@16 · 8@16'],
    ['ladder-held', { rungs, weeks: '3 3 3h' }, '8@16 · 8@16 · 9@16'],
    [
      'ladder-new-stage',
      { rungs, start, gates: false, weeks: '3 3 3' },
      '9@16 · 9@16 · gate 8@20 (9@16: 1, 2) else 8@20',
    ],
    [
      'ladder-gate-once',
      { rungs: '16: 8 | 20: 8 | 24: 8', weeks: '3 3 3 3 3' },
      '8@16 · 8@16 · gate 8@20 (8@16: 1, 2) else 8@16 · 8@20 else 8@16 · gate 8@24 (8@20: 3, 4) else 8@16',
    ],
    ['ladder-one-at-a-time', { rungs, weeks: '3 3 3' }, '8@16 · 8@16 · gate 8@20 (8@16: 1, 2) else 9@16'],
    ['ladder-earned', { rungs: '16: 8 9 10', weeks: '3 3 3' }, '9@16 · 10@16 · 10@16'],
    ['ladder-weeks', { rungs: '16: 8 | 20: 8', weeks: '3+3+3' }, '8@16 · 8@16 · gate 8@20 (8@16: 1) else 8@16'],
    ['ladder-gate', { rungs, start, weeks: '3 3 3' }, '9@16 · 9@16 · 8@20'],
    ['ladder-counted', { rungs, weeks: '3 3h 3' }, '8@16 · 8@16 · 9@16'],
    ['ladder-easy', { rungs, weeks: '3 3 e1' }, '8@16 · 8@16 · 9@16'],
    ['ladder-easy-down', { rungs, start, weeks: '2 e2' }, '9@16 · e 9@16'],
  ])('%s', (id, written, expected) => {
    const without = rulesOfTheLadder.filter((rule) => rule.row.id !== id);
    expect(without).toHaveLength(rulesOfTheLadder.length - 1);
    expect(climbOf(written, without)).toBe(expected);
    expect(climbOf(written)).not.toBe(expected);
  });

  it('ladder-top: nobody is told', () => {
    const input = ladderOf({ rungs: '16: 8', weeks: '3 3 3' });
    expect(planLadder(input).findings.map(({ rule }) => rule)).toEqual(['ladder-top']);
    const without = rulesOfTheLadder.filter((rule) => rule.row.id !== 'ladder-top');
    expect(planLadder(input, without).findings).toEqual([]);
  });
});

const stage = fc.record({ load: fc.constantFrom('-', '12', '16', '20'), rungs: fc.integer({ min: 1, max: 4 }) });
const written: fc.Arbitrary<WrittenLadder> = fc
  .record({
    stages: fc.array(stage, { minLength: 1, maxLength: 4 }),
    unit: fc.constantFrom('', 's', 'm', 'min'),
    start: fc.nat({ max: 15 }),
    earned: fc.constantFrom<0 | 1 | 2>(0, 1, 2),
    gates: fc.boolean(),
    needed: fc.integer({ min: 1, max: 3 }),
    different: fc.integer({ min: 1, max: 3 }),
    easyDown: fc.integer({ min: 0, max: 2 }),
    weeks: fc.array(
      fc.tuple(fc.constantFrom('', '', '', 'e'), fc.integer({ min: 1, max: 4 }), fc.constantFrom('', '', '', 'h')),
      { minLength: 1, maxLength: 12 },
    ),
  })
  .map(({ stages, unit, needed, different, easyDown, weeks, start, ...made }) => {
    const rungs = stages.map(({ load, rungs: many }) => {
      return `${load}: ${Array.from({ length: many }, (_, index) => `${index + 1}${unit}`).join(' ')}`;
    });
    const length = stages.reduce((sum, { rungs: many }) => sum + many, 0);
    return {
      ...made,
      rungs: rungs.join(' | '),
      start: start % length,
      rules: { earned: needed, weeks: different, easyDown },
      weeks: weeks.map((parts) => parts.join('')).join(' '),
    };
  });

function always(check: (input: LadderInput, steps: readonly LadderStep[]) => void): void {
  fc.assert(
    fc.property(written, (made) => {
      const input = ladderOf(made);
      check(input, planLadder(input).steps);
    }),
    { numRuns: 500 },
  );
}

const stageAt = ({ rungs }: LadderInput, rung: number): number => rungs[rung]?.stage ?? -1;

describe('every ladder', () => {
  it('has a step for every occurrence and stays on its rungs', () => {
    always((input, steps) => {
      expect(steps.map(({ week, sets }) => [week, sets])).toEqual(
        input.occurrences.map(({ week, sets }) => [week, sets]),
      );
      for (const { rung, otherwise } of steps) {
        expect(input.rungs[rung]).toBeDefined();
        expect(input.rungs[otherwise?.rung ?? 0]).toBeDefined();
      }
    });
  });

  it('never opens two new stages, and none where gates are closed', () => {
    always((input, steps) => {
      const most = stageAt(input, input.start) + (input.gates ? 1 : 0);
      for (const { rung } of steps) expect(stageAt(input, rung)).toBeLessThanOrEqual(most);
      expect(steps.filter(({ gate }) => gate !== undefined).length).toBeLessThanOrEqual(input.gates ? 1 : 0);
    });
  });

  it('goes up one rung at a time, and only after so many occurrences that count', () => {
    always((input, steps) => {
      let rung = input.start;
      let counted: number = input.earned;
      steps.forEach((step, index) => {
        const occurrence = input.occurrences[index];
        if (step.easy) return;
        if (step.rung > rung) {
          expect(step.rung).toBe(rung + 1);
          expect(counted).toBeGreaterThanOrEqual(input.rules.earned);
          expect(occurrence?.held).toBeUndefined();
          counted = 0;
        } else expect(step.rung).toBe(rung);
        rung = step.rung;
        if (occurrence?.held === undefined) counted += 1;
      });
    });
  });

  it('has easy weeks that are no harder than the work before them', () => {
    always((input, steps) => {
      let last = input.start;
      for (const step of steps) {
        if (step.easy) expect(step.rung).toBeLessThanOrEqual(last);
        if (step.easy) expect(stageAt(input, step.rung)).toBe(stageAt(input, last));
        else last = step.rung;
      }
    });
  });

  it('offers, from a gate on and never before it, what needs no gate', () => {
    always((input, steps) => {
      const from = steps.findIndex(({ gate }) => gate !== undefined);
      steps.forEach(({ otherwise }, index) => {
        expect(otherwise !== undefined).toBe(from >= 0 && index >= from);
        if (otherwise !== undefined) {
          expect(stageAt(input, otherwise.rung)).toBe(stageAt(input, input.start));
          expect(otherwise.rung).toBeLessThan(steps[from]?.rung ?? 0);
        }
      });
    });
  });

  it('is what stands beside a gate when gates are closed', () => {
    always((input, steps) => {
      const closed = planLadder({ ...input, gates: false }).steps;
      expect(closed.map(({ rung }) => rung)).toEqual(steps.map(({ rung, otherwise }) => otherwise?.rung ?? rung));
    });
  });

  it('is the same when repeated, and changes nothing it was given', () => {
    always((input) => {
      const before = JSON.stringify(input);
      expect(JSON.stringify(planLadder(input))).toBe(JSON.stringify(planLadder(input)));
      expect(JSON.stringify(input)).toBe(before);
    });
  });
});
