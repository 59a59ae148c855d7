/**
 * What can be put on a bar or a handle, against counting it out: every plate on the left, on the right or off, and the
 * two sides the same. The sum itself needs no source; that each side carries the same plates is common practice, no
 * source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listLoads } from '../../src/engine/kit/list-loads.js';
import { sumPlates } from '../../src/engine/kit/plate-sums.js';
import { kitItemId } from '../../src/model/identity.js';
import { kitOf, mass } from '../engine/generate-studio.js';

const plates = (grams: readonly number[]) => grams.map((of, index) => ({ id: kitItemId(`p-${index}`), grams: of }));

/** Where each plate goes: nowhere, or to one of the sides. */
function countOut(grams: readonly number[], sides: number): readonly number[] {
  const sums = new Set<number>();
  const place = (index: number, on: readonly (readonly number[])[]): void => {
    const of = grams[index];
    if (of === undefined) {
      const told = on.map((side) => [...side].sort((a, b) => a - b).join(' '));
      if (new Set(told).size === 1) sums.add(on.flat().reduce((sum, plate) => sum + plate, 0));
      return;
    }
    place(index + 1, on);
    for (let side = 0; side < sides; side += 1) {
      place(
        index + 1,
        on.map((held, i) => (i === side ? [...held, of] : held)),
      );
    }
  };
  place(
    0,
    Array.from({ length: sides }, () => []),
  );
  return [...sums].sort((a, b) => a - b);
}

const few = fc.array(fc.constantFrom(500, 1250, 2500, 5000, 10_000), { maxLength: 7 });

describe('plates', () => {
  test('on two sides: every sum that can be counted out, and no other', () => {
    fc.assert(
      fc.property(few, (grams) => {
        expect(sumPlates(plates(grams), 2)?.map((sum) => sum.grams)).toEqual(countOut(grams, 2));
      }),
      { numRuns: 150 },
    );
  });

  test('on the four sides of two handles', () => {
    const six = fc.array(fc.constantFrom(1250, 2500, 5000), { maxLength: 6 });
    fc.assert(
      fc.property(six, (grams) => {
        expect(sumPlates(plates(grams), 4)?.map((sum) => sum.grams)).toEqual(countOut(grams, 4));
      }),
      { numRuns: 60 },
    );
  });

  test('each sum says which plates: those there are, each once, the same on both sides, as few as can be', () => {
    fc.assert(
      fc.property(few, (grams) => {
        const all = plates(grams);
        for (const sum of sumPlates(all, 2) ?? []) {
          expect(new Set(sum.plates.map(({ id }) => id)).size).toBe(sum.plates.length);
          expect(sum.plates.reduce((total, plate) => total + plate.grams, 0)).toBe(sum.grams);
          for (const plate of sum.plates) {
            expect(all).toContainEqual(plate);
            expect(sum.plates.filter((other) => other.grams === plate.grams).length % 2).toBe(0);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  test('of two ways to one sum, the fewer plates', () => {
    const sums = sumPlates(plates([5000, 5000, 5000, 5000, 10_000, 10_000]), 2);
    expect(sums?.find((sum) => sum.grams === 20_000)?.plates.map((plate) => plate.grams)).toEqual([10_000, 10_000]);
  });

  test('a kit without end is refused, not listed', () => {
    const odd = Array.from({ length: 40 }, (_, index) => 1000 + 2 ** (index % 20));
    expect(sumPlates(plates(odd), 2)).toBeNull();
  });

  test('a 20 kg bar with two each of 10, 5 and 2.5 kg counts its own mass, and names its pieces', () => {
    const kit = kitOf([
      ['bar', mass('20', 'kg')],
      ...['10', '10', '5', '5', '2.5', '2.5'].map((figure) => ['plate', mass(figure, 'kg')] as const),
    ]);
    const need = { load: [{ kind: 'bar' }], unloaded: false, things: [] } as const;
    const { loads } = listLoads(kit, need, 'total', 'kg');
    expect(loads.map((load) => load.label)).toEqual([
      '20 kg',
      '25 kg',
      '30 kg',
      '35 kg',
      '40 kg',
      '45 kg',
      '50 kg',
      '55 kg',
    ]);
    expect(loads.at(-1)?.pieces.map(({ id }) => id)).toEqual([
      'bar-1',
      'plate-2',
      'plate-3',
      'plate-4',
      'plate-5',
      'plate-6',
      'plate-7',
    ]);
  });
});
