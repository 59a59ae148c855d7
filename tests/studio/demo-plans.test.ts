/**
 * The demo's plans, jotted down as a coach would, against the jottings beside this file; and what a first studio must
 * be able to show. To accept a change that was meant: `npx vitest run --config tests/vitest.config.ts tests/studio -u`.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import type { Item, Plan } from '../../src/model/plan.js';
import { sayWhy } from '../../src/words/say-why.js';
import { type PlannedDemo, planDemo } from './demo-plans.js';
import { itemsOf, planLines } from './plan-lines.js';

let demo: PlannedDemo;
beforeAll(async () => {
  demo = await planDemo();
});

const planOf = (client: string): Plan => {
  const plan = demo.plans.get(client);
  if (plan === undefined) throw new Error(`${client} has no plan: ${demo.problems.map(({ code }) => code).join(', ')}`);
  return plan;
};
const plans = (): readonly Plan[] => [planOf('rowan-ashby'), planOf('hester-vane')];

/** A row's items over the weeks. */
const rowOf = (plan: Plan, session: string, row: string): readonly Item[] =>
  plan.weeks.flatMap((week) =>
    week.sessions.filter(({ id }) => id === session).flatMap((of) => itemsOf(of).filter((item) => item.row === row)),
  );
const gramsOf = (item: Item | undefined): number => item?.sets.find((set) => set.kind === 'work')?.load?.grams ?? 0;

describe('jottings', () => {
  test.each(['rowan-ashby', 'hester-vane'])('%s', async (client) => {
    const lines = planLines(planOf(client));
    expect(lines.length).toBeLessThan(200);
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`goldens/${client}.txt`);
  });
});

/**
 * Worked by hand. R is the load and, in a squat, 0.878 of body mass; K = R × (300 + 10 × (reps + reserve)) of the test,
 * raised by half a per cent after each work week unless the row itself meets a caution; reps to failure = (K − 300 R) / R,
 * in tenths. The most reps that leave the asked reserve (less 0.2) and the floor of 2.
 *
 * rowan-ashby, A, goblet squat, 70 kg, 16 kg × 10 and 2 left: R = 16,000 + 61,460 = 77,460; K = 77,460 × 420 = 32,533,200.
 *   Week 4: K = 33,023,641; at 16 kg 126.3, so 10 leaves 2.6. Week 5: K = 33,188,759; at 20 kg (81,460; a step of 25 %,
 *   earned twice) 107.4: the bottom and the floor, 8, fit, so a gate; 8 leaves 2.7, 9 only 1.7.
 *   Week 6 asks 4: K = 33,354,702; 109.4, 7 leaves 3.9.
 * rowan-ashby, A, row, left, 12 kg × 9 and 2 left: K = 12,000 × 410. Week 3: 4,969,323; 114.1, 9 leaves 2.4.
 * rowan-ashby, B, deadlift, 24 kg × 9 and 3 left: K = 24,000 × 420. Week 3: 10,181,052; 124.2, the top, 9, leaves 3.4,
 *   earned twice; at 28 kg 63.6: 4 leaves 2.3 of the floor’s 2, so a trial of 4; the bottom and the floor, 7, do not fit.
 * hester-vane, A, squat, 148 lb, 40 lb × 10 and 2 left, a caution, so no gain: R = 18,144 + 58,941 = 77,085; K = 32,375,700.
 *   Week 4: at 42.5 lb (6 % more, earned once) R = 78,219, 113.9: 9 leaves 2.3. Week 6 asks 4: 7 leaves 4.3.
 * hester-vane, A, press, left, 27.5 lb × 8 and 2 left: K = 12,474 × 400 = 4,989,600. Week 4: 5,064,818; at 30 lb, 13,608
 *   (9.1 % more, earned once) 72: the bottom and the floor, 7, fit; 5 leaves 2.2, 6 only 1.2.
 * hester-vane, B, row, left, 35 lb × 10 and 2 left: K = 15,876 × 420. Week 4: 6,768,438; at 37.5 lb, 17,010, 97.9: 7 leaves 2.7.
 * hester-vane, B, deadlift, 57.5 lb × 12 and 2 left, which takes six plates a side, one more than a handle is taken to hold:
 *   at 55 lb above 140 and rising; 12 is the top and there is nothing heavier.
 */
test('the account of one number: what it is, why, and why not the next one up', async () => {
  const asked = { week: 4, session: 'A', exercise: 'goblet-squat' };
  const said = sayWhy(planOf('rowan-ashby'), asked);
  expect(said).toContain('Why not 20 kg');
  await expect(`${said}\n`).toMatchFileSnapshot('goldens/why-rowan-ashby.txt');
});

describe('expected, worked by hand', () => {
  test('every line of a programme’s Expect holds', () => {
    const expected = demo.library.programmes.flatMap(({ expectations }) => expectations);
    expect(expected.length).toBeGreaterThan(8);
    for (const { client, week, session, row, text } of expected) {
      const item = rowOf(planOf(client), session, row)[week - 1];
      const work = item?.sets.find((set) => set.kind === 'work');
      expect(`${work?.load?.label} × ${work?.reps}`, `${client}, week ${week}, ${session}, ${row}`).toBe(text);
    }
  });
});

describe('a first studio shows', () => {
  test('nothing wrong, but the one client held back on purpose', () => {
    const wrong = demo.problems.filter(({ severity }) => severity === 'error');
    expect(wrong.map(({ code, scope }) => [code, scope])).toEqual([
      ['not-handled', { kind: 'client', client: 'ansel-quill' }],
    ]);
    expect([...demo.plans.keys()]).toEqual(['hester-vane', 'rowan-ashby']);
  });

  test('a tested load that rises by a small step, in the middle of the block', () => {
    const squat = rowOf(planOf('hester-vane'), 'A', 'goblet-squat');
    expect(squat[0]?.capacity?.confidence).toBe('measured');
    expect(gramsOf(squat[4])).toBeGreaterThan(gramsOf(squat[0]));
    expect(squat.some((item) => item.sets.some((set) => set.gate !== undefined))).toBe(false);
  });

  test('a gate, and what to do otherwise to the end of the block', () => {
    const squat = rowOf(planOf('rowan-ashby'), 'A', 'goblet-squat');
    const gated = squat.findIndex((item) => item.sets.some((set) => set.gate !== undefined));
    expect(gated).toBeGreaterThan(0);
    expect(gramsOf(squat[gated])).toBeGreaterThan(gramsOf(squat[gated - 1]));
    for (const item of squat.slice(gated)) {
      const otherwise = item.sets.flatMap((set) => set.otherwise ?? []);
      expect(otherwise.length, item.id).toBeGreaterThan(0);
      for (const { load } of otherwise) expect(load?.grams).toBe(gramsOf(squat[gated - 1]));
    }
  });

  test('a trial set at the next bell up', () => {
    const trials = rowOf(planOf('rowan-ashby'), 'B', 'bell-deadlift').flatMap((item) =>
      item.sets.filter((set) => set.kind === 'trial').map((set) => ({ set, work: gramsOf(item) })),
    );
    expect(trials.length).toBeGreaterThan(0);
    for (const { set, work } of trials) expect(set.load?.grams ?? 0).toBeGreaterThan(work);
  });

  test('a refused step: why not the next one up', () => {
    const row = rowOf(planOf('rowan-ashby'), 'A', 'one-arm-row');
    const refused = row.flatMap((item) => item.allowed.filter((option) => option.refusedBy !== undefined));
    expect(refused.some((option) => option.grams > gramsOf(row[0]))).toBe(true);
  });

  test('kit too light', () => {
    const findings = plans().flatMap((plan) => plan.findings.map(({ rule, row }) => ({ rule, row })));
    expect(findings.filter(({ rule }) => rule.endsWith('kit-too-light'))).not.toEqual([]);
  });

  test('a feeler set in one row of one plan, and only there', () => {
    const feelers = plans().flatMap((plan) =>
      plan.weeks.flatMap((week) =>
        week.sessions.flatMap((session) =>
          itemsOf(session)
            .filter((item) => item.sets.some((set) => set.kind === 'feeler'))
            .map((item) => `${plan.client} ${item.row}`),
        ),
      ),
    );
    expect([...new Set(feelers)]).toEqual(['rowan-ashby floor-press']);
    for (const item of rowOf(planOf('rowan-ashby'), 'B', 'floor-press')) {
      expect(
        item.sets.some((set) => (set.choose?.length ?? 0) > 1),
        item.id,
      ).toBe(true);
    }
  });

  test('a weaker side that goes first and decides for both', () => {
    for (const item of rowOf(planOf('rowan-ashby'), 'A', 'one-arm-row')) {
      expect(item.capacity?.side).toBe('left');
      const work = item.sets.filter((set) => set.kind === 'work');
      expect(work[0]?.side).toBe('left');
      expect(new Set(work.map(({ reps, load }) => `${reps} ${load?.grams}`)).size).toBe(1);
    }
  });

  test('a caution that takes the easier version', () => {
    for (const item of rowOf(planOf('rowan-ashby'), 'A', 'push-up')) expect(item.exercise).toBe('knee-push-up');
  });

  test('an easier week: fewer sets, and no more reps or load than the week before', () => {
    for (const plan of plans()) {
      const last = plan.weeks.at(-1);
      expect(last?.deload).toBe(true);
      for (const session of last?.sessions ?? []) {
        for (const item of itemsOf(session)) {
          const before = rowOf(plan, session.id, item.row).at(-2);
          expect(item.sets.length, item.id).toBeLessThanOrEqual(before?.sets.length ?? 0);
          expect(gramsOf(item)).toBeLessThanOrEqual(gramsOf(before));
        }
      }
    }
  });
});
