/** Sides far apart, unequal pairs, added loads and plates: what hands hold through the whole walk. */
import { describe, expect, test } from 'vitest';
import type { Test } from '../../src/model/client.js';
import type { PlanSet } from '../../src/model/plan.js';
import { kitOf } from './generate-studio.js';
import { aCaution, anExercise, ask, aTest, bells, kg } from './make-block.js';
import { itemsOf, planOf, saySet, tests, withRow } from './rows-made.js';

const lunge = anExercise('squat', { sides: 'each' });
const sided = (left: Partial<Test>, right: Partial<Test>) => [
  aTest('squat', 10, { load: kg('16'), side: 'left', ...left }),
  aTest('squat', 10, { load: kg('16'), side: 'right', ...right }),
];
/** Right 12 kg, left 20 kg, both for 8 with 2 left: a gap of 40 %. */
const apart = sided({ load: kg('20'), reps: 8 }, { load: kg('12'), reps: 8 });
const work = (sets: readonly PlanSet[] | undefined) => (sets ?? []).filter(({ kind }) => kind === 'work').map(saySet);

describe('side-gap-own-bell', () => {
  test('above the gap that is asked about, the stronger side does two sets with its own bell', () => {
    const [first] = itemsOf(planOf(withRow({}), { tests: apart }, [lunge]));
    // Ten to failure at 12 kg right: seven leave three. Left: 20,000 × 400 / 20,000 − 300 is ten too.
    expect(work(first?.sets)).toEqual([
      '12 kg × 7 right',
      '20 kg × 7 left',
      '12 kg × 7 right',
      '20 kg × 7 left',
      '12 kg × 7 right',
      '12 kg × 7 left',
    ]);
    expect(first?.sets.find(({ side, load }) => side === 'left' && load?.grams === 20_000)?.reserve).toBe(30);
    const rules = first?.reasons.map(({ rule, audience }) => `${rule} ${audience}`);
    expect(rules).toContain('side-gap-own-bell coach');
    expect(rules).toContain('side-gap-own-bell client');
  });

  test('no heavier than leaves that side the reserve asked', () => {
    // Left tested at 20 × 5 with 2 left: 7 to failure there; at 16 kg 20,000 × 370 / 16,000 − 300 = 16.2.
    const tested = sided({ load: kg('20'), reps: 5 }, { load: kg('12'), reps: 6 });
    const [first] = itemsOf(planOf(withRow({}), { tests: tested }, [lunge]));
    expect(work(first?.sets).slice(0, 2)).toEqual(['12 kg × 6 right', '16 kg × 6 left']);
  });

  test('not at or below that gap, nor in the easy week', () => {
    // 380 against 460 at one load: 17 %.
    const near = sided({ reps: 14 }, { reps: 6 });
    const loads = (of: readonly Test[]) =>
      itemsOf(planOf(withRow({}), { tests: of }, [lunge])).map(
        ({ sets }) => new Set(work(sets).map((set) => set.split(' ×')[0])).size,
      );
    expect(Math.max(...loads(near))).toBe(1);
    expect(loads(apart).at(0)).toBe(2);
    expect(loads(apart).at(-1)).toBe(1);
  });

  test.each([
    [
      'a caution is met',
      { cautions: [aCaution('knee', { degree: 'take care' })] },
      anExercise('squat', { sides: 'each', asks: [ask('knee')] }),
    ],
    [
      'the stronger side’s test is weak',
      { tests: sided({ load: kg('20'), reps: 8, inCircuit: true }, { load: kg('12'), reps: 8 }) },
      lunge,
    ],
  ] as const)('not where %s', (_, client, exercise) => {
    const items = itemsOf(planOf(withRow({}), { tests: apart, ...client }, [exercise]));
    for (const { reasons } of items) expect(reasons.map(({ rule }) => rule)).not.toContain('side-gap-own-bell');
  });

  test('its changes of bell are counted in the minutes', () => {
    const minutes = (of: readonly Test[]) =>
      planOf(withRow({}), { tests: of }, [lunge]).weeks[0]?.sessions[0]?.minutes ?? 0;
    const even = sided({ load: kg('12'), reps: 8 }, { load: kg('12'), reps: 8 });
    // Three sets, there and back, 15 s each: a minute and a half.
    expect(minutes(apart) - minutes(even)).toBeGreaterThanOrEqual(1);
  });
});

describe('unequal-hands', () => {
  const pair = anExercise('squat', {
    kit: { load: [{ kind: 'bell', count: 2, unequal: true }], unloaded: false, things: [] },
    holds: 'per-hand',
  });

  test('two unequal bells count by their sum through the walk, and change hands', () => {
    const kit = bells('9', '11', '12');
    const plan = planOf(withRow({}), { kit, tests: [aTest('squat', 10, { load: kg('10') })] }, [pair]);
    expect(plan.inputs.strands[0]?.versions[0]?.loads.map(({ label, grams }) => [label, grams])).toEqual([
      ['9 kg + 11 kg', 10_000],
      ['9 kg + 12 kg', 10_500],
      ['11 kg + 12 kg', 11_500],
    ]);
    // A test of 10 kg in a hand is 20 kg in both.
    expect(plan.inputs.strands[0]?.capacity?.resisted).toBe(20_000);
    const [first] = itemsOf(plan);
    expect(work(first?.sets)[0]).toBe('9 kg + 11 kg × 9');
    expect(first?.reasons.map(({ rule }) => rule)).toContain('unequal-hands');
  });

  test('equal ones, and plates on a handle, say nothing of hands', () => {
    const kit = bells('12', '12');
    const [first] = itemsOf(planOf(withRow({}), { kit, tests: [aTest('squat', 10, { load: kg('12') })] }, [pair]));
    expect(first?.reasons.map(({ rule }) => rule)).not.toContain('unequal-hands');
  });
});

describe('an added load', () => {
  const dip = anExercise('squat', {
    holds: 'added',
    bodyShare: { share: 640, standing: 'published', source: 'Ebben et al. 2011' },
    kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: true, things: [] },
  });
  const bodyMass = { mass: kg('80') };

  test('counts whole beside the body, from the body alone upwards', () => {
    const plan = planOf(withRow({}), { bodyMass, tests: [aTest('squat', 8, { load: kg('8') })] }, [dip]);
    const strand = plan.inputs.strands[0];
    // 8,000 + 0.64 × 80,000.
    expect(strand?.capacity?.resisted).toBe(59_200);
    expect(strand?.versions[0]?.loads[0]).toMatchObject({ grams: 0 });
    // (59,200 × 400 − 300 × 59,200) / 59,200 = 10: seven leave three.
    expect(work(itemsOf(plan)[0]?.sets)[0]).toBe('8 kg × 7');
    expect(itemsOf(plan)[0]?.sets.at(-1)?.load).toMatchObject({ mode: 'added', kg: 8 });
  });

  test('climbs from the body alone through a gate', () => {
    const plan = planOf(
      withRow({ dose: { kind: 'sets', sets: 3, reps: { min: 5, max: 8 }, eachSide: false } }),
      {
        bodyMass,
        kit: bells('4', '8'),
        tests: [aTest('squat', 10)],
      },
      [dip],
    );
    // 51,200 × 420 / 55,200 − 300 = 8.9 at 4 kg added: five and two.
    const gated = itemsOf(plan).flatMap(({ sets }) => sets.filter(({ gate }) => gate !== undefined));
    expect(gated[0]?.load).toMatchObject({ label: '4 kg', mode: 'added' });
    expect(gated[0]?.gate?.needs.load).toBeUndefined();
  });
});

describe('plates-a-side', () => {
  const curl = anExercise('squat', {
    kit: { load: [{ kind: 'dumbbell', count: 1, unequal: false }], unloaded: false, things: [] },
  });
  const kit = kitOf([['handle', kg('2')], ...Array.from({ length: 14 }, () => ['plate', kg('1')] as const)]);

  test('a handle holds five plates on a side, unless the coach says otherwise', () => {
    const loads = planOf(withRow({}), { kit, tests }, [curl]).inputs.strands[0]?.versions[0]?.loads ?? [];
    expect(loads.map(({ grams }) => grams / 1000)).toEqual([2, 4, 6, 8, 10, 12]);
    expect(Math.max(...loads.map(({ pieces }) => pieces.length))).toBe(11);
  });
});
