/** The order of a session: fast work first, floor work with the fewest trips, the coach's order in all the rest. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FittedRow } from '../../src/engine/rows/fit-rows.js';
import { isFast, needsFloor, tripsDown } from '../../src/engine/sessions/order-rows.js';
import type { Block } from '../../src/model/programme.js';
import { aBlock, anExercise, aProgramme, aRow, aSession, aSignOff, ask, bodyweight, kg } from './make-block.js';
import { idsOf, made, type Overrides } from './make-session.js';

const floor = { ...bodyweight, asks: [ask('floor')] };
const fast = { ...bodyweight, asks: [ask('speed', 'much')] };
const named = ['s1', 's2', 's3', 's4', 'f1', 'f2', 'f3', 'f4', 'x1', 'x2'];
const library = named.map((id) =>
  anExercise(id, { ...(id.startsWith('f') ? floor : id.startsWith('x') ? fast : bodyweight) }),
);
const signOffs = named.map((id) => aSignOff(id, { upTo: kg('24') }));

const block = (ids: string, more: Partial<Block> = {}) =>
  aBlock(
    ids.split(' ').map((id) => aRow(id)),
    more,
  );
const shaped = (blocks: readonly Block[], values: Overrides = {}) =>
  made(aProgramme([aSession('A', ...blocks)]), library, { signOffs }, values).shape;
const done = (...blocks: readonly string[]) => idsOf(shaped(blocks.map((ids) => block(ids))).rows);

describe('a straight block', () => {
  test('has fast work first, floor work last, and the rest as written', () => {
    expect(done('s1 f1 x1 s2 f2 x2 s3')).toBe('x1 x2 s1 s2 s3 f1 f2');
    expect(done('s2 s1 s3')).toBe('s2 s1 s3');
    expect(done('f1 s1', 's2 x1')).toBe('s1 f1 x1 s2');
  });

  test('begins on the floor where the block before ended there: one trip fewer', () => {
    expect(done('s1 f1', 's2 f2')).toBe('s1 f1 f2 s2');
    // Two trips either way: the floor stays last in the block that comes first.
    expect(done('s1 f1', 's2 f2', 's3 f3')).toBe('s1 f1 s2 f2 f3 s3');
    // A fast row stands first and so between: nothing is saved, and the floor stays last.
    expect(done('s1 f1', 's2 f2 x1')).toBe('s1 f1 x1 s2 f2');
  });

  test('swing work is fast, whatever its page says it asks', () => {
    const swing = anExercise('swing', { ...bodyweight, way: 'swing' });
    const { shape } = made(aProgramme([aSession('A', block('s1 swing'))]), [...library, swing], {
      signOffs: [aSignOff('swing')],
    });
    expect(idsOf(shape.rows)).toBe('swing s1');
  });

  test('a row that passed another says which rule moved it, to coach and client; one that was passed says nothing', () => {
    const { rows, reasonsOf } = shaped([block('s1 f1 x1 s2')]);
    const told = rows.map((row) => [row.row.id, reasonsOf(row).map(({ rule, audience }) => `${rule} ${audience}`)]);
    expect(told).toEqual([
      ['x1', ['fast-first client', 'fast-first coach']],
      ['s1', []],
      ['s2', []],
      ['f1', ['floor-last client', 'floor-last coach']],
    ]);
    const still = shaped([block('x1 s1 s2 f1')]);
    expect(still.rows.flatMap((row) => still.reasonsOf(row))).toEqual([]);
  });

  test('fast-first and floor-last set to 0 leave the order as written', () => {
    expect(idsOf(shaped([block('s1 x1 f1 s2')], { 'fast-first': 0 }).rows)).toBe('s1 x1 s2 f1');
    expect(idsOf(shaped([block('s1 x1 f1 s2')], { 'floor-last': 0 }).rows)).toBe('x1 s1 f1 s2');
  });

  test('a circuit keeps the order of its rows', () => {
    const rounds = { kind: 'circuit', rounds: 2 } as const;
    expect(idsOf(shaped([block('f1 s1 x1', rounds)]).rows)).toBe('f1 s1 x1');
  });
});

/** Every order of a list. */
function ordersOf<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length === 0) return [[]];
  return list.flatMap((one) => ordersOf(list.filter((other) => other !== one)).map((rest) => [one, ...rest]));
}

test('no order with fast work first has fewer trips down: every order of every block tried', () => {
  const blocks = fc
    .shuffledSubarray(named, { minLength: 2, maxLength: 7 })
    .chain((ids) => fc.integer({ min: 1, max: ids.length - 1 }).map((at) => [ids.slice(0, at), ids.slice(at)]));
  fc.assert(
    fc.property(blocks, (split) => {
      const { rows } = shaped(split.map((ids) => block(ids.join(' '))));
      const ours = tripsDown(rows.map(needsFloor));
      const parts = [0, 1].map((index) => rows.filter(({ blockIndex }) => blockIndex === index));
      const allowed = parts.map((part) => ordersOf(part).filter(fastFirst));
      const fewest = Math.min(
        ...(allowed[0] ?? []).flatMap((first) =>
          (allowed[1] ?? []).map((second) => tripsDown([...first, ...second].map(needsFloor))),
        ),
      );
      expect(ours).toBe(fewest);
    }),
    { numRuns: 40, seed: 20_261_125 },
  );
});

const fastFirst = (rows: readonly FittedRow[]): boolean =>
  rows.every((row, index) => !isFast(row) || rows.slice(0, index).every(isFast));
