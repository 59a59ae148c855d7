/** Floors, effort, sets, minutes, dates, capacity and feeler sets of whole plans, one rule at a time. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENGINE_VERSION } from '../../src/engine/engine-version.js';
import { type BlockInput, planBlock } from '../../src/engine/plan-block.js';
import { nameOf } from '../../src/engine/plan-id.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import { programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { Item, Plan } from '../../src/model/plan.js';
import type { Programme, Row } from '../../src/model/programme.js';
import { PLACE } from './generate-exercises.js';
import { kitOf } from './generate-studio.js';
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
  aTest,
  aWay,
  bells,
  bodyweight,
  kg,
  on,
  oneSession,
} from './make-block.js';

const today = on('2026-12-20');
const squat = anExercise('squat');
const tests = [aTest('squat', 10, { load: kg('16') })];

function made(programme: Programme, client: Partial<Client> = {}, exercises: readonly Exercise[] = [squat]) {
  return planBlock({
    library: aLibrary(exercises, programme),
    client: aClient({ tests, ...client }),
    today,
    edition: 0,
  });
}
function planOf(programme: Programme, client: Partial<Client> = {}, exercises: readonly Exercise[] = [squat]): Plan {
  const { value, problems } = made(programme, client, exercises);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}
const codes = (...of: Parameters<typeof made>) => made(...of).problems.map(({ code }) => code);
const itemsOf = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap((week) => week.sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)));
const asked = (plan: Plan) => itemsOf(plan).map((item) => item.asked.reserve);
const withRow = (row: Partial<Row>) => aProgramme([aSession('A', aBlock([aRow('squat', row)]))]);

describe('floors and effort', () => {
  test.each<[string, Partial<Client>, readonly number[]]>([
    ['trained, later block', {}, [30, 30, 20, 20, 20, 40]],
    ['novice', { experience: 'novice' }, [30, 30, 30, 30, 30, 40]],
    ['first block', { blocksBefore: 0 }, [40, 40, 20, 20, 20, 40]],
    ['may be 65 when it ends', { birthYear: 1962 }, [30, 30, 30, 30, 30, 40]],
    ['64 at the most', { birthYear: 1963 }, [30, 30, 20, 20, 20, 40]],
  ])('%s', (_, client, reserves) => {
    expect(asked(planOf(oneSession('squat'), client))).toEqual(reserves);
  });

  test('a row’s own effort takes the place of the curve’s, and an easy week stays the easier of the two', () => {
    expect(asked(planOf(withRow({ effort: { kind: 'reserve', tenths: 10 } })))).toEqual([20, 20, 20, 20, 20, 40]);
    expect(asked(planOf(withRow({ effort: { kind: 'reserve', tenths: 50 } })))).toEqual([50, 50, 50, 50, 50, 50]);
  });

  test('RPE 7 to 10 leaves ten less that many (Zourdos et al. 2016, J Strength Cond Res 30(1):267-275)', () => {
    for (const [rpe, reserve] of [
      [70, 30],
      [75, 25],
      [80, 20],
      [85, 20],
      [90, 20],
    ] as const) {
      expect(asked(planOf(withRow({ effort: { kind: 'rpe', tenths: rpe } })))[2]).toBe(reserve);
    }
    expect(codes(withRow({ effort: { kind: 'rpe', tenths: 65 } }))).toEqual(['effort-not-readable']);
  });

  test('a circuit asks one rep more', () => {
    const circuit = aProgramme([aSession('A', aBlock([aRow('squat')], { kind: 'circuit', rounds: 2 }))]);
    expect(asked(planOf(circuit))).toEqual([40, 40, 30, 30, 30, 50]);
  });

  test('the coach’s own values are used and shown; what cannot be set is an error of the folder', () => {
    const library = aLibrary([squat], oneSession('squat'));
    const override = (rule: string, value: number): BlockInput => ({
      library,
      client: aClient({ tests }),
      today,
      edition: 0,
      rulesOverridden: [{ rule, value, reason: 'seen it', place: PLACE }],
    });
    const { value } = planBlock(override('floor-alone', 30));
    expect(value && asked(value)).toEqual([30, 30, 30, 30, 30, 40]);
    expect(value?.rules.find(({ id }) => id === 'floor-alone')?.overridden).toEqual({ value: 30, reason: 'seen it' });
    const wrong = (rule: string, to: number) =>
      planBlock(override(rule, to)).problems.map(({ code, scope }) => [code, scope.kind]);
    expect(wrong('floor-alone', 0)).toEqual([['rule-out-of-range', 'folder']]);
    expect(wrong('floor-alon', 30)).toEqual([['rule-not-found', 'folder']]);
    expect(wrong('walk-trial', 1)).toEqual([['rule-not-found', 'folder']]);
  });
});

describe('sets', () => {
  const sets = (plan: Plan) => itemsOf(plan).map((item) => item.asked.sets);
  const curve = (...weeks: readonly (readonly [number, boolean])[]) =>
    weeks.map(([share, easy]) => ({ reserve: 30, share, easy }));

  test('round half up, at least one, and an easy week at least one below the last work week', () => {
    const programme = aProgramme([aSession('A', aBlock([aRow('squat')]))], {
      curve: curve([1000, false], [500, false], [100, false], [1000, true], [834, false], [1000, true]),
    });
    expect(sets(planOf(programme))).toEqual([3, 2, 1, 1, 3, 2]);
  });

  test('a circuit’s rounds are one number for all its rows', () => {
    const two = [squat, anExercise('other')];
    const programme = aProgramme([
      aSession('A', aBlock([aRow('squat'), aRow('other')], { kind: 'circuit', rounds: 3 })),
    ]);
    const plan = planOf(programme, { tests: [...tests, aTest('other', 10, { load: kg('16') })] }, two);
    for (const { sessions } of plan.weeks) {
      const [, group] = sessions[0]?.groups ?? [];
      for (const item of group?.items ?? []) expect(item.asked.sets).toBe(group?.rounds);
    }
    expect(sets(plan)).toEqual([3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 2, 2]);
  });

  test('one side after the other, the weaker first, and both do what it can', () => {
    const row = [anExercise('squat', { sides: 'each' })];
    const sided = [
      aTest('squat', 10, { load: kg('16'), side: 'left' }),
      aTest('squat', 8, { load: kg('16'), side: 'right' }),
    ];
    const plan = planOf(oneSession('squat'), { tests: sided }, row);
    const [item] = itemsOf(plan);
    const work = item?.sets.filter(({ kind }) => kind === 'work') ?? [];
    expect(work.map(({ side, round }) => `${side} ${round}`)).toEqual([
      'right 1',
      'left 1',
      'right 2',
      'left 2',
      'right 3',
      'left 3',
    ]);
    expect(new Set(work.map(({ reps }) => reps))).toEqual(new Set([7]));
    expect(item?.capacity).toMatchObject({ side: 'right', grams: Math.floor((16_000 * 400) / 300) });
  });

  test('a gap between the sides is told from 10 %, and asked about above 20 %', () => {
    const row = [anExercise('squat', { sides: 'each' })];
    const told = (left: string, right: string) =>
      planOf(
        oneSession('squat'),
        {
          kit: bells('8', '10', '12', '16', '18', '20'),
          tests: [
            aTest('squat', 10, { load: kg(left), side: 'left' }),
            aTest('squat', 10, { load: kg(right), side: 'right' }),
          ],
        },
        row,
      )
        .findings.map(({ rule }) => rule)
        .filter((rule) => rule.startsWith('side-gap'));
    expect(told('20', '18')).toEqual(['side-gap-told']);
    expect(told('20', '16')).toEqual(['side-gap-told']);
    expect(told('20', '12')).toEqual(['side-gap-why']);
    expect(told('20', '20')).toEqual([]);
  });
});

describe('minutes', () => {
  const named = ['squat', 'other', 'third'];
  const three = [squat, anExercise('other'), anExercise('third', { pattern: 'hinge' })];
  const known = named.map((id) => aTest(id, 10, { load: kg('16') }));
  const programme = (more: Partial<Programme> = {}) =>
    aProgramme([aSession('A', aBlock(named.map((id) => aRow(id))))], more);
  const planned = (minutes: number, more: Partial<Programme> = {}) => {
    const plan = planOf(programme(more), { minutes, tests: known }, three);
    const [session] = plan.weeks[0]?.sessions ?? [];
    const kept = session?.groups.flatMap(({ items }) => items.map((item) => `${item.row} ${item.asked.sets}`));
    return { kept, minutes: session?.minutes ?? 0, cut: session?.trimmed.map(({ row, what }) => `${row} ${what}`) };
  };

  test('counted by hand: warm-up, sets, rests, changes, a warm-up set, the way to the next', () => {
    // Warm-up 300 s. A rep 3 s: sets of 10 at 30 s, of 6 at 18 s; three rests less one, 60 s each; change of bell 15 s;
    // to the next 20 s; a lighter set 18 + 15; a trial there and back 30. 3×30 + 120 + 15 + 20 + 33 + 30 = 308.
    expect(planOf(oneSession('squat')).weeks[0]?.sessions[0]?.minutes).toBe(Math.ceil((300 + 308) / 60));
    const older = planOf(oneSession('squat'), { birthYear: 1950 });
    expect(older.weeks[0]?.sessions[0]?.groups.map(({ kind, minutes }) => [kind, minutes])).toEqual([
      ['warm-up', 8],
      ['straight', undefined],
      ['cool-down', 5],
    ]);
    expect(older.weeks[0]?.sessions[0]?.minutes).toBe(Math.ceil((780 + 308) / 60));
  });

  test('rows the programme cuts first, then optional ones, then sets from the end; each with its reason', () => {
    expect(planned(60)).toMatchObject({ kept: ['squat 3', 'other 3', 'third 3'], cut: [] });
    expect(planned(19, { cutFirst: [rowId('other')] })).toMatchObject({
      kept: ['squat 3', 'third 3'],
      cut: ['other row'],
    });
    expect(planned(19)).toMatchObject({
      kept: ['squat 3', 'other 3', 'third 2'],
      cut: ['third sets'],
    });
    expect(planned(18)).toMatchObject({ kept: ['squat 3', 'other 2', 'third 2'] });
  });

  test('never what the programme never cuts, nor the only work for a pattern', () => {
    expect(planned(18, { neverCut: [rowId('third')] }).kept?.[2]).toBe('third 3');
    expect(planned(18, { cutFirst: [rowId('third')] }).kept).toContain('third 2');
    const kept = planned(18, { cutFirst: [rowId('third'), rowId('other'), rowId('squat')] }).kept;
    expect(kept?.map((row) => row.split(' ')[0])).toEqual(['squat', 'third']);
  });

  test('a session too long with everything cut is an error that says so', () => {
    const { problems } = made(programme({ neverCut: named.map(rowId) }), { minutes: 12, tests: known }, three);
    expect(problems.map(({ code, data }) => [code, data])).toEqual([
      ['session-too-long', { session: 'A', week: 1, minutes: 20, cap: 12, neverCut: named }],
    ]);
  });
});

describe('dates', () => {
  const dates = (plan: Plan) =>
    plan.weeks.slice(0, 2).map((week) => [week.begins, ...week.sessions.map((s) => `${s.id} ${s.date}`)]);
  const both = (more: Partial<Programme> = {}) =>
    aProgramme([aSession('A', aBlock([aRow('squat')])), aSession('B', aBlock([aRow('squat')]))], more);

  test('weeks begin on the first training day on or after the start', () => {
    expect(dates(planOf(both(), { days: [1, 4] }))).toEqual([
      ['2027-01-04', 'A 2027-01-04', 'B 2027-01-07'],
      ['2027-01-11', 'A 2027-01-11', 'B 2027-01-14'],
    ]);
    const later = planOf(both(), { days: [1, 4], starts: on('2027-01-05') });
    expect(dates(later)).toEqual([
      ['2027-01-07', 'A 2027-01-07', 'B 2027-01-11'],
      ['2027-01-14', 'A 2027-01-14', 'B 2027-01-18'],
    ]);
    expect(later.findings.map(({ rule }) => rule)).toContain('start-moved');
  });

  test('fewer days than sessions: the rotation stated, from week to week; without one an error', () => {
    const order = ['A', 'B'].map(sessionId);
    expect(dates(planOf(both({ rotations: [{ days: 1, order }] })))).toEqual([
      ['2027-01-04', 'A 2027-01-04'],
      ['2027-01-11', 'B 2027-01-11'],
    ]);
    expect(codes(both())).toEqual(['rotation-not-stated']);
    expect(codes(both({ rotations: [{ days: 1, order: [sessionId('Z')] }] }))).toEqual(['rotation-unknown-session']);
    expect(codes(both(), { days: [] })).toEqual(['no-training-days']);
    expect(codes(both({ curve: [] }), { days: [1, 4] })).toEqual(['no-weeks']);
  });
});

describe('where a row begins', () => {
  const begins = (client: Partial<Client>, exercises: readonly Exercise[] = [squat]) =>
    planOf(oneSession('squat'), client, exercises).inputs.strands[0];

  test('with the load tested, or the heaviest that can be made below it', () => {
    expect(begins({})?.start?.load).toBe(16_000);
    expect(begins({ kit: bells('8', '12', '20') })?.start?.load).toBe(12_000);
  });

  test('a test is weak above 12 reps and reserve, above 5 in reserve, or from a circuit', () => {
    const weak = (reps: number, more: Parameters<typeof aTest>[2] = {}) =>
      begins({ tests: [aTest('squat', reps, { load: kg('16'), ...more })] })?.capacity?.weak;
    expect(weak(10)).toBe(false);
    expect(weak(11)).toBe(true);
    expect(weak(6, { reserve: 50 })).toBe(false);
    expect(weak(6, { reserve: 51 })).toBe(true);
    expect(weak(8, { inCircuit: true })).toBe(true);
  });

  test('the latest test counts', () => {
    const dated = [
      aTest('squat', 6, { load: kg('20'), date: on('2026-12-10') }),
      aTest('squat', 12, { load: kg('12'), date: on('2026-11-10') }),
    ];
    expect(begins({ tests: dated })?.capacity).toMatchObject({ resisted: 20_000, reps: 80 });
  });

  test('a new movement begins one bell lighter than its relative’s strength allows', () => {
    const box = [anExercise('squat', { easier: [aLink('box'), aWay('half')] }), anExercise('box')];
    const strand = begins({ tests: [aTest('box', 10, { load: kg('16') })] }, box);
    expect(strand?.capacity).toMatchObject({ resisted: 16_000, reps: 120, weak: true });
    // Reps to failure 12 at 16 kg and 3.6 at 20: 16 leaves three at six reps, so 12 it is.
    expect(strand?.start?.load).toBe(12_000);
    expect(begins({ tests: [] }, box)?.start).toBeNull();
  });

  test('a new movement never begins above the heaviest load its relative was tested with', () => {
    const box = [anExercise('squat', { easier: [aLink('box')] }), anExercise('box')];
    const tested = [aTest('box', 30, { load: kg('12'), reserve: 50 })];
    // 35 at 12 kg: K = 12 × 650 = 7800, 9 to failure at 20 kg, so that one bell lighter would be 16: never held so far.
    expect(begins({ tests: tested }, box)?.start?.load).toBe(8000);
    const none = begins({ kit: bells('16', '20'), tests: tested }, box);
    expect(none?.start).toBeNull();
  });

  test('nothing known: a feeler set with the lightest bell, and a line for each answer', () => {
    const plan = planOf(oneSession('squat'), { tests: [] });
    const [one, two] = itemsOf(plan);
    const [feeler, ...work] = one?.sets ?? [];
    expect(feeler).toMatchObject({ kind: 'feeler', reps: 6, load: { label: '8 kg' } });
    expect(feeler?.choose?.map(({ left }) => [left.min, left.max])).toEqual([
      [0, 0],
      [1, 1],
      [2, 2],
      [3, 3],
      [4, 4],
      [5, 99],
    ]);
    expect(work.map(({ kind, load }) => [kind, load])).toEqual([
      ['work', undefined],
      ['work', undefined],
      ['work', undefined],
    ]);
    expect(two?.sets.map(({ kind }) => kind)).toEqual(['work', 'work', 'work']);
    expect(two?.sets[0]?.choose).toHaveLength(6);
    // By hand, week 1 leaves 3: none left is 6 to failure, 4 leave 2; 3 left is 9 to failure, 6 leave 3.
    expect(feeler?.choose?.[0]).toMatchObject({ reps: 4, reserve: 20, load: { label: '8 kg' } });
    expect(feeler?.choose?.[3]).toMatchObject({ reps: 6, reserve: 30, load: { label: '8 kg' } });
    for (const choice of feeler?.choose ?? []) {
      expect(choice.load?.grams ?? 0).toBeLessThanOrEqual(12_000);
      expect(choice.reserve).toBeGreaterThanOrEqual(20);
    }
    expect(one?.capacity).toBeNull();
  });

  test('the body alone has a feeler set too, by counting', () => {
    const plan = planOf(oneSession('squat'), { tests: [] }, [anExercise('squat', bodyweight)]);
    expect(itemsOf(plan)[0]?.sets[0]).toMatchObject({ kind: 'feeler', reps: 6 });
    expect(itemsOf(plan)[0]?.sets[0]?.load).toBeUndefined();
  });

  test('one lighter set goes before the first loaded row of a pattern', () => {
    const [one] = itemsOf(planOf(oneSession('squat')));
    expect(one?.sets[0]).toMatchObject({ kind: 'warm-up', reps: 6, load: { label: '12 kg' } });
    expect(one?.sets[0]?.reserve ?? 0).toBeGreaterThan(one?.sets[1]?.reserve ?? 0);
    const [alone] = itemsOf(planOf(oneSession('squat'), { kit: bells('16') }));
    expect(alone?.sets[0]?.kind).toBe('work');
  });

  test('where nothing leaves the floor the client is withheld', () => {
    expect(
      codes(oneSession('squat'), { kit: bells('16'), tests: [aTest('squat', 3, { load: kg('16'), reserve: 0 })] }),
    ).toEqual(['nothing-leaves-the-floor']);
  });
});

describe('what cannot be planned', () => {
  const unknown = { target: { kind: 'exercise', id: anExercise('nowhere').id } } as const;
  const carried = { target: { kind: 'pattern', pattern: 'carry' } } as const;

  test('names that lead nowhere are said, not thrown', () => {
    expect(codes(withRow(unknown))).toEqual(['exercise-not-found']);
    expect(codes(withRow(carried))).toEqual(['pattern-not-filled']);
    expect(codes(oneSession('squat'), { programme: aProgramme([]).id })).toEqual([]);
    const { id: _, ...rest } = oneSession('squat');
    expect(codes({ ...rest, id: programmeId('another') })).toEqual(['programme-not-found']);
  });

  test('a kit without end', () => {
    const plates = Array.from(
      { length: 40 },
      (_, index) => ['plate', kg(String(1 + 2 ** (index % 20) / 1000))] as const,
    );
    const kit = kitOf([['handle', kg('2')], ...plates]);
    const press = anExercise('squat', {
      kit: { load: [{ kind: 'dumbbell', count: 1, unequal: false }], unloaded: true, things: [] },
    });
    expect(codes(oneSession('squat'), { kit }, [press])).toEqual(['kit-too-varied']);
  });

  test('everything found is said at once', () => {
    const programme = aProgramme([aSession('A', aBlock([aRow('squat', unknown), aRow('other', carried)]))]);
    expect(codes(programme, { birthYear: 2015, unhandled: [{ fact: 'medicines', place: PLACE }] })).toEqual([
      'under-age',
      'not-handled',
      'exercise-not-found',
      'pattern-not-filled',
    ]);
  });
});

describe('the plan', () => {
  const plan = planOf(oneSession('squat'), { cautions: [aCaution('knee', { review: on('2027-02-01') })] });
  const schema: object = JSON.parse(
    readFileSync(new URL('../../src/engine/plan.schema.json', import.meta.url), 'utf8'),
  );
  const validate = new Ajv2020({ allowUnionTypes: true }).compile(schema);
  const fits = (edit: (copy: Record<string, unknown>) => void): boolean => {
    const copy: Record<string, unknown> = JSON.parse(JSON.stringify(plan));
    edit(copy);
    return validate(copy) === true;
  };

  test('fits its schema, and a broken one does not', () => {
    expect(fits(() => undefined)).toBe(true);
    expect(fits((copy) => Object.assign(copy, { extra: 1 }))).toBe(false);
    expect(fits((copy) => Object.assign(copy, { schema: 2 }))).toBe(false);
    expect(fits((copy) => Object.assign(copy, { planId: 'x' }))).toBe(false);
    expect(fits((copy) => Object.assign(copy, { starts: '4 January' }))).toBe(false);
    expect(fits((copy) => Object.assign(copy, { weeks: [] }))).toBe(false);
    for (const key of Object.keys(plan))
      expect(
        fits((copy) => delete copy[key]),
        key,
      ).toBe(false);
  });

  test('a review inside the block is told', () => {
    const told = plan.findings.filter(({ rule }) => rule === 'caution-review');
    expect(told.map(({ weeks }) => weeks)).toEqual([[5]]);
  });

  test('carries every rule in order of id, each with its source', () => {
    const ids = plan.rules.map(({ id }) => String(id));
    expect(ids).toEqual([...ids].sort());
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, source } of plan.rules) expect(source, id).not.toBe('');
    expect(plan.engine).toBe(ENGINE_VERSION);
  });

  test('is named by what it was made of, not by the day it was made', () => {
    const input: BlockInput = {
      library: aLibrary([squat], oneSession('squat')),
      client: aClient({ tests }),
      today,
      edition: 0,
    };
    const name = (more: Partial<BlockInput>) => planBlock({ ...input, ...more }).value?.planId;
    expect(name({ today: on('2026-12-27') })).toBe(name({}));
    expect(name({ edition: 1 })).not.toBe(name({}));
    expect(name({ client: aClient({ tests, minutes: 61 }) })).not.toBe(name({}));
  });

  test('FNV-1a, 64 bits: the authors’ own test vectors (from memory)', () => {
    expect(nameOf('')).toBe('cbf29ce484222325');
    expect(nameOf('a')).toBe('af63dc4c8601ec8c');
    expect(nameOf('foobar')).toBe('85944171f73967e8');
  });

  test('the same name as by whole numbers without bound, over UTF-8', () => {
    const plainly = (text: string): string => {
      let hash = 0xcbf29ce484222325n;
      for (const byte of new TextEncoder().encode(text))
        hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
      return hash.toString(16).padStart(16, '0');
    };
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => nameOf(text) === plainly(text)));
  });
});
