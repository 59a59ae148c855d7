/** Tests as planned parts of a block: test sets of rows, and the measures of older clients. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { TEST_RESERVE } from '../../src/engine/rules/test-reserve.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import { exerciseId, rowId, sessionId } from '../../src/model/identity.js';
import type { Group, Item, Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aCaution,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  ask,
  aTest,
  aWay,
  bodyweight,
  kg,
  on,
} from './make-block.js';

const today = on('2026-12-20');
const tests = [aTest('squat', 10, { load: kg('16') })];
const tested = (programme: Partial<Programme> = {}, row: Parameters<typeof aRow>[1] = {}): Programme =>
  aProgramme([aSession('A', aBlock([aRow('squat', row)]))], { tests: [rowId('squat')], ...programme });
const made = (
  client: Partial<Client> = {},
  programme = tested(),
  exercises: readonly Exercise[] = [anExercise('squat')],
) => planBlock({ library: aLibrary(exercises, programme), client: aClient({ tests, ...client }), today, edition: 0 });
const planOf = (...given: Parameters<typeof made>): Plan => {
  const { value, problems } = made(...given);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const groupsOf = (plan: Plan): readonly (readonly Group[])[] =>
  plan.weeks.flatMap(({ sessions }) => sessions.map(({ groups }) => groups));
const itemsOf = (plan: Plan, row = 'squat'): readonly Item[] =>
  groupsOf(plan).flatMap((groups) => groups.flatMap((group) => group.items.filter((item) => item.row === row)));
const kinds = (plan: Plan) => itemsOf(plan).map(({ sets }) => sets.map(({ kind }) => kind));

describe('a row the programme tests', () => {
  const plan = planOf();
  const items = itemsOf(plan);

  test('has a test set in place of a work set in the first and the last session it stands in', () => {
    const work = ['warm-up', 'work', 'work', 'work'];
    expect(kinds(plan)).toEqual([
      ['warm-up', 'test', 'work', 'work'],
      work,
      work,
      work,
      work,
      ['warm-up', 'test', 'work'],
    ]);
    const untested = planOf({}, tested({ tests: [] }));
    expect(items.map(({ asked }) => asked.sets)).toEqual(itemsOf(untested).map(({ asked }) => asked.sets));
  });

  test('the same exercise, load and rest, up to test-most above the range, stopped at the floor', () => {
    const [set] = items[0]?.sets.filter(({ kind }) => kind === 'test') ?? [];
    const [work] = items[0]?.sets.filter(({ kind }) => kind === 'work') ?? [];
    expect(set).toMatchObject({ reps: 15, stopAt: { reserve: 20 }, round: 1 });
    expect(set?.load).toEqual(work?.load);
    expect(set?.reserve).toBeUndefined();
    expect(work?.round).toBe(1);
    const keys = items[0]?.sets.map(({ key }) => String(key)) ?? [];
    expect(keys).toEqual([
      '2/1/squat/both/warm-up/1',
      '2/1/squat/both/test/1',
      '2/1/squat/both/work/1',
      '2/1/squat/both/work/2',
    ]);
  });

  test('never below a higher floor: test-reserve gives way to novices, older clients and first blocks', () => {
    const reserves = (client: Partial<Client>) =>
      itemsOf(planOf(client)).flatMap(({ sets }) => sets.flatMap(({ stopAt }) => stopAt?.reserve ?? []));
    expect(reserves({})).toEqual([20, 20]);
    expect(reserves({ experience: 'novice' })).toEqual([30, 30]);
    expect(reserves({ blocksBefore: 0 })).toEqual([20]);
    const lowest = { rule: 'floor-alone', value: 10, reason: 'tests to one left', place: PLACE };
    const own = planBlock({
      library: aLibrary([anExercise('squat')], tested()),
      client: aClient({ tests }),
      today,
      edition: 0,
      rulesOverridden: [lowest, { ...lowest, rule: 'test-reserve', value: 15 }],
    }).value;
    const stops =
      own === null ? [] : itemsOf(own).flatMap(({ sets }) => sets.flatMap(({ stopAt }) => stopAt?.reserve ?? []));
    expect(stops).toEqual([15, 15]);
    expect(TEST_RESERVE.value).toBe(10);
  });

  test('nothing is tried in that week: the occurrence is held, and no gate or trial stands beside a test', () => {
    const held = plan.inputs.strands[0]?.occurrences.map((each) => each.held?.why ?? '');
    expect(held).toEqual(['test', '', '', '', '', 'test']);
    for (const { sets } of items.filter((item) => item.sets.some(({ kind }) => kind === 'test'))) {
      expect(sets.some(({ kind, gate }) => kind === 'trial' || gate !== undefined)).toBe(false);
    }
  });

  test('both sides are tested, the weaker first', () => {
    const sides = anExercise('squat', { sides: 'each' });
    const one = [
      aTest('squat', 8, { load: kg('12'), side: 'right' }),
      aTest('squat', 10, { load: kg('12'), side: 'left' }),
    ];
    const [item] = itemsOf(planOf({ tests: one }, tested(), [sides]));
    expect(item?.sets.filter(({ kind }) => kind === 'test').map(({ side }) => side)).toEqual(['right', 'left']);
  });

  test('where a feeler set comes first it is the test; at the end the test has the line that holds', () => {
    const unknown = itemsOf(planOf({ tests: [] }));
    expect(unknown[0]?.sets.map(({ kind }) => kind)).toEqual(['feeler', 'work', 'work', 'work']);
    const last = unknown.at(-1)?.sets[0];
    expect([last?.kind, last?.load]).toEqual(['test', undefined]);
    expect(last?.choose?.length ?? 0).toBeGreaterThan(0);
  });

  test('is told apart in words', () => {
    const english = speechOf('en-GB');
    const reason = items[0]?.reasons.find(({ rule, audience }) => rule === 'test-reserve' && audience === 'client');
    expect(reason === undefined ? '' : sayReason(reason, 'client', english)).toBe(
      'A test, to see where you stand. As many good reps as you can, and stop with 2 left.',
    );
    expect(items[1]?.reasons.some(({ rule }) => rule === 'test-reserve')).toBe(false);
  });

  test('a row without reps to failure is told (test-not-counted)', () => {
    const hold = anExercise('squat', { ...bodyweight, way: 'hold' });
    const row = { dose: { kind: 'timed', sets: 3, seconds: { min: 20, max: 40 }, eachSide: false } } as const;
    const { value, problems } = made({}, tested({}, row), [hold]);
    expect(problems).toEqual([]);
    expect(value?.findings.filter(({ rule }) => rule === 'test-not-counted').map((each) => each.row)).toEqual([
      'squat',
    ]);
    expect(value === null ? [] : kinds(value).flat()).not.toContain('test');
  });
});

describe('the measures of older clients', () => {
  const chair = anExercise('chair-stand', { ...bodyweight, measure: 'chair stand', easier: [aWay('hands', ['load'])] });
  const leg = anExercise('leg-stand', {
    ...bodyweight,
    way: 'hold',
    sides: 'each',
    measure: 'one-leg stand',
    asks: [ask('balance')],
    easier: [aLink('chair-stand'), aWay('fingertips', ['balance'])],
  });
  const all = [anExercise('squat'), chair, leg];
  const older = { birthYear: 1955 };
  const groups = (plan: Plan) => groupsOf(plan).map((each) => each.find(({ kind }) => kind === 'test')?.items ?? []);

  test('stand in the first and the last session, for clients from older-from', () => {
    const plan = planOf(older, tested(), all);
    expect(groups(plan).map((items) => items.map(({ exercise }) => exercise))).toEqual([
      ['chair-stand', 'leg-stand'],
      [],
      [],
      [],
      [],
      ['chair-stand', 'leg-stand'],
    ]);
    expect(groups(planOf({}, tested(), all)).flat()).toEqual([]);
  });

  test('30 seconds of full stands (chair-stand-seconds), and of standing on each leg (one-leg-seconds)', () => {
    const [items] = groups(planOf(older, tested(), all));
    const [stand, balance] = items ?? [];
    // The published measure is as many as there are in the time: with a reserve to stop at it would be another.
    expect(stand?.sets.map(({ kind, seconds, stopAt }) => [kind, seconds, stopAt])).toEqual([['test', 30, undefined]]);
    expect(balance?.sets.map(({ side, seconds, stopAt }) => [side, seconds, stopAt])).toEqual([
      ['left', 30, undefined],
      ['right', 30, undefined],
    ]);
    for (const item of items ?? []) {
      expect(item.easier.length).toBeGreaterThan(0);
      for (const { sets } of item.easier) expect(sets.map(({ seconds }) => seconds)).toEqual(item.sets.map(() => 30));
    }
  });

  test('only those this client may do', () => {
    const plan = planOf({ ...older, cautions: [aCaution('balance')] }, tested(), all);
    expect(groups(plan)[0]?.map(({ exercise }) => exercise)).toEqual(['chair-stand']);
  });

  test('their time counts in the session', () => {
    const minutes = (exercises: readonly Exercise[]) =>
      planOf(older, tested(), exercises).weeks[0]?.sessions[0]?.minutes;
    expect(minutes(all) ?? 0).toBeGreaterThan(minutes([anExercise('squat')]) ?? 0);
  });

  test('a low chair stand is told: chair-stand-low at any age, chair-stand-norm by the lower column', () => {
    const found = (reps: number, birthYear = 1950) => {
      const test = aTest('chair-stand', reps, { exercise: exerciseId('chair-stand'), date: on('2026-12-01') });
      const plan = planOf({ birthYear, tests: [...tests, test] }, tested(), all);
      return plan.findings.filter(({ rule }) => rule.startsWith('chair-stand')).map(({ rule }) => rule);
    };
    expect(found(7)).toEqual(['chair-stand-low']);
    expect(found(8)).toEqual(['chair-stand-norm']);
    expect(found(9)).toEqual(['chair-stand-norm']);
    // 75 in 2026: 10 of the printed 10 to 15 is within.
    expect(found(10)).toEqual([]);
    expect(found(8, 1936)).toEqual([]);
  });
});

describe('an exercise is tested once at each end (test-once)', () => {
  const days = [1, 3, 5] as const;
  const squats = (...letters: readonly string[]) => letters.map((id) => aSession(id, aBlock([aRow('squat')])));
  const asked = { tests: [rowId('squat')] };
  const inThree = aProgramme([...squats('A'), aSession('B', aBlock([aRow('row')])), ...squats('C')], asked);
  const library = [
    anExercise('squat', { muscles: { main: ['quadriceps'], assisting: [] } }),
    anExercise('row', { pattern: 'pull', muscles: { main: ['latissimus dorsi'], assisting: [] } }),
  ];
  /** `1A squat`: week, session and exercise of each set that is a test. */
  const testedIn = (plan: Plan): readonly string[] =>
    plan.weeks.flatMap(({ number, sessions }) =>
      sessions.flatMap(({ id, groups }) =>
        groups.flatMap(({ items }) =>
          items
            .filter(({ sets }) => sets.some(({ kind }) => kind === 'test'))
            .map(({ exercise }) => `${number}${id} ${exercise}`),
        ),
      ),
    );
  const inDays = (client: Partial<Client> = {}, programme = inThree, exercises: readonly Exercise[] = library) =>
    planOf({ days, ...client }, programme, exercises);

  test('in the row that comes up first, though it stands in two sessions of the week', () => {
    expect(testedIn(inDays())).toEqual(['1A squat', '6A squat']);
  });

  test('nothing is tried in the other row either, in those weeks', () => {
    const why = inDays().inputs.strands.filter(({ row }) => row === 'squat');
    expect(why.map(({ id, occurrences }) => [id, occurrences.map(({ held }) => held?.why ?? '')])).toEqual([
      ['A/squat', ['test', '', '', '', '', 'test']],
      ['C/squat', ['test', '', '', '', '', 'test']],
    ]);
  });

  test('a first test that waits for the end of a break until the last week is the only one', () => {
    const begun = { from: on('2026-12-24'), until: on('2027-01-24'), cause: 'ill', place: PLACE } as const;
    const thrice = aProgramme(squats('A'), {
      tests: [rowId('squat')],
      rotations: [{ days: 3, order: [sessionId('A')] }],
      curve: inThree.curve.slice(0, 3),
    });
    expect(testedIn(inDays({}, thrice))).toEqual(['1A squat', '3A squat']);
    expect(testedIn(inDays({ breaks: [begun] }, thrice))).toEqual(['3A squat']);
  });

  test('rows of two exercises that come to the same one by the last week: it is tested in the first of them', () => {
    const low = anExercise('low', { ...bodyweight, harder: [aLink('high', [], 1050)] });
    const high = anExercise('high', { ...bodyweight, easier: [aLink('low', ['load'], 1050)] });
    const both = aProgramme([aSession('A', aBlock([aRow('low')])), aSession('B', aBlock([aRow('high')]))], {
      tests: [rowId('low'), rowId('high')],
    });
    const known = [aTest('low', 20), aTest('high', 12)];
    const plan = inDays({ days: [1, 3], tests: known }, both, [low, high]);
    const found = testedIn(plan);
    expect(found).toContain('1A low');
    expect(found).toContain('1B high');
    expect(new Set(found.map((at) => at.replace(/[AB]/, ''))).size).toBe(found.length);
  });

  test('the measures stand where no row of the same muscles is tested, if the week has such a session (measures-apart)', () => {
    const chair = anExercise('chair-stand', {
      ...bodyweight,
      measure: 'chair stand',
      muscles: { main: ['quadriceps'], assisting: [] },
      easier: [aWay('hands', ['load'])],
    });
    const older = { birthYear: 1955 };
    expect(testedIn(inDays(older, inThree, [...library, chair]))).toEqual([
      '1A squat',
      '1B chair-stand',
      '6A squat',
      '6B chair-stand',
    ]);
    // With one test of the same muscles allowed beside them the measures stand in the first session.
    const beside = [{ rule: 'measures-apart', value: 1, reason: 'to see', place: PLACE }];
    const allowing = { ...aLibrary([...library, chair], inThree), overrides: beside };
    const { value, problems } = planBlock({
      library: allowing,
      client: aClient({ tests, days, ...older }),
      today,
      edition: 0,
    });
    if (value === null) throw new Error(JSON.stringify(problems));
    expect(testedIn(value).slice(0, 2)).toEqual(['1A chair-stand', '1A squat']);
    const alone = aProgramme(squats('A'), { tests: [rowId('squat')] });
    expect(testedIn(planOf(older, alone, [...library, chair]))).toEqual([
      '1A chair-stand',
      '1A squat',
      '6A chair-stand',
      '6A squat',
    ]);
    const untested = aProgramme(inThree.sessions, { ...asked, tests: [] });
    expect(testedIn(inDays(older, untested, [...library, chair]))).toEqual(['1A chair-stand', '6A chair-stand']);
  });
});

describe('when no test is planned (test-waits)', () => {
  const asked = { medicines: [], conditions: [], falls: 0 };
  const english = speechOf('en-GB');
  const places = (client: Partial<Client>) => {
    const plan = planOf(client);
    const told = plan.findings
      .filter(({ rule }) => rule === 'test-waits')
      .map(({ reason }) => sayReason(reason, 'coach', english).replaceAll('\u00a0', ' '));
    return [kinds(plan).flatMap((of, index) => (of.includes('test') ? [index] : [])), told] as const;
  };
  const pregnancy = { due: on('2027-06-01'), conditions: [], place: PLACE };
  const bornOn = (date: string) =>
    ({ date: on(date), by: 'vaginal', checked: on('2026-12-19'), place: PLACE }) as const;

  test.each<[string, Partial<Client>, readonly number[], string | null]>([
    ['nothing in the way', {}, [0, 5], null],
    ['pregnant: none', { health: { ...asked, pregnancy } }, [], 'in pregnancy'],
    [
      'a vertebral fracture: none',
      { health: { ...asked, conditions: ['vertebral fracture'] } },
      [],
      'form comes before',
    ],
    ['12 weeks after a birth in it: none', { health: { ...asked, birth: bornOn('2026-11-17') } }, [], 'after a birth'],
    [
      '12 weeks after a birth over in it: the last',
      { health: { ...asked, birth: bornOn('2026-11-15') } },
      [5],
      'after a birth',
    ],
    ['moderate: the last', { health: { ...asked, conditions: ['blood pressure'] } }, [5], 'moderate plan'],
    ['a first block: the last', { blocksBefore: 0 }, [5], 'first weeks are gentle'],
    [
      'back after a break: after its gentle weeks',
      { breaks: [{ from: on('2026-12-15'), until: on('2027-01-02'), cause: 'ill', place: PLACE }] },
      [2, 5],
      'The first test waits until 18 January 2027 of squat: the weeks after a break are gentle',
    ],
  ])('%s', (_, client, at, said) => {
    const [found, told] = places({
      tests: [aTest('squat', 10, { load: kg('16'), date: on('2026-12-18') })],
      ...client,
    });
    expect(found).toEqual(at);
    if (said === null) expect(told).toEqual([]);
    else expect(told.join()).toContain(said);
  });
});
