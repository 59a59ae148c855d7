/**
 * The seven equations against published identities and a worked table.
 *
 * Status of each: *confirmed* where the source or a page reporting it was seen, *recomputed* where two independent
 * programs agree on the algebra, *from memory* where it was not seen this time.
 */
import { describe, expect, it } from 'vitest';
import {
  brzyckiMaximum,
  epleyMaximum,
  estimateMaximum,
  landerMaximum,
  lombardiMaximum,
  type MaximumEquation,
  mayhewMaximum,
  oConnerMaximum,
  wathanMaximum,
} from '../../src/engine/repetition-maximum.js';

const EQUATIONS: readonly MaximumEquation[] = [
  epleyMaximum,
  brzyckiMaximum,
  landerMaximum,
  lombardiMaximum,
  mayhewMaximum,
  oConnerMaximum,
  wathanMaximum,
];

/** Recomputed with independent programs from the equations as published; load 100, four decimals. */
const WORKED: readonly (readonly [number, readonly number[]])[] = [
  [1, [103.3333, 100.0, 101.3903, 100.0, 108.864, 102.5, 101.3042]],
  [2, [106.6667, 102.8571, 104.2128, 107.1773, 111.4387, 105.0, 105.1457]],
  [3, [110.0, 105.8824, 107.1969, 111.6123, 113.9903, 107.5, 108.9797]],
  [5, [116.6667, 112.5, 113.7089, 117.4619, 119.0107, 112.5, 116.5825]],
  [8, [126.6667, 124.1379, 125.1092, 123.1144, 126.2863, 120.0, 127.6714]],
  [10, [133.3333, 133.3333, 134.0704, 125.8925, 130.9343, 125.0, 134.7467]],
  [12, [140.0, 144.0, 144.4143, 128.2089, 135.3985, 130.0, 141.4959]],
  [15, [150.0, 163.6364, 163.3145, 131.1019, 141.7192, 137.5, 150.9063]],
];

/** Recomputed; kilograms, three decimals. */
const BELLS: readonly (readonly [number, number, readonly number[]])[] = [
  [24, 8, [30.4, 29.793, 30.026, 29.547, 30.309, 28.8, 30.641]],
  [32, 5, [37.333, 36.0, 36.387, 37.588, 38.083, 36.0, 37.306]],
  [16, 12, [22.4, 23.04, 23.106, 20.513, 21.664, 20.8, 22.639]],
];

describe('the seven equations', () => {
  it.each(WORKED)('100 lifted %i times', (reps, maxima) => {
    expect(EQUATIONS.map((equation) => Number(equation(100, reps).toFixed(4)))).toEqual(maxima);
  });

  it.each(BELLS)('%i kg lifted %i times', (load, reps, maxima) => {
    expect(EQUATIONS.map((equation) => Number(equation(load, reps).toFixed(3)))).toEqual(maxima);
  });

  it("Epley's and Brzycki's meet at ten reps, Epley's is higher below (confirmed, second-hand)", () => {
    expect(epleyMaximum(90, 10)).toBe(120);
    expect(brzyckiMaximum(90, 10)).toBe(120);
    for (let reps = 1; reps < 10; reps += 1) {
      expect(epleyMaximum(100, reps)).toBeGreaterThan(brzyckiMaximum(100, reps));
    }
  });

  it("O'Conner's and Brzycki's meet at five reps: 1.125 (confirmed, second-hand)", () => {
    expect(oConnerMaximum(80, 5)).toBe(90);
    expect(brzyckiMaximum(80, 5)).toBe(90);
  });

  it("Brzycki's decimal form, 1.0278 − 0.0278 r, is within 0.06 % up to 15 reps (recomputed)", () => {
    for (let reps = 1; reps <= 15; reps += 1) {
      const decimals = 100 / (1.0278 - 0.0278 * reps);
      expect(Math.abs(decimals / brzyckiMaximum(100, reps) - 1)).toBeLessThan(0.0006);
    }
  });

  /** Recomputed inverses, per cent of the maximum for 1 to 12 reps. */
  it('gives these shares of the maximum', () => {
    const shares = (equation: MaximumEquation): readonly number[] =>
      Array.from({ length: 12 }, (_, index) => Number((10_000 / equation(100, index + 1)).toFixed(2)));
    expect(shares(epleyMaximum)).toEqual([
      96.77, 93.75, 90.91, 88.24, 85.71, 83.33, 81.08, 78.95, 76.92, 75, 73.17, 71.43,
    ]);
    expect(shares(brzyckiMaximum)).toEqual([
      100, 97.22, 94.44, 91.67, 88.89, 86.11, 83.33, 80.56, 77.78, 75, 72.22, 69.44,
    ]);
  });
});

describe('a single', () => {
  it('is its own maximum, whatever an equation says of one rep', () => {
    for (const equation of EQUATIONS) expect(estimateMaximum(equation, 100, 1)).toBe(100);
    expect(epleyMaximum(100, 1)).not.toBe(100);
  });

  it('leaves every other count to the equation', () => {
    expect(estimateMaximum(oConnerMaximum, 80, 5)).toBe(90);
  });
});
