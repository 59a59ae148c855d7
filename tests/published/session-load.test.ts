/**
 * Load, monotony and strain of a week: Foster 1998, Med Sci Sports Exerc 30:1164-1168 (session load is the rating of 10
 * times the minutes; monotony the mean of seven days over their SD; strain the sum times monotony). The paper's own table
 * of daily loads is not at hand. Held against are a closed form, which follows from the definition alone, and weeks
 * worked out beside it by hand; two of them come to the 4,000 that the paper's example speaks of (p. 1167, as it is
 * cited: four hard days, two easy and one off strain far less than six hard and one off).
 */
import { describe, expect, it, test } from 'vitest';
import { loadOfDays } from '../../src/engine/review/week-load.js';
import type { LoadOfDays } from '../../src/model/review.js';

type Known = Extract<LoadOfDays, { readonly kind: 'known' }>;

function known(days: readonly (number | null)[]): Known {
  const load = loadOfDays(days);
  if (load.kind !== 'known') throw new Error(`not known: ${load.kind}`);
  return load;
}

/** The SD of a sample is greater by this, monotony and strain smaller. */
const SAMPLE = Math.sqrt(7 / 6);

/** Equal sessions a week, monotony with the SD of the population and of a sample: √(k/(7−k)) and √(6k/(7(7−k))). */
const EQUAL: readonly (readonly [sessions: number, population: number, sample: number])[] = [
  [1, 0.4082, 0.378],
  [2, 0.6325, 0.5855],
  [3, 0.866, 0.8018],
  [4, 1.1547, 1.069],
  [5, 1.5811, 1.4639],
  [6, 2.4495, 2.2678],
];

interface Week {
  readonly days: readonly number[];
  readonly total: number;
  readonly sd: readonly [population: number, sample: number];
  readonly monotony: readonly [population: number, sample: number];
  readonly strain: readonly [population: number, sample: number];
}

const WEEKS: readonly Week[] = [
  {
    days: [360, 0, 360, 0, 360, 0, 0],
    total: 1080,
    sd: [178.1538, 192.4281],
    monotony: [0.866, 0.8018],
    strain: [935.31, 865.93],
  },
  {
    days: [800, 400, 800, 800, 400, 800, 0],
    total: 4000,
    sd: [291.3725, 314.7183],
    monotony: [1.9612, 1.8157],
    strain: [7844.65, 7262.73],
  },
  {
    days: [...Array.from({ length: 6 }, () => 4000 / 6), 0],
    total: 4000,
    sd: [233.2847, 251.9763],
    monotony: [2.4495, 2.2678],
    strain: [9797.96, 9071.15],
  },
  {
    days: [300, 0, 420, 0, 360, 150, 0],
    total: 1230,
    sd: [170.03, 183.6534],
    monotony: [1.0334, 0.9568],
    strain: [1271.12, 1176.83],
  },
];

describe('k equal sessions and 7 − k days off', () => {
  const weekOf = (sessions: number, load: number) => Array.from({ length: 7 }, (_, day) => (day < sessions ? load : 0));

  test.each(EQUAL)('%i: whatever the load', (sessions, population, sample) => {
    for (const load of [1, 37.5, 240, 600]) {
      const { monotony, total } = known(weekOf(sessions, load));
      expect(total).toBeCloseTo(sessions * load, 9);
      expect(monotony).toBeCloseTo(Math.sqrt(sessions / (7 - sessions)), 12);
      expect(monotony).toBeCloseTo(population, 4);
      expect(monotony / SAMPLE).toBeCloseTo(Math.sqrt((6 * sessions) / (7 * (7 - sessions))), 12);
      expect(monotony / SAMPLE).toBeCloseTo(sample, 4);
    }
  });

  test('only six days and more come above 2, which is often taken as monotonous', () => {
    const above = EQUAL.filter(([sessions]) => known(weekOf(sessions, 300)).monotony > 2);
    expect(above.map(([sessions]) => sessions)).toEqual([6]);
  });

  it('has no monotony where all days are alike', () => {
    expect(loadOfDays(weekOf(7, 300))).toEqual({ kind: 'alike', total: 2100 });
    expect(loadOfDays(weekOf(0, 300))).toEqual({ kind: 'alike', total: 0 });
  });
});

describe('weeks worked out by hand', () => {
  test.each(WEEKS)('$days', ({ days, total, sd, monotony, strain }) => {
    const load = known(days);
    expect(load.total).toBeCloseTo(total, 9);
    expect([load.sd, load.sd * SAMPLE].map((one) => Number(one.toFixed(4)))).toEqual(sd);
    expect([load.monotony, load.monotony / SAMPLE].map((one) => Number(one.toFixed(4)))).toEqual(monotony);
    expect([load.strain, load.strain / SAMPLE].map((one) => Number(one.toFixed(2)))).toEqual(strain);
  });

  it('strains a quarter more when the same 4,000 come without easy days', () => {
    const [mixed, flat] = [WEEKS[1], WEEKS[2]].map((week) => known(week?.days ?? []).strain);
    expect((flat ?? 0) / (mixed ?? 1)).toBeCloseTo(1.249, 3);
  });

  it('is the same in whatever order the days stand', () => {
    for (const { days } of WEEKS) {
      expect(known([...days].reverse()).strain).toBeCloseTo(known(days).strain, 9);
    }
  });
});

describe('what was not said', () => {
  it('makes the week’s figure not known, and names the days', () => {
    expect(loadOfDays([360, 0, null, 0, 360, null, 0])).toEqual({ kind: 'not known', days: [2, 5] });
  });
});
