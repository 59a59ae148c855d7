/** How much of an easier version is asked where it is counted otherwise than the row (easier-hold, easier-reps). */
import { expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Dose } from '../../src/model/dose.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { PlanSet } from '../../src/model/plan.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  aWay,
  bodyweight,
  type MadeExercise,
} from './make-block.js';
import { itemsOf, today } from './rows-made.js';

const still = { lower: 0, bottom: 0, lift: 0, top: 0 };
const of = (id: string, facts: MadeExercise): Exercise => anExercise(id, { ...bodyweight, pattern: 'brace', ...facts });
const sets = (min: number, max: number): Dose => ({ kind: 'sets', sets: 3, reps: { min, max }, eachSide: false });
const timed = (min: number, max: number): Dose => ({ kind: 'timed', sets: 3, seconds: { min, max }, eachSide: false });

/** A row, what is easier than it, and what else the programme asks of that. */
interface Given {
  readonly row: MadeExercise;
  readonly dose: Dose;
  readonly easier: MadeExercise;
  readonly also?: Dose;
  readonly rules?: readonly RuleOverride[];
}

const amounts = (all: readonly PlanSet[]): readonly string[] => [
  ...new Set(
    all.map(({ reps, seconds, metres }) =>
      [reps && `${reps} reps`, seconds && `${seconds} s`, metres && `${metres} m`].filter(Boolean).join(', '),
    ),
  ),
];

function easierTo({ row, dose, easier, also, rules = [] }: Given): readonly string[] {
  const exercises = [of('own', { ...row, easier: [aLink('easier'), aWay('shorter')] }), of('easier', easier)];
  const rest = also === undefined ? [] : [aRow('easier', { dose: also })];
  const programme = aProgramme([aSession('A', aBlock([aRow('own', { dose }), ...rest]))]);
  const { value, problems } = planBlock({
    library: aLibrary(exercises, programme),
    client: aClient({ tests: [aTest('own', 20), aTest('easier', 20)] }),
    today,
    edition: 0,
    rulesOverridden: rules,
  });
  if (value === null) throw new Error(JSON.stringify(problems));
  const items = itemsOf(value).filter(({ exercise }) => exercise === 'own');
  expect(items.length).toBeGreaterThan(0);
  const beside = items.flatMap((item) => item.easier.filter(({ exercise }) => exercise === 'easier'));
  return amounts(beside.flatMap((one) => one.sets));
}

const set = (rule: string, value: number): RuleOverride => ({ rule, value, reason: 'tried', place: PLACE });

it('a hold in place of reps lasts ten seconds, not as long as the reps took', () => {
  expect(easierTo({ row: {}, dose: sets(8, 12), easier: { way: 'hold' } })).toEqual(['10 s']);
  expect(easierTo({ row: {}, dose: sets(4, 5), easier: { way: 'hold' } })).toEqual(['10 s']);
  expect(easierTo({ row: {}, dose: sets(8, 12), easier: { way: 'hold' }, rules: [set('easier-hold', 7)] })).toEqual([
    '7 s',
  ]);
});

it('or the least that the programme asks of that hold, longer or shorter', () => {
  for (const [min, max] of [
    [5, 15],
    [20, 40],
  ] as const) {
    expect(easierTo({ row: {}, dose: sets(8, 12), easier: { way: 'hold' }, also: timed(min, max) })).toEqual([
      `${min} s`,
    ]);
  }
});

it('on a ladder too: in place of reps on mobility, and of metres and seconds of what is not held', () => {
  const hold = { way: 'hold' } as const;
  expect(easierTo({ row: { way: 'mobility' }, dose: sets(8, 12), easier: hold })).toEqual(['10 s']);
  expect(easierTo({ row: { way: 'conditioning' }, dose: timed(40, 60), easier: hold })).toEqual(['10 s']);
  const metres: Dose = { kind: 'distance', sets: 3, metres: { min: 30, max: 30 }, eachSide: false };
  expect(easierTo({ row: { way: 'conditioning' }, dose: metres, easier: hold })).toEqual(['10 s']);
});

it('in place of another hold as long as that, and no longer than the programme asks of it', () => {
  const hold = { way: 'hold' } as const;
  expect(easierTo({ row: hold, dose: timed(20, 40), easier: hold })).toEqual(['20 s']);
  expect(easierTo({ row: hold, dose: timed(20, 40), easier: hold, also: timed(5, 10) })).toEqual(['5 s']);
  expect(easierTo({ row: hold, dose: timed(20, 40), easier: hold, also: timed(30, 60) })).toEqual(['20 s']);
});

it('reps in place of a hold are five, or the fewest that the programme asks, never seconds', () => {
  for (const easier of [{}, { way: 'mobility' }] as const) {
    const given = { row: { way: 'hold' }, dose: timed(20, 40), easier } as const;
    expect(easierTo(given)).toEqual(['5 reps']);
    expect(easierTo({ ...given, also: sets(3, 6) })).toEqual(['3 reps']);
    expect(easierTo({ ...given, rules: [set('easier-reps', 2)] })).toEqual(['2 reps']);
  }
});

it('mobility counts as the programme asks for it, else in reps unless its tempo is steady', () => {
  const walked = { row: {}, dose: sets(8, 12) } as const;
  expect(easierTo({ ...walked, easier: { way: 'mobility' } })).toEqual(['8 reps']);
  expect(easierTo({ ...walked, easier: { way: 'mobility', tempo: still } })[0]).toMatch(/^\d+ s$/);
  expect(easierTo({ ...walked, easier: { way: 'mobility' }, also: timed(20, 20) })).toEqual(['20 s']);
  const held = { row: { way: 'hold' }, dose: timed(20, 40) } as const;
  expect(easierTo({ ...held, easier: { way: 'mobility', tempo: still } })).toEqual(['20 s']);
});
