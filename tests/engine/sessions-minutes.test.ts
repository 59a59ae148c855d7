/** The clock, counted by hand: every dose and way, rests, changes, trips to the floor, plates, tests. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Dose } from '../../src/model/dose.js';
import type { Exercise, Facts } from '../../src/model/exercise.js';
import { exerciseId, rowId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import type { Block, Programme, Row } from '../../src/model/programme.js';
import { kitOf } from './generate-studio.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aSignOff,
  ask,
  aTest,
  bells,
  bodyweight,
  kg,
  on,
} from './make-block.js';
import { made, type Overrides, overrides, workSeconds } from './make-session.js';

/** Three seconds a rep by tempo, unless said otherwise; without a load. */
const one = (facts: Partial<Facts>) => [anExercise('a', { ...bodyweight, ...facts })];
const sets = (count: number, min: number, max = min, eachSide = false): Dose => ({
  kind: 'sets',
  sets: count,
  reps: { min, max },
  eachSide,
});

/** Seconds of one row, without the 20 s to the next exercise. */
function seconds(
  facts: Partial<Facts>,
  dose: Dose,
  row: Partial<Row> = {},
  more: Partial<Client> = {},
  values: Overrides = {},
) {
  const programme = aProgramme([aSession('A', aBlock([aRow('a', { dose, restSeconds: 60, ...row })]))]);
  const client = { signOffs: [aSignOff('a', { upTo: kg('24') })], ...more };
  return workSeconds(made(programme, one(facts), client, values)) - 20;
}

describe('one set', () => {
  test.each<[string, Partial<Facts>, Dose, Partial<Row>, number]>([
    ['reps at the top of the range, by the tempo', {}, sets(3, 6, 10), {}, 3 * 30 + 2 * 60],
    ['one side after the other', { sides: 'each' }, sets(3, 6, 10), {}, 3 * 60 + 2 * 60],
    ['turn about, counted for both together', { sides: 'alternate' }, sets(3, 6, 10), {}, 3 * 30 + 2 * 60],
    ['turn about, counted for each side', { sides: 'alternate' }, sets(3, 6, 10, true), {}, 3 * 60 + 2 * 60],
    [
      'the slowest tempo it may reach: 4 s down, 1 s up',
      {},
      sets(2, 8),
      { tempi: ['normal', 'slow lowering'] },
      2 * 40 + 60,
    ],
    ['with a pause of 2 s', {}, sets(2, 8), { tempi: ['normal', 'slow with a pause'] }, 2 * 56 + 60],
    ['no tempo: 3 s', { tempo: { lower: 0, bottom: 0, lift: 0, top: 0 } }, sets(2, 8), {}, 2 * 24 + 60],
    ['set down on the floor, 5 s a set', { onTheFloor: true }, sets(2, 8), {}, 2 * 29 + 60],
    [
      'rising reps: all of them, so many times through',
      {},
      { kind: 'steps', reps: [2, 3, 5], times: 3 },
      {},
      3 * 30 + 2 * 60,
    ],
    ['… a put-down for each step', { onTheFloor: true }, { kind: 'steps', reps: [2, 3, 5], times: 1 }, {}, 30 + 3 * 5],
    [
      'seconds',
      { way: 'hold' },
      { kind: 'timed', sets: 3, seconds: { min: 20, max: 40 }, eachSide: false },
      {},
      3 * 40 + 2 * 60,
    ],
    [
      'seconds of each side',
      { way: 'hold', sides: 'each' },
      { kind: 'timed', sets: 3, seconds: { min: 20, max: 40 }, eachSide: true },
      {},
      3 * 80 + 120,
    ],
    [
      'work and rest',
      { way: 'conditioning' },
      { kind: 'timed', sets: 8, seconds: { min: 20, max: 20 }, eachSide: false },
      { restSeconds: 40 },
      8 * 20 + 7 * 40,
    ],
    [
      'metres, a second and a half each',
      { way: 'conditioning' },
      { kind: 'distance', sets: 2, metres: { min: 10, max: 20 }, eachSide: false },
      {},
      2 * 30 + 60,
    ],
    [
      'a round of what the page describes',
      { way: 'mobility' },
      { kind: 'rounds', rounds: 3 },
      { restSeconds: 10 },
      3 * 60 + 20,
    ],
    [
      'by the signal: the minutes, rests included',
      {},
      { kind: 'every', minutes: 10, reps: 8, everySeconds: 60 },
      {},
      600,
    ],
    ['… every ninety seconds, whole signals', {}, { kind: 'every', minutes: 10, reps: 8, everySeconds: 90 }, {}, 540],
    ['swings at their own pace: 10 in 27 s', { way: 'swing' }, sets(5, 10), { restSeconds: 30 }, 5 * 27 + 4 * 30],
    ['… a second begun counts whole: 7 in 18.9 s', { way: 'swing' }, sets(1, 7), {}, 19],
  ])('%s', (_, facts, dose, row, expected) => {
    expect(seconds(facts, dose, row)).toBe(expected);
  });

  test('the walked reps of a timed set, where they are slower than the seconds', () => {
    // 30 s hold ten reps of 3 s; lowered slowly they take 5 s each.
    const dose: Dose = { kind: 'timed', sets: 2, seconds: { min: 20, max: 30 }, eachSide: false };
    expect(seconds({}, dose)).toBe(2 * 30 + 60);
    expect(seconds({}, dose, { tempi: ['normal', 'slow lowering'] })).toBe(2 * 50 + 60);
  });

  test('main bell, then the next one up: all reps, and the change between them', () => {
    const swing = {
      way: 'swing',
      kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] },
    } as const;
    // 20 swings 54 s, a change to the next one up 15 s, and the bell to begin with 15 s.
    expect(seconds(swing, { kind: 'main-next', main: 15, next: 5 })).toBe(54 + 15 + 15);
  });

  test('a combination takes at least what its parts take', () => {
    const part = (id: string, lower: number) =>
      anExercise(id, { ...bodyweight, tempo: { lower, bottom: 0, lift: 1, top: 0 } });
    const whole = anExercise('a', {
      ...bodyweight,
      way: 'combination',
      parts: [exerciseId('p'), exerciseId('q')],
      bodyShare: { share: 500, standing: 'practice', source: 'made up' },
    });
    const programme = aProgramme([aSession('A', aBlock([aRow('a', { dose: sets(1, 5) })]))]);
    // 3 s and 4 s a rep against its own 3 s.
    expect(workSeconds(made(programme, [whole, part('p', 2), part('q', 3)], {}))).toBe(5 * 7 + 20);
  });

  test.each<[string, number, number]>([
    ['seconds-a-rep', 4, 2 * 32 + 60],
    ['put-down', 9, 2 * 33 + 60],
  ])('%s as the coach sets it', (rule, value, expected) => {
    const facts = { tempo: { lower: 0, bottom: 0, lift: 0, top: 0 }, onTheFloor: rule === 'put-down' } as const;
    expect(seconds(facts, sets(2, 8), {}, {}, { [rule]: value })).toBe(expected);
  });

  test.each<[string, Partial<Facts>, Dose, number, number]>([
    ['seconds-a-swing', { way: 'swing' }, sets(1, 10), 30, 30],
    [
      'seconds-a-metre',
      { way: 'conditioning' },
      { kind: 'distance', sets: 1, metres: { min: 20, max: 20 }, eachSide: false },
      20,
      40,
    ],
    ['seconds-a-round', { way: 'mobility' }, { kind: 'rounds', rounds: 1 }, 90, 90],
    ['slow-lowering-seconds', {}, sets(1, 6), 6, 42],
    ['pause-seconds', {}, sets(1, 6), 3, 48],
  ])('%s set by the coach', (rule, facts, dose, value, expected) => {
    const tempi =
      rule === 'pause-seconds'
        ? (['slow with a pause'] as const)
        : rule.startsWith('slow')
          ? (['slow lowering'] as const)
          : (['normal'] as const);
    expect(seconds(facts, dose, { tempi }, {}, { [rule]: value })).toBe(expected);
  });
});

describe('between sets and rows', () => {
  const floor = { ...bodyweight, asks: [ask('floor')] };
  const library: readonly Exercise[] = [
    ...['s1', 's2'].map((id) => anExercise(id, bodyweight)),
    ...['f1', 'f2', 'f3'].map((id) => anExercise(id, floor)),
    ...['b1', 'b2'].map((id) => anExercise(id)),
  ];
  const dose = sets(1, 10);
  const work = (blocks: readonly Block[], client: Partial<Client> = {}, values: Overrides = {}, exercises = library) =>
    workSeconds(made(aProgramme([aSession('A', ...blocks)]), exercises, client, values));
  const block = (ids: string, more: Partial<Block> = {}) =>
    aBlock(
      ids.split(' ').map((id) => aRow(id, { dose, restSeconds: 0 })),
      more,
    );
  const rounds = { kind: 'circuit', rounds: 3 } as const;

  test('30 s of work and 20 s to the next, each', () => {
    expect(work([block('s1 s2')])).toBe(100);
    expect(work([block('s1 s2')], {}, { 'between-exercises': 30 })).toBe(120);
  });

  test('one trip to the floor for all in a row that need it, from block to block', () => {
    expect(work([block('f1 s1 f2')])).toBe(150 + 40);
    expect(work([block('s1 f1'), block('f2 s2')])).toBe(200 + 40);
    expect(work([block('f1'), block('s1'), block('f2')])).toBe(150 + 40 + 40);
    expect(work([block('f1 s1')], {}, { 'down-or-up': 30 })).toBe(100 + 60);
  });

  test('in a circuit a trip each round, unless one stays down', () => {
    // Three rounds of two rows of 30 s, a way each of 20 s.
    expect(work([block('f1 s1', rounds)])).toBe(180 + 40 + 3 * 40);
    expect(work([block('f1 f2', rounds)])).toBe(180 + 40 + 40);
  });

  test('a change of bell before the first row with one, and wherever another may be wanted', () => {
    expect(work([block('b1 b2')])).toBe(100 + 2 * 15);
    expect(work([block('b1 s1 b2')])).toBe(150 + 2 * 15);
    expect(work([block('b1 b2')], {}, { 'change-of-bell': 25 })).toBe(100 + 2 * 25);
  });

  test('no change where both can only be done with the very same bell', () => {
    expect(work([block('b1 b2')], { kit: bells('16') })).toBe(100 + 15);
    expect(work([block('b1 s1 b2')], { kit: bells('16') })).toBe(150 + 15);
  });

  test('in a circuit one bell alone is never changed, two are at every visit', () => {
    expect(work([block('b1 s1', rounds)])).toBe(180 + 40 + 15);
    expect(work([block('b1 b2', rounds)])).toBe(180 + 40 + 6 * 15);
  });

  test('plates: a minute to put them on, in a circuit once', () => {
    const plated = {
      kit: { load: [{ kind: 'dumbbell', count: 1, unequal: false }], unloaded: false, things: [] },
    } as const;
    const kit = kitOf([
      ['handle', kg('2')],
      ['bell', kg('16')],
      ...['2', '2'].map((figure) => ['plate', kg(figure)] as const),
    ]);
    const exercises = [anExercise('p', plated), anExercise('b'), anExercise('s', bodyweight)];
    expect(work([block('p b')], { kit }, {}, exercises)).toBe(100 + 60 + 15);
    expect(work([block('p b')], { kit }, { 're-plating': 90 }, exercises)).toBe(100 + 90 + 15);
    expect(work([block('p b', rounds)], { kit }, {}, exercises)).toBe(180 + 40 + 60 + 5 * 15);
    expect(work([block('p s', rounds)], { kit }, {}, exercises)).toBe(180 + 40 + 60);
  });

  test('rests between sets, in a circuit after each', () => {
    const rested = (more: Partial<Block>) => aBlock([aRow('s1', { dose: sets(3, 10), restSeconds: 60 })], more);
    expect(work([rested({})])).toBe(90 + 2 * 60 + 20);
    expect(work([rested(rounds)])).toBe(90 + 3 * 60 + 20);
  });
});

describe('cut to the minutes', () => {
  const plan = (
    programme: Programme,
    exercises: readonly Exercise[],
    client: Partial<Client>,
    values: Overrides = {},
  ): Plan => {
    const { value, problems } = planBlock({
      library: aLibrary(exercises, programme),
      client: aClient(client),
      today: on('2026-12-20'),
      edition: 0,
      rulesOverridden: overrides(values),
    });
    if (value === null) throw new Error(JSON.stringify(problems));
    return value;
  };
  const first = (of: Plan) => of.weeks[0]?.sessions[0];
  const work = (of: Plan) =>
    first(of)
      ?.groups.filter(({ kind }) => kind !== 'warm-up')
      .flatMap(({ items }) => items) ?? [];

  test('a dose by the signal loses whole signals, so minutes', () => {
    const swing = anExercise('a', { ...bodyweight, way: 'swing' });
    const dose: Dose = { kind: 'every', minutes: 10, reps: 10, everySeconds: 60 };
    const programme = aProgramme([aSession('A', aBlock([aRow('a', { dose })]))]);
    const client = { signOffs: [aSignOff('a')] };
    const whole = plan(programme, [swing], { ...client, minutes: 60 });
    expect(first(whole)?.minutes).toBe(Math.ceil((300 + 600 + 20) / 60));
    const cut = plan(programme, [swing], { ...client, minutes: 13 });
    // 13 minutes less five of warm-up and 20 s: seven signals of a minute.
    expect(first(cut)?.minutes).toBe(13);
    expect(first(cut)?.trimmed.map(({ row, what, sets: fewer }) => [row, what, fewer])).toEqual([['a', 'sets', 3]]);
    expect(first(cut)?.trimmed[0]?.reason.rule).toBe('minutes-cap');
    expect(work(cut)[0]?.asked.sets).toBeLessThanOrEqual(7);
    expect(first(cut)?.groups[1]).toMatchObject({ kind: 'straight', everySeconds: 60 });
  });

  test('a circuit loses whole rounds', () => {
    const rows = ['a', 'b'].map((id) => aRow(id, { dose: sets(1, 10), restSeconds: 30 }));
    const exercises = ['a', 'b'].map((id) => anExercise(id, bodyweight));
    const programme = aProgramme([aSession('A', aBlock(rows, { kind: 'circuit', rounds: 4 }))]);
    const tests = ['a', 'b'].map((id) => aTest(id, 12));
    // A round is two rows of 30 s and 30 s of rest: 120 s. Five minutes and 40 s of ways leave two rounds in ten.
    const cut = plan(programme, exercises, { minutes: 10, tests });
    expect(first(cut)?.groups[1]).toMatchObject({ kind: 'circuit', rounds: 2 });
    expect(first(cut)?.minutes).toBe(Math.ceil((300 + 40 + 2 * 120) / 60));
  });

  test('an easy week has at least one set fewer: easy-week-sets', () => {
    const exercises = [anExercise('a', bodyweight)];
    const programme = aProgramme([aSession('A', aBlock([aRow('a')]))], {
      curve: [
        { reserve: 30, share: 1000, easy: false },
        { reserve: 40, share: 1000, easy: true },
      ],
    });
    const setsIn = (values: Overrides) =>
      plan(programme, exercises, { tests: [aTest('a', 12)] }, values).weeks.map(
        ({ sessions }) => sessions[0]?.groups[1]?.items[0]?.asked.sets,
      );
    expect(setsIn({})).toEqual([3, 2]);
    expect(setsIn({ 'easy-week-sets': 2 })).toEqual([3, 1]);
  });

  test('a test in the first and the last session takes as much longer as it may go on', () => {
    const exercises = [anExercise('a', bodyweight)];
    const rows = aProgramme([aSession('A', aBlock([aRow('a')]))], { tests: [rowId('a')] });
    const minutes = (programme: Programme) =>
      plan(programme, exercises, { tests: [aTest('a', 12)] }, { 'test-most': 20 }).weeks.map(
        ({ sessions }) => sessions[0]?.minutes ?? 0,
      );
    const tested = minutes(rows);
    const without = minutes({ ...rows, tests: [] });
    // Twenty reps more at 3 s: a minute, to the second.
    expect(tested.map((count, week) => count - (without[week] ?? 0))).toEqual([1, 0, 0, 0, 0, 1]);
  });

  test('work and pause stand with the group that goes by them', () => {
    const breath = anExercise('a', { ...bodyweight, way: 'conditioning' });
    const dose: Dose = { kind: 'timed', sets: 8, seconds: { min: 20, max: 20 }, eachSide: false };
    const programme = aProgramme([aSession('A', aBlock([aRow('a', { dose, restSeconds: 40 })]))]);
    expect(first(plan(programme, [breath], {}))?.groups[1]).toMatchObject({ workSeconds: 20, pauseSeconds: 40 });
  });
});
