/** Sets, minutes and dates of whole plans, what withholds them, and how they are written and named. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENGINE_VERSION } from '../../src/engine/engine-version.js';
import { type BlockInput, planBlock } from '../../src/engine/plan-block.js';
import { nameOf } from '../../src/engine/plan-id.js';
import { programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { PLACE } from './generate-exercises.js';
import { kitOf } from './generate-studio.js';
import {
  aBlock,
  aCaution,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bells,
  kg,
  on,
  oneSession,
} from './make-block.js';
import { codes, itemsOf, made, planOf, squat, tests, today, withRow } from './rows-made.js';

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
