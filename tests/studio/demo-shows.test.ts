/** What the demo is there to show, and who shows it: each thing once, so that a change that loses it is seen. */

import { beforeAll, describe, expect, test } from 'vitest';
import { PATTERNS, WAYS } from '../../src/model/exercise.js';
import type { Item, Plan } from '../../src/model/plan.js';
import { everyItem, gramsOf, type PlannedDemo, planDemo, planIn, rowOf, workOf } from './demo-plans.js';
import { itemsOf } from './plan-lines.js';

let demo: PlannedDemo;
beforeAll(async () => {
  demo = await planDemo();
});

const planOf = (client: string): Plan => planIn(demo, client);
const itemsIn = (client: string, session: string, row: string): readonly Item[] => [
  ...rowOf(planOf(client), session, row).values(),
];
const factsOf = (item: Item) => demo.library.exercises.find(({ id }) => id === item.exercise)?.facts;
const rulesTold = (plan: Plan): readonly string[] => plan.findings.map(({ rule }) => rule);
const isGated = (item: Item): boolean => item.sets.some(({ gate }) => gate !== undefined);
const isTried = (item: Item): boolean => item.sets.some(({ kind }) => kind === 'trial');

describe('loads and reps', () => {
  test('a gate, and what to do otherwise to the end of the block', () => {
    const squat = itemsIn('rowan-ashby', 'A', 'goblet-squat');
    const gated = squat.findIndex(isGated);
    expect(gated).toBeGreaterThan(0);
    expect(gramsOf(squat[gated])).toBeGreaterThan(gramsOf(squat[gated - 1]));
    for (const item of squat.slice(gated)) {
      const otherwise = item.sets.flatMap((set) => set.otherwise ?? []);
      expect(otherwise.length, item.id).toBeGreaterThan(0);
      for (const { load } of otherwise) expect(load?.grams).toBe(gramsOf(squat[gated - 1]));
    }
  });

  test('a trial set at the next bell up', () => {
    const trials = itemsIn('rowan-ashby', 'B', 'bell-deadlift').filter(isTried);
    expect(trials.length).toBeGreaterThan(0);
    for (const item of trials)
      for (const set of item.sets.filter(({ kind }) => kind === 'trial'))
        expect(set.load?.grams ?? 0).toBeGreaterThan(gramsOf(item));
  });

  test('a refused step: why not the next one up', () => {
    const row = itemsIn('rowan-ashby', 'A', 'one-arm-row');
    const refused = row.flatMap((item) => item.allowed.filter(({ refusedBy }) => refusedBy !== undefined));
    expect(refused.some(({ grams }) => grams > gramsOf(row[0]))).toBe(true);
  });

  test('a small step of plates, in pounds, in the middle of the block', () => {
    const press = itemsIn('hester-vane', 'A', 'overhead-press');
    expect(press[0]?.capacity?.confidence).toBe('measured');
    expect(gramsOf(press[3])).toBeGreaterThan(gramsOf(press[0]));
    expect(press.some(isGated)).toBe(false);
    const labels = everyItem(planOf('hester-vane')).flatMap(({ sets }) =>
      sets.flatMap(({ load }) => load?.label ?? []),
    );
    expect(labels.length).toBeGreaterThan(50);
    for (const label of labels) expect(label).toMatch(/ lb$/);
  });

  test('a feeler set, in the one row that nothing is known of, and its table', () => {
    const felt = everyItem(planOf('rowan-ashby')).filter(({ sets }) => sets.some(({ kind }) => kind === 'feeler'));
    expect([...new Set(felt.map(({ row }) => row))]).toEqual(['floor-press']);
    for (const item of itemsIn('rowan-ashby', 'B', 'floor-press'))
      expect(
        item.sets.some((set) => (set.choose?.length ?? 0) > 1),
        item.id,
      ).toBe(true);
  });

  test('a weaker side that goes first and decides for both', () => {
    for (const item of itemsIn('rowan-ashby', 'A', 'one-arm-row')) {
      expect(item.capacity?.side).toBe('left');
      expect(workOf(item)[0]?.side).toBe('left');
      expect(new Set(workOf(item).map(({ reps, load }) => `${reps} ${load?.grams}`)).size).toBe(1);
    }
  });

  test('sides far apart: the stronger keeps its own bell for two sets, but not beside a test', () => {
    for (const [week, item] of rowOf(planOf('torben-slade'), 'A', 'overhead-press')) {
      const heavy = workOf(item).filter(({ load }) => load?.label === '24 kg');
      expect(heavy.map(({ side }) => side)).toEqual(week === 1 || week === 6 ? [] : ['right', 'right']);
      expect(item.sets.some(({ kind }) => kind === 'test')).toBe(week === 1 || week === 6);
    }
    expect(rulesTold(planOf('torben-slade'))).toContain('side-gap-why');
  });

  test('bands: the lightest first, and reps that climb on it', () => {
    const row = itemsIn('carys-holm', 'A', 'band-row');
    const [first] = workOf(row[0]);
    const [last] = workOf(row.at(-1));
    expect([first?.load?.label, last?.load?.label]).toEqual(['light band', 'light band']);
    expect(last?.reps ?? 0).toBeGreaterThan(first?.reps ?? 0);
  });

  test('an easier week: no more sets, reps or load than the week before', () => {
    const six = [...demo.plans.values()].filter(({ weeks }) => weeks.length === 6 && weeks[5]?.sessions.length !== 0);
    expect(six.length).toBe(7);
    for (const plan of six) {
      expect(plan.weeks.map(({ deload }) => deload)).toEqual([false, false, false, false, false, true]);
      for (const session of plan.weeks[5]?.sessions ?? []) {
        for (const item of itemsOf(session)) {
          const rows = rowOf(plan, session.id, item.row);
          const before = [...rows].findLast(([week]) => week < 6)?.[1];
          if (before === undefined) continue;
          expect(workOf(item).length, `${plan.client} ${item.id}`).toBeLessThanOrEqual(workOf(before).length);
          expect(gramsOf(item), `${plan.client} ${item.id}`).toBeLessThanOrEqual(gramsOf(before));
        }
      }
    }
  });
});

describe('ways of working', () => {
  test('swings at a signal, each minute', () => {
    const swings = planOf('torben-slade').weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) => groups.filter(({ everySeconds }) => everySeconds !== undefined)),
    );
    expect(swings.length).toBe(6);
    for (const { everySeconds, items } of swings) {
      expect(everySeconds).toBe(60);
      expect(items.map(({ exercise }) => exercise)).toEqual(['two-hand-swing']);
    }
  });

  test('main and next up: straight on with a heavier bell', () => {
    for (const item of itemsIn('torben-slade', 'D', 'two-hand-swing')) {
      const [work] = workOf(item);
      expect(work?.load?.grams).toBe(28_000);
      expect(work?.then?.load.grams ?? 0).toBeGreaterThan(28_000);
    }
  });

  test('rising steps of a combination, whose parts are named', () => {
    for (const item of itemsIn('torben-slade', 'D', 'clean-and-press')) {
      expect(item.way).toBe('combination');
      expect(factsOf(item)?.parts.length).toBe(2);
      for (const { steps } of workOf(item)) expect(steps).toEqual([1, 2, 3]);
    }
  });

  test('a carry that begins with the main bell and goes further', () => {
    const carry = itemsIn('torben-slade', 'A', 'bell-carry-one-side');
    expect(gramsOf(carry[0])).toBe(24_000);
    expect(workOf(carry[4])[0]?.metres ?? 0).toBeGreaterThan(workOf(carry[0])[0]?.metres ?? 0);
  });

  test('a hold that lasts longer', () => {
    const hold = itemsIn('torben-slade', 'A', 'side-plank');
    expect(workOf(hold[4])[0]?.seconds ?? 0).toBeGreaterThan(workOf(hold[0])[0]?.seconds ?? 0);
  });

  test('the talk test: in phrases for one, in sentences for another', () => {
    for (const { talk } of itemsIn('torben-slade', 'B', 'shadow-steps')) expect(talk).toBe('phrases');
    for (const { talk } of itemsIn('edda-marlow', 'C', 'march-on-the-spot')) expect(talk).toBe('sentences');
  });

  test('every way of working and every pattern is in some plan', () => {
    const facts = [...demo.plans.values()].flatMap(everyItem).flatMap((item) => factsOf(item) ?? []);
    expect(new Set(facts.map(({ way }) => way))).toEqual(new Set(WAYS));
    expect(new Set(facts.map(({ pattern }) => pattern))).toEqual(new Set(PATTERNS));
  });
});

describe('what is true of a client', () => {
  test('older, low bone density, a fall: balance at the start of each session, and two measures, first and last', () => {
    const plan = planOf('edda-marlow');
    const derived = plan.inputs.standing.derived.map(({ what }) => what);
    expect(derived).toEqual(expect.arrayContaining(['loaded bend', 'loaded twist', 'speed', 'balance']));
    for (const { sessions } of plan.weeks)
      for (const { id, groups } of sessions) {
        const work = groups.filter(({ kind }) => kind !== 'warm-up' && kind !== 'test');
        expect(work[0]?.items[0]?.exercise, id).toBe('heel-to-toe-stand');
      }
    for (const measure of ['chair-stand-test', 'one-leg-stand-test']) {
      const weeks = plan.weeks.filter(({ sessions }) =>
        sessions.some((session) => itemsOf(session).some(({ exercise }) => exercise === measure)),
      );
      expect(
        weeks.map(({ number }) => number),
        measure,
      ).toEqual([1, 6]);
    }
  });

  test('bones: nothing that bends or twists under a load', () => {
    for (const item of everyItem(planOf('edda-marlow')))
      for (const { of, degree } of factsOf(item)?.asks ?? [])
        if (of === 'loaded bend' || of === 'loaded twist') expect(degree, item.exercise).toBe('some');
  });

  test('a clearance that lapses: no session after its last day', () => {
    const { stops, weeks } = planOf('maud-ferrier');
    expect(stops).toEqual({ after: '2027-01-02', because: 'clearance' });
    const dates = weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date));
    expect(dates.length).toBe(8);
    for (const date of dates) expect(date <= '2027-01-02', date).toBe(true);
    expect(demo.problems).toContainEqual(
      expect.objectContaining({ code: 'clearance-lapses', scope: { kind: 'client', client: 'maud-ferrier' } }),
    );
  });

  test('a moderate plan: four left, no gate and no trial', () => {
    const plan = planOf('maud-ferrier');
    expect(plan.inputs.standing.moderate).toBe(true);
    for (const item of everyItem(plan)) {
      if (item.asked.reserve !== null) expect(item.asked.reserve, item.id).toBeGreaterThanOrEqual(40);
      expect(isGated(item) || isTried(item), item.id).toBe(false);
    }
  });

  test('after a birth: belly and pelvic floor are minded, and the push-up is done from the knees', () => {
    const plan = planOf('carys-holm');
    const rules = plan.inputs.standing.derived.map(({ rule }) => rule);
    expect(rules).toEqual(expect.arrayContaining(['birth-impact', 'birth-breath', 'birth-belly']));
    for (const { exercise } of itemsIn('carys-holm', 'A', 'push-up')) expect(exercise).toBe('knee-push-up');
  });

  test('back after weeks away, hurt: gentle weeks, fewer sets and no trial in them', () => {
    const plan = planOf('osgar-pell');
    expect(plan.findings).toContainEqual(expect.objectContaining({ rule: 'break-hurt', weeks: [1, 2, 3, 4] }));
    const rows = rowOf(plan, 'B', 'bell-deadlift');
    expect(workOf(rows.get(2)).length).toBeLessThan(workOf(rows.get(5)).length);
    for (const item of everyItem(plan)) expect(isGated(item) || isTried(item), item.id).toBe(false);
  });

  test('a knee to take care of: three left, no gain and no new load', () => {
    const squat = itemsIn('hester-vane', 'A', 'goblet-squat');
    expect(new Set(squat.map(gramsOf)).size).toBe(1);
    for (const item of squat)
      for (const { reserve } of workOf(item)) expect(reserve ?? 0, item.id).toBeGreaterThanOrEqual(30);
  });

  test('what was not passed is not sent home: the floor press in place of the press overhead', () => {
    for (const { exercise } of itemsIn('nell-fane', 'A', 'overhead-press')) expect(exercise).toBe('floor-press');
    for (const { exercise } of itemsIn('imre-fane', 'A', 'overhead-press')) expect(exercise).toBe('overhead-press');
  });

  test('two who train together: each a plan of their own, and both coach’s pages say so', () => {
    const [imre, nell] = [planOf('imre-fane'), planOf('nell-fane')];
    expect(imre.programme).toBe(nell.programme);
    for (const plan of [imre, nell]) expect(rulesTold(plan)).toContain('partner-apart');
    const squats = [imre, nell].map(({ client }) => gramsOf(itemsIn(client, 'A', 'goblet-squat')[0]));
    expect(squats).toEqual([24_000, 12_000]);
  });

  test('a fortnight is two weeks, neither of them easier, and three sessions in each', () => {
    const { weeks } = planOf('carys-holm');
    expect(weeks.map(({ deload, sessions }) => [deload, sessions.map(({ id }) => id)])).toEqual([
      [false, ['A', 'B', 'A']],
      [false, ['B', 'A', 'B']],
    ]);
  });
});
