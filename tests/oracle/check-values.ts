/**
 * Check values of the walk: strands small enough to be walked by hand, and what each occurrence must be. They were
 * agreed between three walks written apart. Data only: `check-values.test.ts` holds the oracle to them and
 * `compare.test.ts` the engine.
 */
import { bar, bells, buildStrand, type Jotting, version } from './build-strand.js';
import type { StrandJson } from './strand-json.js';

export interface CheckValue {
  readonly name: string;
  readonly strand: StrandJson;
  /** As `sayWalk` writes it. */
  readonly walk: string;
}

const A = [3, 3, 2, 2, 2];
const C = [4, 3, 3, 2, 2];
const row = (name: string, jotting: Jotting, walk: string): CheckValue => ({
  name,
  strand: buildStrand(jotting),
  walk,
});

export const CHECK_VALUES: readonly CheckValue[] = [
  row(
    'bar, small step earned once',
    {
      versions: [version('press', bar(20_000, 100_000, 2500))],
      tested: [60_000, 8, 2],
      range: [5, 8],
      curve: [3, 3, 2, 2, 1],
      floor: 1,
      sets: [4, 2],
    },
    '7 @ 60 · 7 @ 60 · 8 @ 60 · 6 @ 62.5 · 7 @ 62.5 · e 4 @ 62.5',
  ),
  row(
    'squat with most of the body',
    {
      versions: [version('squat', bar(20_000, 120_000, 2500), { share: 878 })],
      bodyMass: 80_000,
      tested: [80_000, 6, 2],
      range: [4, 6],
      curve: C,
      gain: 50,
      sets: [4, 2],
    },
    '4 @ 80 · 5 @ 80 · 5 @ 80 · 6 @ 80 · 6 @ 82.5 · e 4 @ 82.5',
  ),
  row(
    'one bell and slower tempi',
    {
      versions: [version('press', bells(24))],
      tested: [24_000, 12, 2],
      range: [6, 12],
      curve: A,
      tempi: true,
      sets: [3, 2],
    },
    '11 @ 24 · 11 @ 24 · 12 @ 24 · 12 @ 24 · slow 9 @ 24 · e slow 7 @ 24',
  ),
  row(
    'goblet squat through a gate',
    {
      versions: [version('goblet squat', bells(12, 16, 20, 24), { share: 878 })],
      bodyMass: 70_000,
      tested: [16_000, 10, 2],
      range: [6, 10],
      curve: A,
      gain: 100,
      sets: [3, 2],
    },
    '9 @ 16 · 9 @ 16 · 10 @ 16 · 10 @ 16 · gate 9 @ 20 · e 8 @ 20',
  ),
  row(
    'trial, then the gate',
    {
      versions: [version('press', bells(20, 24, 28, 32))],
      tested: [24_000, 9, 3],
      range: [5, 9],
      curve: A,
      gain: 100,
      sets: [4, 2],
    },
    '9 @ 24 · 9 @ 24 · 9 @ 24 + trial 4 @ 28 · gate 5 @ 28 · 5 @ 28 · e 4 @ 28',
  ),
  row(
    'earned before the block began',
    {
      versions: [version('press', bells(28, 32, 36))],
      tested: [32_000, 10, 2],
      range: [5, 10],
      curve: [2, 2, 2, 2, 2],
      earned: 2,
      sets: [4, 2],
    },
    'gate 5 @ 36 · 5 @ 36 · 5 @ 36 · 5 @ 36 · 5 @ 36 · e 3 @ 36',
  ),
  row(
    'a weak estimate is tried, never risen on',
    {
      versions: [version('press', bells(16, 20))],
      tested: [16_000, 12, 2],
      range: [6, 12],
      curve: A,
      sets: [3, 2],
    },
    '11 @ 16 · 11 @ 16 · 12 @ 16 · 12 @ 16 · 12 @ 16 + trial 3 @ 20 · e 10 @ 16',
  ),
  row(
    'push-up',
    {
      versions: [version('push-up', bells(0), { share: 640 })],
      bodyMass: 80_000,
      tested: [0, 8, 3],
      range: [6, 12],
      curve: A,
      sets: [3, 2],
      more: { way: 'bodyweight' },
    },
    '8 · 8 · 9 · 9 · 9 · e 7',
  ),
  row(
    'reps follow the curve',
    {
      versions: [version('press', bells(8, 12, 16, 20, 24))],
      tested: [16_000, 8, 2],
      range: [6, 10],
      curve: C,
      sets: [4, 2],
    },
    '6 @ 16 · 7 @ 16 · 7 @ 16 · 8 @ 16 · 8 @ 16 · e 6 @ 16',
  ),
  row(
    'a range the bell does not fill',
    {
      versions: [version('press', bells(8, 12))],
      tested: [8000, 10, 3],
      range: [8, 12],
      curve: A,
      sets: [3, 2],
    },
    '10 @ 8 · 10 @ 8 · 11 @ 8 · 11 @ 8 · 11 @ 8 · e 9 @ 8',
  ),
  row(
    'sets that climb',
    {
      versions: [version('press', bells(12, 16, 20))],
      tested: [16_000, 8, 2],
      range: [6, 10],
      curve: C,
      gain: 50,
      sets: [[2, 3, 3, 4, 4], 2],
    },
    '6 @ 16 · 7 @ 16 · 7 @ 16 · 8 @ 16 · 8 @ 16 · e 7 @ 16',
  ),
  row(
    'one set',
    {
      versions: [version('press', bells(12, 16, 20))],
      tested: [16_000, 8, 2],
      range: [6, 10],
      curve: A,
      sets: [1, 1],
    },
    '7 @ 16 · 7 @ 16 · 8 @ 16 · 8 @ 16 · 8 @ 16 · e 6 @ 16',
  ),
  row(
    'too heavy at the test: down, and back up',
    {
      versions: [version('press', bar(20_000, 60_000, 2500))],
      tested: [45_000, 4, 1],
      range: [5, 8],
      curve: [4, 4, 3, 3, 2],
      gain: 50,
      sets: [3, 2],
    },
    '8 @ 37.5 · 5 @ 40 · 6 @ 40 · 7 @ 40 · 5 @ 42.5 · e 4 @ 42.5',
  ),
  row(
    'weak, small steps earned twice',
    {
      versions: [version('squat', bar(20_000, 120_000, 2500))],
      tested: [92_500, 10, 3],
      range: [5, 8],
      curve: A,
      gain: 50,
      sets: [1, 1],
    },
    '8 @ 92.5 · 8 @ 92.5 · 8 @ 95 · 8 @ 95 · 8 @ 97.5 · e 7 @ 97.5',
  ),
];
