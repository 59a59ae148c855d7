/** Warm-ups that rehearse today's patterns, cool-downs, and the coach's own in their place. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise, Facts, Pattern } from '../../src/model/exercise.js';
import { kitItemId, rowId } from '../../src/model/identity.js';
import type { KitItem } from '../../src/model/kit.js';
import type { Group, Plan } from '../../src/model/plan.js';
import type { Block, Programme } from '../../src/model/programme.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
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
import { type Overrides, overrides } from './make-session.js';

const easy = (id: string, rehearses: readonly Pattern[], more: Partial<Facts> = {}): Exercise =>
  anExercise(id, { ...bodyweight, pattern: 'mobility', way: 'mobility', rehearses, ...more });
const lift = (id: string, pattern: Pattern): Exercise => anExercise(id, { pattern });

const patterns: readonly Pattern[] = ['squat', 'hinge', 'push', 'pull'];
const lifts = patterns.map((pattern) => lift(`a-${pattern}`, pattern));
const today = (...ids: readonly string[]): Programme => aProgramme([aSession('A', aBlock(ids.map((id) => aRow(id))))]);

function made(
  programme: Programme,
  exercises: readonly Exercise[],
  client: Partial<Client> = {},
  values: Overrides = {},
) {
  const library = aLibrary(exercises, programme);
  return planBlock({
    library,
    client: aClient(client),
    today: on('2026-12-20'),
    edition: 0,
    rulesOverridden: overrides(values),
  });
}
function planOf(...of: Parameters<typeof made>): Plan {
  const { value, problems } = made(...of);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}
const group = (plan: Plan, kind: Group['kind']) => plan.weeks[0]?.sessions[0]?.groups.find((one) => one.kind === kind);
const names = (of: Group | undefined): string => of?.items.map(({ exercise }) => exercise).join(' ') ?? '';
const warmUp = (...of: Parameters<typeof made>) => group(planOf(...of), 'warm-up');
const older = { birthYear: 1950 };

describe('why it is longer than others’', () => {
  const [squat = expect.fail('no lift')] = lifts;
  const said = (client: Partial<Client>): readonly string[] => {
    const cool = easy('m', ['squat'], { cools: true });
    const plan = planOf(today('a-squat'), [squat, cool], client);
    const groups = plan.weeks[0]?.sessions[0]?.groups ?? [];
    return groups
      .filter(({ kind }) => kind === 'warm-up' || kind === 'cool-down')
      .flatMap(({ items }) => items.slice(0, 1))
      .flatMap(({ reasons }) => reasons.map((reason) => sayReason(reason, 'coach', speechOf('en-GB'))))
      .map((line) => line.replaceAll('\u00a0', ' '));
  };
  const breath = aCaution('breath hold', { degree: 'take care' });

  test('names the ground that holds, and no other', () => {
    expect(said({})).toEqual(['The warm-up takes 5 minutes.']);
    expect(said(older)[1]).toMatch(/takes 5 minutes, longer for the client’s age\.$/);
    expect(said({ cautions: [breath] })[0]).toMatch(/longer for the caution on holding the breath \(\S+\)\.$/);
    expect(said({ cautions: [{ ...breath, by: 'birth' }] })[1]).toMatch(/longer after a birth\.$/);
    const both = said({ ...older, cautions: [{ ...breath, by: 'blood pressure' }] });
    expect(both[0]).toMatch(/takes 8 minutes, longer for the client’s age and for blood pressure\.$/);
  });
});

describe('which exercises', () => {
  const [squat = expect.fail('no lift'), hinge = expect.fail('no lift')] = lifts;
  const two = today('a-squat', 'a-hinge');

  test('for each of today’s patterns one that rehearses it, most of them at once first, then by id', () => {
    const both = easy('z-both', ['squat', 'hinge']);
    const one = easy('m-squat', ['squat']);
    const other = easy('n-squat', ['squat']);
    expect(names(warmUp(two, [squat, hinge, both, one]))).toBe('z-both');
    expect(names(warmUp(two, [squat, hinge, other, one]))).toBe('m-squat');
    expect(names(warmUp(two, [squat, hinge, one, easy('m-hinge', ['hinge'])]))).toBe('m-squat m-hinge');
    expect(names(warmUp(today('a-hinge', 'a-squat'), [squat, hinge, one, easy('m-hinge', ['hinge'])]))).toBe(
      'm-hinge m-squat',
    );
  });

  test('else the easiest exercise of the pattern with empty hands', () => {
    const body = anExercise('b-body', { ...bodyweight, easier: [aLink('c-chair'), aWay('half')] });
    const chair = anExercise('c-chair', { ...bodyweight, easier: [aWay('hands on the knees')] });
    expect(names(warmUp(today('a-squat'), [squat, body, chair]))).toBe('c-chair');
    expect(names(warmUp(today('a-squat'), [squat, hinge]))).toBe('');
    // Of a pattern without any the minutes stay, to walk in.
    expect(warmUp(today('a-squat'), [squat])).toMatchObject({ minutes: 5, items: [] });
  });

  test.each<[string, Exercise, Partial<Client>]>([
    ['what this client must avoid', easy('m', ['squat'], { asks: [ask('knee')] }), { cautions: [aCaution('knee')] }],
    [
      'a turn in the back, after a fracture in it',
      easy('m', ['squat'], { asks: [ask('loaded twist')] }),
      { health: { conditions: ['vertebral fracture'] } },
    ],
    [
      'much of what is taken care with, as the end of a bend with low bone density',
      easy('m', ['squat'], { asks: [ask('deep bend', 'much')] }),
      { health: { conditions: ['low bone density'] } },
    ],
    [
      'what needs kit beyond a chair, a wall or a mat',
      easy('m', ['squat'], { kit: { load: [], unloaded: true, things: ['step'] } }),
      { kit: [...aClient().kit, ...thing('step')] },
    ],
    ['what is not at home', easy('m', ['squat'], { kit: { load: [], unloaded: true, things: ['chair'] } }), {}],
    [
      'what needs a load',
      easy('m', ['squat'], {
        kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] },
      }),
      {},
    ],
    ['fast work', easy('m', ['squat'], { asks: [ask('speed')] }), {}],
    [
      'what has no easier version',
      anExercise('m', { ...bodyweight, pattern: 'mobility', way: 'mobility', rehearses: ['squat'], easier: [] }),
      {},
    ],
  ])('never %s', (_, exercise, client) => {
    expect(names(warmUp(today('a-squat'), [squat, exercise], client))).toBe('');
    expect(names(warmUp(today('a-squat'), [squat, easy('m', ['squat'])], client))).toBe('m');
  });

  test('kit that today’s rows use anyway may be used, and a chair where there is one', () => {
    const onStep = easy('m', ['lunge'], { kit: { load: [], unloaded: true, things: ['step'] } });
    const lunge = anExercise('a-lunge', {
      pattern: 'lunge',
      kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: ['step'] },
    });
    const kit = [...aClient().kit, ...thing('step'), ...thing('chair')];
    expect(names(warmUp(today('a-lunge'), [lunge, onStep], { kit }))).toBe('m');
    expect(
      names(
        warmUp(
          today('a-squat'),
          [squat, easy('m', ['squat'], { kit: { load: [], unloaded: true, things: ['chair'] } })],
          { kit },
        ),
      ),
    ).toBe('m');
  });

  test('what is on the floor comes last', () => {
    const down = easy('m-down', ['squat'], { asks: [ask('floor')] });
    expect(names(warmUp(two, [squat, hinge, down, easy('n-up', ['hinge'])]))).toBe('n-up m-down');
  });

  test('warm-up-standing: no floor, nor the head down, for older clients, after a fall, or with a caution on them', () => {
    const walking = today('a-travel');
    const travel = anExercise('a-travel', { pattern: 'travel' });
    const crawl = anExercise('b-crawl', { ...bodyweight, pattern: 'travel', asks: [ask('floor')] });
    const march = anExercise('c-march', { ...bodyweight, pattern: 'travel', way: 'conditioning' });
    const all = [travel, crawl, march];
    expect(names(warmUp(walking, all))).toBe('b-crawl');
    for (const client of [
      older,
      { health: { ...aClient().health, falls: 1 } },
      { cautions: [aCaution('floor', { degree: 'take care' })] },
      { cautions: [aCaution('head down', { degree: 'take care' })] },
    ] satisfies Partial<Client>[]) {
      expect(names(warmUp(walking, all, client))).toBe('c-march');
      expect(names(warmUp(walking, [travel, crawl], client))).toBe('');
    }
    expect(names(warmUp(walking, all, older, { 'warm-up-standing': 0 }))).toBe('b-crawl');
    const hop = anExercise('c-hop', { ...bodyweight, pattern: 'travel', way: 'conditioning', asks: [ask('impact')] });
    expect(names(warmUp(walking, [travel, hop]))).toBe('');
  });

  test('a row that bears the name already keeps it: the exercise is passed over', () => {
    const programme = aProgramme([aSession('A', aBlock([aRow('a-squat', { id: rowId('warm-up-m') })]))]);
    expect(names(warmUp(programme, [squat, easy('m', ['squat']), easy('n', ['squat'])]))).toBe('n');
    const plan = planOf(programme, [squat, easy('m', ['squat']), easy('n', ['squat'])]);
    const keys = plan.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) =>
        groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ key }) => key))),
      ),
    );
    expect(new Set(keys).size).toBe(keys.length);
  });
});

function thing(kind: 'step' | 'chair'): readonly KitItem[] {
  return [{ id: kitItemId(kind), kind }];
}

describe('how long', () => {
  // A set of 30 s is ten reps of 3 s; with 20 s to the next, 50 s.
  const drills = patterns.map((pattern) => easy(`m-${pattern}`, [pattern]));
  const shape = (count: number, client: Partial<Client> = {}, values: Overrides = {}, more: Partial<Facts> = {}) => {
    const some = patterns.slice(0, count).map((pattern) => easy(`m-${pattern}`, [pattern], more));
    const of = warmUp(
      today(...patterns.slice(0, count).map((pattern) => `a-${pattern}`)),
      [...lifts, ...some],
      client,
      values,
    );
    return [of?.items.length, of?.rounds, of?.minutes, of?.items[0]?.sets.length, of?.items[0]?.sets[0]?.reps];
  };

  test('as often through as fits in five minutes, three times at most', () => {
    expect(shape(1)).toEqual([1, 3, 5, 3, 10]);
    expect(shape(2)).toEqual([2, 3, 5, 3, 10]);
    expect(shape(3)).toEqual([3, 2, 5, 2, 10]);
    expect(shape(4)).toEqual([4, 1, 5, 1, 10]);
    expect(shape(2, {}, { 'warm-up-rounds': 2 })).toEqual([2, 2, 5, 2, 10]);
    expect(shape(3, {}, { 'easy-set': 15 })).toEqual([3, 2, 5, 2, 5]);
  });

  test('each side has its own set; one trip to the floor is counted', () => {
    // Twice 30 s and 20 s: 80 s each, three of them 240 s.
    expect(shape(3, {}, {}, { sides: 'each' })).toEqual([3, 1, 5, 2, 10]);
    // 150 s and 40 s: only once through.
    expect(shape(3, {}, {}, { asks: [ask('floor')] })).toEqual([3, 1, 5, 1, 10]);
  });

  test('longer where once through is, but never past the most', () => {
    // Four of 80 s: 320 s, six minutes.
    expect(shape(4, {}, {}, { sides: 'each' })).toEqual([4, 1, 6, 2, 10]);
    // Five minutes at most: three of them, 240 s.
    expect(shape(4, {}, { 'warm-up-most': 5 }, { sides: 'each' })).toEqual([3, 1, 5, 2, 10]);
  });

  test('eight minutes, up to ten, from 65 or with blood pressure to mind', () => {
    expect(shape(4, older)).toEqual([4, 2, 8, 2, 10]);
    expect(shape(4, { cautions: [aCaution('breath hold')] })).toEqual([4, 2, 8, 2, 10]);
    // Four of 2 × 60 s and 20 s: 560 s, which is ten minutes begun.
    expect(shape(4, older, { 'easy-set': 60 }, { sides: 'each' })).toEqual([4, 1, 10, 2, 20]);
    expect(shape(4, older, { 'easy-set': 60, 'warm-up-older-most': 8 }, { sides: 'each' })).toEqual([3, 1, 8, 2, 20]);
  });

  test('the minutes are counted in the session, the sets are warm-up sets under rows of their own', () => {
    const plan = planOf(today('a-squat'), [...lifts, ...drills], { tests: [aTest('a-squat', 12, { load: kg('16') })] });
    const of = group(plan, 'warm-up');
    expect(of?.items[0]).toMatchObject({
      id: 'A/warm-up-m-squat/1',
      row: 'warm-up-m-squat',
      exercise: 'm-squat',
      asked: { min: 10, max: 10, unit: 'reps', sets: 3 },
    });
    expect(of?.items[0]?.sets.map(({ key }) => key)).toEqual(
      [1, 2, 3].map((round) => `2/1/warm-up-m-squat/both/warm-up/${round}`),
    );
    expect(of?.items[0]?.easier[0]?.sets.map(({ reps }) => reps)).toEqual([10, 10, 10]);
    expect(of?.items[0]?.reasons.map(({ rule }) => rule)).toEqual(['warm-up']);
  });

  test('a hold by seconds', () => {
    const hold = easy('m', ['squat'], { way: 'hold' });
    const of = warmUp(today('a-squat'), [...lifts, hold]);
    expect(of?.items[0]?.sets[0]).toMatchObject({ seconds: 30 });
    expect(of?.items[0]?.sets[0]?.reps).toBeUndefined();
  });
});

describe('cool-down', () => {
  const cool = [
    easy('z-squat', ['squat'], { cools: true }),
    easy('b-other', ['pull'], { cools: true }),
    easy('c-not', ['squat']),
  ];
  const exercises = [...lifts, ...cool];

  test('five minutes for those who need one, from what cools down, today’s patterns first', () => {
    const of = group(planOf(today('a-squat'), exercises, older), 'cool-down');
    expect(of).toMatchObject({ minutes: 5, rounds: 3 });
    expect(names(of)).toBe('z-squat b-other');
    expect(of?.items[0]?.sets[0]).toMatchObject({ kind: 'cool-down', key: '2/1/cool-down-z-squat/both/cool-down/1' });
    expect(of?.items[0]?.reasons.map(({ rule }) => rule)).toEqual(['cool-down-older']);
    expect(
      group(planOf(today('a-squat'), exercises, { cautions: [aCaution('breath hold')] }), 'cool-down'),
    ).toMatchObject({ minutes: 5 });
  });

  test('none for others', () => {
    expect(group(planOf(today('a-squat'), exercises), 'cool-down')).toBeUndefined();
  });
});

describe('the coach’s own', () => {
  const drills = [easy('m', ['squat']), easy('n', ['hinge'], { sides: 'each' })];
  const own = (kind: Block['kind']) =>
    aBlock(
      [
        aRow('m', { dose: { kind: 'sets', sets: 2, reps: { min: 8, max: 10 }, eachSide: false }, restSeconds: 10 }),
        aRow('n', { dose: { kind: 'timed', sets: 1, seconds: { min: 20, max: 30 }, eachSide: true }, restSeconds: 0 }),
      ],
      { kind, name: 'Own' },
    );

  test('takes the place of the planner’s, as written; its minutes by the clock', () => {
    const programme = aProgramme([aSession('A', own('warm-up'), aBlock([aRow('a-squat')]))]);
    const of = warmUp(programme, [...lifts, ...drills, easy('p', ['squat'])]);
    expect(of).toMatchObject({ name: 'Own', rounds: 1, minutes: Math.ceil((30 + 10 + 30 + 20 + 60 + 20) / 60) });
    expect(
      of?.items.map(({ row, sets }) => [row, sets.map(({ reps, seconds, side }) => reps ?? `${seconds} ${side}`)]),
    ).toEqual([
      ['m', [8, 8]],
      ['n', ['20 left', '20 right']],
    ]);
  });

  test('a cool-down of the coach’s own stands for everybody', () => {
    const programme = aProgramme([aSession('A', aBlock([aRow('a-squat')]), own('cool-down'))]);
    expect(names(group(planOf(programme, [...lifts, ...drills]), 'cool-down'))).toBe('m n');
  });

  test('what this client may not do is said, as of any row', () => {
    const programme = aProgramme([aSession('A', own('warm-up'), aBlock([aRow('a-squat')]))]);
    const avoided = drills.map((one) => (one.id === 'm' ? easy('m', ['squat'], { asks: [ask('knee')] }) : one));
    const { problems } = made(programme, [...lifts, ...avoided], { cautions: [aCaution('knee')] });
    expect(problems.map(({ code }) => code)).toEqual(['no-version-allowed']);
  });
});
