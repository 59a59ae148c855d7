/** Capacity and its predictions. Identities and hand sums; shares from the tables named beside them. */
import { describe, expect, it } from 'vitest';
import {
  capacityOf,
  carriedCapacity,
  decidingEquation,
  externalLoad,
  gainedCapacity,
  heaviestFor,
  isCounted,
  repsThatEarn,
  repsToFailure,
  resistedLoad,
} from '../../src/engine/capacity.js';
import { exerciseId, kitItemId } from '../../src/model/identity.js';
import type { MakeableLoad } from '../../src/model/kit.js';
import type { VersionInput } from '../../src/model/strand.js';

function load(grams: number, ...pieces: readonly number[]): MakeableLoad {
  const items = pieces.map((piece, index) => ({ id: kitItemId(`item-${index}`), grams: piece }));
  return { grams, mode: pieces.length > 1 ? 'per-hand' : 'total', pieces: items, label: '' };
}

function version(share: number | null, ...loads: readonly MakeableLoad[]): VersionInput {
  return { exercise: exerciseId('x'), mode: 'total', share, toHarder: null, toEasier: null, loads, signedOffTo: null };
}

const test = (resisted: number, reps: number) => ({ side: 'both', resisted, reps, weak: false }) as const;

describe('what is resisted', () => {
  it('counts both hands: two bells of 16 kg are 32 kg', () => {
    expect(externalLoad(load(16000, 16000, 16000))).toBe(32000);
    expect(externalLoad(load(16000, 16000))).toBe(16000);
    expect(externalLoad(load(16000))).toBe(16000);
  });

  it('adds the share of the body: squat 0.878, all but shanks and feet (Dempster, in Winter)', () => {
    expect(resistedLoad(version(878, load(16000)), load(16000), 70_000)).toBe(77_460);
    expect(resistedLoad(version(878, load(16000)), load(16000), 70_001)).toBe(77_460);
  });

  it('adds 0.64 in a push-up (Ebben et al. 2011, J Strength Cond Res 25(10):2891-2894)', () => {
    expect(resistedLoad(version(640, load(0)), load(0), 80_000)).toBe(51_200);
  });

  it('is the constant 1 where nothing can be counted', () => {
    expect(resistedLoad(version(878, load(16000)), load(16000), null)).toBe(1);
    expect(isCounted(version(null, load(0), load(8000)), 80_000)).toBe(false);
    expect(isCounted(version(0, load(8000)), null)).toBe(true);
    expect(isCounted(version(null), 80_000)).toBe(false);
  });
});

describe('what is predicted', () => {
  it.each(['epley', 'brzycki'] as const)('by %s, the test itself at its own load, for every count', (equation) => {
    for (let reps = 10; reps < 370; reps += 10) {
      for (const resisted of [1000, 15_876, 77_460, 150_240]) {
        const capacity = capacityOf(equation, test(resisted, reps), true);
        expect(repsToFailure(equation, capacity, reps, resisted)).toBe(reps);
      }
    }
  });

  it('is whole where floats go wrong: 8 with 2 left at 60 kg is exactly ten', () => {
    const capacity = capacityOf('epley', test(60_000, 100), true);
    expect(capacity).toBe(24_000_000);
    expect(repsToFailure('epley', capacity, 100, 62_500)).toBe(84);
    expect(repsToFailure('brzycki', 60_000, 100, 62_500)).toBe(88);
  });

  it('grows by g, rounded down', () => {
    expect(gainedCapacity(24_000_000, 50)).toBe(24_120_000);
    expect(gainedCapacity(399, 100)).toBe(402);
  });

  it('needs a ratio between versions, unless both shares are known and counted', () => {
    const counted = { share: 640, counted: true };
    expect(carriedCapacity(21_504_000, counted, { share: 700, counted: true }, 900)).toBe(21_504_000);
    const bellAlone = { share: 0, counted: true };
    expect(carriedCapacity(1001, bellAlone, { share: null, counted: true }, 900)).toBe(900);
    expect(carriedCapacity(1001, bellAlone, { share: null, counted: true }, null)).toBe(0);
    expect(carriedCapacity(420, { share: 640, counted: false }, { share: 700, counted: false }, 900)).toBe(378);
    expect(carriedCapacity(420, { share: 640, counted: false }, { share: 700, counted: false }, null)).toBe(0);
    expect(carriedCapacity(420, counted, { share: 700, counted: false }, 900)).toBe(0);
  });

  it('carries no strength from a version that counts the body to one that may not', () => {
    const counted = { share: 640, counted: true };
    expect(carriedCapacity(21_504_000, counted, { share: null, counted: true }, 900)).toBe(0);
    expect(carriedCapacity(21_504_000, { share: null, counted: true }, counted, 900)).toBe(0);
  });

  it('turns to Epley where Brzycki has no meaning', () => {
    expect(decidingEquation('brzycki', true, 369)).toBe('brzycki');
    expect(decidingEquation('brzycki', true, 370)).toBe('epley');
    expect(decidingEquation('brzycki', false, 100)).toBe('epley');
    expect(decidingEquation('epley', true, 100)).toBe('epley');
  });
});

describe('turned round', () => {
  it.each(['epley', 'brzycki'] as const)(
    'by %s, the heaviest load for so many reps, and the reps that earn them',
    (equation) => {
      for (const reps of [60, 100, 140]) {
        const capacity = capacityOf(equation, test(24_000, reps), true);
        for (const needed of [20, 50, 80]) {
          const heaviest = heaviestFor(equation, capacity, reps, needed);
          expect(repsToFailure(equation, capacity, reps, heaviest)).toBeGreaterThanOrEqual(needed);
          expect(repsToFailure(equation, capacity, reps, heaviest + 1)).toBeLessThan(needed);
          const earning = repsThatEarn(equation, 24_000, 28_000, needed);
          const able = capacityOf(equation, test(24_000, earning), true);
          expect(repsToFailure(equation, able, earning, 28_000)).toBeGreaterThanOrEqual(needed);
        }
      }
    },
  );
});
