/** What can be made of a kit, by hand on small kits: bells, pairs, a bar, two handles. */
import { describe, expect, it } from 'vitest';
import { listMasses, splitsEvenly, whyNotMakeable } from './audit-kit.js';

const item = (id: string, kind: string, grams: number | null) => ({ id, kind, grams, label: id });
const KIT = [
  item('bell-8', 'bell', 8000),
  item('bell-12', 'bell', 12_000),
  item('bell-12-b', 'bell', 12_000),
  item('bar', 'bar', 20_000),
  item('handle-a', 'handle', 2000),
  item('handle-b', 'handle', 2000),
  ...[1, 2, 3, 4].map((n) => item(`plate-2.5-${n}`, 'plate', 2500)),
  ...[1, 2].map((n) => item(`plate-5-${n}`, 'plate', 5000)),
  item('plate-1', 'plate', 1000),
  item('chair', 'chair', null),
];
const load = (grams: number, mode: string, ...ids: readonly string[]) => ({
  grams,
  mode,
  pieces: ids.map((id) => ({ id, grams: KIT.find((one) => one.id === id)?.grams ?? 0 })),
});
const why = (grams: number, mode: string, ...ids: readonly string[]) => whyNotMakeable(load(grams, mode, ...ids), KIT);

describe('a load and its pieces', () => {
  it('takes what can be made', () => {
    expect(why(0, 'total')).toBeUndefined();
    expect(why(8000, 'total', 'bell-8')).toBeUndefined();
    expect(why(12_000, 'per-hand', 'bell-12', 'bell-12-b')).toBeUndefined();
    expect(why(24_000, 'total', 'bell-12', 'bell-12-b')).toBeUndefined();
    expect(why(35_000, 'total', 'bar', 'plate-2.5-1', 'plate-2.5-2', 'plate-5-1', 'plate-5-2')).toBeUndefined();
    const handles = ['handle-a', 'handle-b', 'plate-2.5-1', 'plate-2.5-2', 'plate-2.5-3', 'plate-2.5-4'];
    expect(why(7000, 'per-hand', ...handles)).toBeUndefined();
    expect(why(7000, 'per-hand', 'handle-a', 'plate-2.5-1', 'plate-2.5-2')).toBeUndefined();
  });

  it.each([
    ['an item is used twice', why(24_000, 'total', 'bell-12', 'bell-12')],
    ['plates that are not the same on both ends', why(22_500, 'total', 'bar', 'plate-2.5-1')],
    ['plates that are not the same on both ends', why(23_500, 'total', 'bar', 'plate-2.5-1', 'plate-1')],
    ['plates without a bar or handle', why(5000, 'total', 'plate-2.5-1', 'plate-2.5-2')],
    ['a bell on a bar', why(28_000, 'total', 'bar', 'bell-8')],
    ['more than two hands hold', why(32_000, 'total', 'bell-8', 'bell-12', 'bell-12-b')],
    ['two unlike handles', why(11_000, 'per-hand', 'bar', 'handle-a')],
    [
      'two handles that are not loaded alike',
      why(4500, 'per-hand', 'handle-a', 'handle-b', 'plate-2.5-1', 'plate-2.5-2'),
    ],
    ['4000 g in two hands printed as 9000 g each', why(9000, 'per-hand', 'handle-a', 'handle-b')],
    ['8000 g in one hand printed as 9000 g', why(9000, 'per-hand', 'bell-8')],
    [
      'a piece that is not a load',
      whyNotMakeable({ grams: 0, mode: 'total', pieces: [{ id: 'chair', grams: 0 }] }, [item('chair', 'chair', 0)]),
    ],
  ])('refuses: %s', (reason, said) => {
    expect(said).toContain(reason);
  });
});

describe('what a kit makes', () => {
  it('lists bells, pairs, and every balanced load of bar and handle', () => {
    const made = listMasses(KIT);
    expect([...(made.get('one bell') ?? [])]).toEqual([8000, 12_000]);
    expect([...(made.get('two bells') ?? [])]).toEqual([12_000]);
    const bar = [...(made.get('one bar') ?? [])].sort((a, b) => a - b);
    expect(bar).toEqual([20_000, 25_000, 30_000, 35_000, 40_000]);
    expect([...(made.get('one handle') ?? [])].sort((a, b) => a - b)).toEqual([2000, 7000, 12_000, 17_000, 22_000]);
  });

  it('splits evenly or says it cannot', () => {
    expect(splitsEvenly([5, 2.5, 2.5], 2)).toBe(true);
    expect(splitsEvenly([5, 2.5], 2)).toBe(false);
    expect(splitsEvenly([3, 3, 2, 2, 2], 2)).toBe(true);
    expect(splitsEvenly([], 2)).toBe(true);
  });
});
