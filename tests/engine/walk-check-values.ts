/** Walks worked out by hand, and by three programs written apart: what the walk must yield. */
import type { Written } from './walk-notation.js';

const A = '3 3 2 2 2 e4';
const C = '4 3 3 2 2 e4';

export const CHECK_VALUES: readonly (Written & { readonly walk: string })[] = [
  {
    ...{ kit: 'bar 2.5', test: '60 x 8, 2 left', range: '5-8', asked: '3 3 2 2 1 e4', floor: '1', sets: '4 4 4 4 4 2' },
    walk: '7@60 · 7@60 · 8@60 · 6@62.5 · 7@62.5 · e 4@62.5',
  },
  {
    ...{ kit: 'bar 2.5', share: '878', body: 80, test: '80 x 6, 2 left', range: '4-6', asked: C, gain: 0.5 },
    sets: '4 4 4 4 4 2',
    walk: '4@80 · 5@80 · 5@80 · 6@80 · 6@82.5 · e 4@82.5',
  },
  {
    ...{ kit: '24', test: '24 x 12, 2 left', range: '6-12', asked: A, tempi: '800 700', sets: '3 3 3 3 3 2' },
    walk: '11@24 · 11@24 · 12@24 · 12@24 · 9@24 slow · e 7@24 slow',
  },
  {
    ...{ kit: '12-24 by 4', share: '878', body: 70, test: '16 x 10, 2 left', range: '6-10', asked: A, gain: 1 },
    sets: '3 3 3 3 3 2',
    walk: '9@16 · 9@16 · 10@16 · 10@16 · gate 9@20 · e 8@20',
  },
  {
    ...{ kit: '20-32 by 4', test: '24 x 9, 3 left', range: '5-9', asked: A, gain: 1, sets: '4 4 4 4 4 2' },
    walk: '9@24 · 9@24 · 9@24 + 4@28 · gate 5@28 · 5@28 · e 4@28',
  },
  {
    ...{ kit: '28, 32, 36', test: '32 x 10, 2 left', range: '5-10', asked: '2 2 2 2 2 e4', earned: 2 },
    sets: '4 4 4 4 4 2',
    walk: 'gate 5@36 · 5@36 · 5@36 · 5@36 · 5@36 · e 3@36',
  },
  {
    ...{ kit: '16, 20', test: '16 x 12, 2 left', range: '6-12', asked: A, sets: '3 3 3 3 3 2' },
    walk: '11@16 · 11@16 · 12@16 · 12@16 · 12@16 + 3@20 · e 10@16',
  },
  {
    ...{ kit: 'body', share: '640', body: 80, bodyweight: true, test: '0 x 8, 3 left', range: '6-12', asked: A },
    sets: '3 3 3 3 3 2',
    walk: '8@0 · 8@0 · 9@0 · 9@0 · 9@0 · e 7@0',
  },
  {
    ...{ kit: '8-24 by 4', test: '16 x 8, 2 left', range: '6-10', asked: C, sets: '4 4 4 4 4 2' },
    walk: '6@16 · 7@16 · 7@16 · 8@16 · 8@16 · e 6@16',
  },
  {
    ...{ kit: '8, 12', test: '8 x 10, 3 left', range: '8-12', asked: A, sets: '3 3 3 3 3 2' },
    walk: '10@8 · 10@8 · 11@8 · 11@8 · 11@8 · e 9@8',
  },
  {
    ...{ kit: '12, 16, 20', test: '16 x 8, 2 left', range: '6-10', asked: C, gain: 0.5, sets: '2 3 3 4 4 2' },
    walk: '6@16 · 7@16 · 7@16 · 8@16 · 8@16 · e 7@16',
  },
  {
    ...{ kit: '12, 16, 20', test: '16 x 8, 2 left', range: '6-10', asked: A, sets: '1' },
    walk: '7@16 · 7@16 · 8@16 · 8@16 · 8@16 · e 6@16',
  },
  {
    ...{ kit: 'bar 2.5', test: '45 x 4, 1 left', range: '5-8', asked: '4 4 3 3 2 e4', gain: 0.5, sets: '3 3 3 3 3 2' },
    walk: '8@37.5 · 5@40 · 6@40 · 7@40 · 5@42.5 · e 4@42.5',
  },
  {
    ...{ kit: 'bar 2.5', test: '92.5 x 10, 3 left', range: '5-8', asked: A, gain: 0.5, sets: '1' },
    walk: '8@92.5 · 8@92.5 · 8@95 · 8@95 · 8@97.5 · e 7@97.5',
  },
];
