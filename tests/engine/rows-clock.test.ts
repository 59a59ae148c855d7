/** Walked rows whose dose is not plain sets: on the clock, at every signal, in rising or falling reps. */
import { describe, expect, test } from 'vitest';
import { amountIn } from '../../src/engine/items/set-amount.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Dose } from '../../src/model/dose.js';
import type { Row } from '../../src/model/programme.js';
import { aLink, anExercise, aTest, aWay, bells, kg } from './make-block.js';
import { itemsOf, planOf, withRow } from './rows-made.js';

const timed: Dose = { kind: 'timed', sets: 3, seconds: { min: 20, max: 30 }, eachSide: false };
const every: Dose = { kind: 'every', minutes: 10, reps: 5, everySeconds: 90 };
const steps: Dose = { kind: 'steps', reps: [2, 3, 5], times: 4 };
const squatKit = bells('16', '18');
const slower: Partial<Row> = { tempi: ['normal', 'slow lowering'] };

describe('timed', () => {
  test('the reps that fit the seconds at the exercise’s own tempo; a set says both', () => {
    const plan = planOf(withRow({ dose: timed }));
    // 3 s a rep: 6 to 10 reps. 12 to failure at 16 kg with 3 left in week 1: nine, 27 s.
    expect(plan.inputs.strands[0]).toMatchObject({ bottom: 6, top: 10 });
    const [set] = itemsOf(plan)[0]?.sets.filter(({ kind }) => kind === 'work') ?? [];
    expect(set).toMatchObject({ reps: 9, seconds: 27, reserve: 30 });
  });

  test('a feeler set and easier versions are timed too; a hold beside it is a short one', () => {
    const hold = anExercise('wall-sit', { way: 'hold', kit: { load: [], unloaded: true, things: [] } });
    const exercise = anExercise('squat', { easier: [aLink('wall-sit'), aWay('half')] });
    const [item] = itemsOf(planOf(withRow({ dose: timed }), { tests: [] }, [exercise, hold]));
    expect(item?.sets[0]).toMatchObject({ kind: 'feeler', reps: 6, seconds: 18 });
    const sitting = item?.easier.find((one) => one.exercise === 'wall-sit');
    expect(sitting?.sets[0]).toMatchObject({ seconds: 10 });
    expect(sitting?.sets[0]?.reps).toBeUndefined();
    expect(sitting?.sets[0]?.reserve).toBeUndefined();
  });

  test('clock-one-tempo: no slower tempo would fit, and the coach is told', () => {
    const straight = planOf(withRow(slower));
    expect(straight.inputs.strands[0]?.tempi).toHaveLength(2);
    for (const dose of [timed, every, steps]) {
      const plan = planOf(withRow({ dose, ...slower }));
      expect(plan.inputs.strands[0]?.tempi).toHaveLength(1);
      expect(itemsOf(plan)[0]?.reasons.map(({ rule }) => rule)).toContain('clock-one-tempo');
    }
  });
});

describe('at every signal', () => {
  const plan = planOf(withRow({ dose: every }));

  test('the signals are the sets, the reps of each are fixed, and there are no trials', () => {
    expect(plan.inputs.strands[0]).toMatchObject({ bottom: 5, top: 5, trials: false });
    expect(itemsOf(plan)[0]?.asked).toMatchObject({ min: 5, max: 5, sets: 6 });
    const group = plan.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight');
    expect(group?.everySeconds).toBe(90);
  });

  test('circuit-reserve: one rep more is left, as in a circuit', () => {
    expect(itemsOf(plan).map(({ asked }) => asked.reserve)).toEqual([60, 60, 60, 60, 60, 60]);
    expect(itemsOf(plan)[0]?.reasons.map(({ rule }) => rule)).toContain('circuit-reserve');
  });

  test('in fewer reps than that signal asks where the floor leaves no more', () => {
    // 16 kg × 4 with 1 left: 5 to failure, so that three leave two.
    const weak = planOf(withRow({ dose: every }), { tests: [aTest('squat', 4, { load: kg('16'), reserve: 10 })] });
    for (const item of itemsOf(weak)) {
      for (const { reserve } of item.sets) expect(reserve ?? 20).toBeGreaterThanOrEqual(20);
    }
  });
});

describe('rising and falling reps', () => {
  test('once through a set, all its steps together against the reps to failure, since no rest stands between them', () => {
    const [item] = itemsOf(planOf(withRow({ dose: { ...steps, reps: [2, 2, 3] } })));
    const [set] = item?.sets.filter(({ kind }) => kind === 'work') ?? [];
    // 12 to failure less seven.
    expect(set).toMatchObject({ reps: 7, steps: [2, 2, 3], reserve: 50 });
    expect(item?.asked).toMatchObject({ min: 7, max: 7, sets: 4 });
  });

  test('never to failure, though the longest step alone would leave plenty: a lighter load, or the longest steps cut', () => {
    // 12 to failure at 16 kg: fifteen in a row cannot be done; five, the longest, would leave seven.
    const lighter = planOf(withRow({ dose: { kind: 'steps', reps: [1, 2, 3, 4, 5], times: 5 } }), {
      kit: bells('8', '16'),
    });
    for (const { sets } of itemsOf(lighter)) {
      for (const set of sets.filter(({ kind }) => kind === 'work')) {
        expect(set).toMatchObject({ reps: 15, steps: [1, 2, 3, 4, 5], load: { label: '8 kg' } });
        expect(set.reserve).toBeGreaterThanOrEqual(20);
      }
    }
    const cut = planOf(withRow({ dose: { kind: 'steps', reps: [2, 3, 4], times: 2 } }), {
      tests: [aTest('squat', 8, { load: kg('8'), reserve: 20 })],
    });
    // 10 to failure at the load tested, the lightest: seven leave three, the nearest to the four asked.
    const [set] = itemsOf(cut)[0]?.sets.filter(({ kind }) => kind === 'work') ?? [];
    expect(set).toMatchObject({ steps: [2, 2, 3], reps: 7, reserve: 30 });
  });

  test('which steps are cut: the longest, of equal ones the earlier keeps more; of too few reps some are left out', () => {
    const dosing = { rules: layOverrides([]).value, programme: withRow({}), exercises: new Map() };
    const amount = (reps: readonly number[], most: number) =>
      amountIn(dosing, { kind: 'steps', reps, times: 1 }, anExercise('squat'))(
        most,
        anExercise('squat'),
        'normal',
      ).steps?.join('-');
    expect(amount([1, 2, 3, 4, 5], 15)).toBe('1-2-3-4-5');
    expect(amount([1, 2, 3, 4, 5], 13)).toBe('1-2-3-3-4');
    expect(amount([5, 4, 3, 2, 1], 13)).toBe('4-3-3-2-1');
    expect(amount([1, 2, 3, 2, 1], 8)).toBe('1-2-2-2-1');
    expect(amount([2, 3, 5], 2)).toBe('1-1');
  });

  test('an easier way has its steps too, a lighter set before them has none', () => {
    const [item] = itemsOf(planOf(withRow({ dose: { ...steps, reps: [1, 2, 3] } })));
    expect(item?.easier[0]?.sets[0]?.steps).toEqual([1, 2, 2]);
    expect(item?.sets[0]).toMatchObject({ kind: 'warm-up', reps: 3 });
    expect(item?.sets[0]?.steps).toBeUndefined();
  });

  test('neither trials nor gates: a line of steps has no room for them', () => {
    const able = [aTest('squat', 12, { load: kg('16'), reserve: 0 })];
    const gated = planOf(withRow({ dose: { kind: 'sets', sets: 3, reps: { min: 3, max: 3 }, eachSide: false } }), {
      tests: able,
      kit: squatKit,
    });
    expect(JSON.stringify(gated.weeks).includes('"gate"')).toBe(true);
    const plan = planOf(withRow({ dose: { kind: 'steps', reps: [1, 2, 3], times: 3 } }), {
      tests: able,
      kit: squatKit,
    });
    expect(plan.inputs.strands[0]).toMatchObject({ gates: false, trials: false });
    expect(JSON.stringify(plan.weeks).includes('"gate"')).toBe(false);
    const refused = itemsOf(plan).flatMap(({ allowed }) => allowed.flatMap(({ refusedBy }) => refusedBy ?? []));
    expect(refused).toContain('walk-gates-allowed');
  });
});

describe('a row that begins with a slower tempo', () => {
  test('is predicted at that tempo: 80 % of the reps', () => {
    const plan = planOf(withRow({ tempi: ['slow lowering'] }));
    // 12 to failure × 0.8 = 9.6: with 3 left six.
    const [set] = itemsOf(plan)[0]?.sets.filter(({ kind }) => kind === 'work') ?? [];
    expect(set).toMatchObject({ reps: 6, reserve: 36 });
  });
});
