/** What walked rows become in a moderate plan, after a break, and on a weak estimate. */
import { describe, expect, test } from 'vitest';
import type { Client } from '../../src/model/client.js';
import type { Plan } from '../../src/model/plan.js';
import { PLACE } from './generate-exercises.js';
import { aTest, bells, kg, on } from './make-block.js';
import { itemsOf, planOf, withRow } from './rows-made.js';

/** 16 kg for 12 with 0 left, earned twice before long: 20 kg lies 25 % above. */
const able = { tests: [aTest('squat', 12, { load: kg('16'), reserve: 0 })], kit: bells('16', '18') };
const dose = { kind: 'sets', sets: 3, reps: { min: 3, max: 3 }, eachSide: false } as const;
const holds = (plan: Plan, what: string): boolean => JSON.stringify(plan.weeks).includes(what);

/** Cleared for moderate effort alone. */
const moderate: Partial<Client> = {
  screening: { date: on('2026-12-01'), regularExercise: 'yes', knownDisease: 'yes', symptoms: 'no', place: PLACE },
  clearance: { by: 'Dr Nobody', date: on('2026-12-01'), for: 'moderate' },
};

describe('a moderate plan (walk-gates-allowed)', () => {
  test('a step that would be a gate is a plain stay, and says why', () => {
    expect(holds(planOf(withRow({ dose }), able), '"gate"')).toBe(true);
    const plan = planOf(withRow({ dose }), { ...able, ...moderate });
    expect(plan.inputs.standing.moderate).toBe(true);
    expect(plan.inputs.strands[0]).toMatchObject({ gates: false, trials: false, gain: 0 });
    expect(holds(plan, '"gate"')).toBe(false);
    const reasons = itemsOf(plan).flatMap(({ reasons: all }) => all.map(({ rule }) => String(rule)));
    expect(reasons).toContain('walk-gates-allowed');
    expect(plan.findings.map(({ rule }) => rule)).not.toContain('to-earn-a-try');
  });

  test('no trial is offered either', () => {
    const tried = { tests: [aTest('squat', 12, { load: kg('16') })], kit: bells('16', '20') };
    const range = { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false } as const;
    expect(holds(planOf(withRow({ dose: range }), tried), '"trial"')).toBe(true);
    expect(holds(planOf(withRow({ dose: range }), { ...tried, ...moderate }), '"trial"')).toBe(false);
  });

  test('its floor holds in every walked row, and it begins with the main bell where the next one up is asked for', () => {
    const plan = planOf(withRow({ bell: 'next up' }), { ...moderate, tests: [aTest('squat', 8, { load: kg('16') })] });
    expect(plan.inputs.strands[0]?.start?.load).toBe(16_000);
    const floor = Math.max(...plan.inputs.floors.map(({ reserve }) => reserve));
    expect(floor).toBeGreaterThan(20);
    for (const { sets } of itemsOf(plan)) for (const { reserve } of sets) expect(reserve).toBeGreaterThanOrEqual(floor);
  });
});

describe('after a break', () => {
  test('nothing is made harder in the weeks it holds, whatever was earned', () => {
    const away = { from: on('2026-12-07'), until: on('2027-01-01'), cause: 'ill', place: PLACE } as const;
    const strand = planOf(withRow({ dose }), { ...able, breaks: [away] }).inputs.strands[0];
    expect(strand?.occurrences[0]?.held).toMatchObject({ maxReps: null, why: 'ill' });
    expect(strand?.occurrences.at(-1)?.held).toBeUndefined();
  });
});

describe('a weak estimate (walk-weak-trial)', () => {
  test('asks three reps of a trial at most', () => {
    const weak = { tests: [aTest('squat', 14, { load: kg('16'), reserve: 20 })], kit: bells('16', '18') };
    const range = { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false } as const;
    const trials = itemsOf(planOf(withRow({ dose: range }), weak)).flatMap(({ sets }) =>
      sets.filter(({ kind }) => kind === 'trial'),
    );
    expect(trials.length).toBeGreaterThan(0);
    for (const { reps } of trials) expect(reps).toBe(3);
  });
});
