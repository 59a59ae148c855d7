/** Bells, pairs and handles as loads, with the items that make them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heaviestUpTo } from '../../src/engine/kit/at-most.js';
import { listLoads } from '../../src/engine/kit/list-loads.js';
import type { LoadMode, LoadNeed } from '../../src/model/kit.js';
import { chanceFrom } from './chance.js';
import { generateKit, kitOf } from './generate-studio.js';
import { kg, lb } from './make-block.js';

const need = (...load: readonly LoadNeed[]) => ({ load, unloaded: false, things: [] });
const bell = (count: 1 | 2, unequal = false): LoadNeed => ({ kind: 'bell', count, unequal });
const dumbbell = (count: 1 | 2): LoadNeed => ({ kind: 'dumbbell', count, unequal: false });
const shown = (kit: ReturnType<typeof kitOf>, ways: readonly LoadNeed[], mode: LoadMode) =>
  listLoads(kit, need(...ways), mode, 'kg').loads.map(({ grams, label, pieces }) => [grams, label, pieces.length]);

describe('loads', () => {
  const kit = kitOf([
    ['bell', kg('12')],
    ['bell', kg('16')],
    ['bell', kg('16')],
    ['bell', kg('20')],
  ]);

  test('a pair is two items of equal mass', () => {
    expect(shown(kit, [bell(2)], 'per-hand')).toEqual([[16_000, '2 × 16 kg', 2]]);
    expect(shown(kit, [bell(2)], 'total')).toEqual([[32_000, '2 × 16 kg', 2]]);
    const [pair] = listLoads(kit, need(bell(2)), 'per-hand', 'kg').loads;
    expect(pair?.pieces.map(({ id }) => id)).toEqual(['bell-2', 'bell-3']);
  });

  test('two unequal bells only where the exercise allows them', () => {
    expect(shown(kit, [bell(2, true)], 'per-hand')).toEqual([
      [14_000, '12 kg + 16 kg', 2],
      [16_000, '2 × 16 kg', 2],
      [18_000, '16 kg + 20 kg', 2],
    ]);
  });

  test('a 35 lb bell is no pair with one of 16 kg', () => {
    const mixed = kitOf([
      ['bell', kg('16')],
      ['bell', lb('35')],
    ]);
    expect(shown(mixed, [bell(2)], 'per-hand')).toEqual([]);
  });

  test('the way the exercise prefers makes a mass that two ways can make', () => {
    const both = kitOf([
      ['dumbbell', kg('16')],
      ['bell', kg('16')],
    ]);
    const made = (...ways: readonly LoadNeed[]) =>
      listLoads(both, need(...ways), 'total', 'kg').loads[0]?.pieces[0]?.id;
    expect(made(bell(1), dumbbell(1))).toBe('bell-2');
    expect(made(dumbbell(1), bell(1))).toBe('dumbbell-1');
  });

  test('two unequal bells are no more than about a third apart, and an equal pair goes before one near it', () => {
    const limits = { platesASide: 5, unlike: 334, near: 100 };
    const labels = (...figures: string[]) =>
      listLoads(
        kitOf(figures.map((figure) => ['bell', kg(figure)] as const)),
        need(bell(2, true)),
        'total',
        'kg',
        limits,
      )
        .loads.map(({ label }) => label)
        .join(', ');
    // 24 to 32 is a third exactly; 8 to 12 is a half.
    expect(labels('8', '12', '24', '32')).toBe('24 kg + 32 kg');
    // 12 + 16 is an eighth below two of 16, and so a load of its own; 15 + 16 is near them.
    expect(labels('12', '16', '16')).toBe('12 kg + 16 kg, 2 × 16 kg');
    expect(labels('15', '16', '16')).toBe('2 × 16 kg');
  });

  test('the start: the load tested, else an equal pair before an unequal one', () => {
    const bells = ['12', '12', '14', '18'].map((figure) => ['bell', kg(figure)] as const);
    const { loads } = listLoads(kitOf(bells), need(bell(2, true)), 'total', 'kg');
    const from = (figure: string) => heaviestUpTo(loads, kg(figure).grams)?.label;
    expect(from('26')).toBe('12 kg + 14 kg');
    expect(from('27')).toBe('2 × 12 kg');
    expect(from('23')).toBeUndefined();
  });

  test('counted per hand, a single bell is not listed beside pairs', () => {
    expect(shown(kit, [bell(2), bell(1)], 'per-hand')).toEqual([[16_000, '2 × 16 kg', 2]]);
  });

  test('a handle counts its own mass; a pair of handles wants four plates of each', () => {
    const handles = kitOf([
      ['handle', kg('2')],
      ['handle', kg('2')],
      ...['1.25', '1.25', '1.25', '1.25', '5', '5'].map((figure) => ['plate', kg(figure)] as const),
    ]);
    expect(shown(handles, [dumbbell(1)], 'per-hand').map(([, label]) => label)).toEqual([
      '2 kg',
      '4.5 kg',
      '7 kg',
      '12 kg',
      '14.5 kg',
      '17 kg',
    ]);
    expect(shown(handles, [dumbbell(2)], 'per-hand')).toEqual([
      [2000, '2 × 2 kg', 2],
      [4500, '2 × 4.5 kg', 6],
    ]);
  });

  test('bands are no loads in grams', () => {
    expect(shown(kit, [{ kind: 'band' }], 'band')).toEqual([]);
  });

  test('any kit: lightest first, each mass once, every piece an item of the kit and none twice', () => {
    const ways = fc.subarray<LoadNeed>([bell(1), bell(2), bell(2, true), dumbbell(1), dumbbell(2), { kind: 'bar' }]);
    fc.assert(
      fc.property(fc.integer(), ways, fc.constantFrom<LoadMode>('per-hand', 'total', 'added'), (seed, load, mode) => {
        const items = generateKit(chanceFrom(seed), 'kg');
        const owned = new Map(items.flatMap((item) => ('mass' in item ? [[item.id, item.mass.grams]] : [])));
        const { loads } = listLoads(items, need(...load), mode, 'kg');
        const held = loads.map(({ pieces }) => pieces.reduce((sum, { grams }) => sum + grams, 0));
        expect(held).toEqual([...held].sort((a, b) => a - b));
        expect(new Set(loads.map(({ grams }) => grams)).size).toBe(loads.length);
        for (const { pieces } of loads) {
          expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
          for (const { id, grams } of pieces) expect(owned.get(id)).toBe(grams);
        }
      }),
      { numRuns: 300 },
    );
  });
});
