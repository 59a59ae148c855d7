/**
 * What one repetition might weigh, by seven published equations and by a handbook's table. For showing beside a test,
 * never for deciding: powers and exponentials are not the same on every machine, and the equations differ by more
 * than any of them is right. What decides is in `capacity.ts`, in whole numbers.
 *
 * The bare equations are as published. At one repetition only Brzycki's and Lombardi's give the load back; a single
 * that was lifted is its own maximum, so `estimateMaximum` does not ask an equation then.
 */

/** In the unit of `load`; `reps` to failure, from 1. */
export type MaximumEquation = (load: number, reps: number) => number;

/** Epley 1985. Up to 10 reps. */
export const epleyMaximum: MaximumEquation = (load, reps) => load * (1 + reps / 30);

/** Brzycki 1993, J Phys Educ Recreat Dance 64(1):88-90, in the form 36 / (37 − r). Up to 10 reps; has no value from 37. */
export const brzyckiMaximum: MaximumEquation = (load, reps) => (load * 36) / (37 - reps);

/** Lander 1985, NSCA J 6(6):60-61. 2 to 10 reps. */
export const landerMaximum: MaximumEquation = (load, reps) => (100 * load) / (101.3 - 2.67123 * reps);

/** Lombardi 1989. Up to about 10 reps. */
export const lombardiMaximum: MaximumEquation = (load, reps) => load * reps ** 0.1;

/** Mayhew et al. 1992, J Appl Sport Sci Res 6(4):200-206. Bench press, up to 15 or 20 reps. */
export const mayhewMaximum: MaximumEquation = (load, reps) => (100 * load) / (52.2 + 41.9 * Math.exp(-0.055 * reps));

/** O'Conner et al. 1989. Up to 10 reps. */
export const oConnerMaximum: MaximumEquation = (load, reps) => load * (1 + 0.025 * reps);

/** Wathan 1994, in Baechle, Essentials of Strength Training and Conditioning, 435-439. Up to 10 reps. */
export const wathanMaximum: MaximumEquation = (load, reps) => (100 * load) / (48.8 + 53.8 * Math.exp(-0.075 * reps));

/** The maximum an equation estimates from a set; a single is its own maximum. */
export function estimateMaximum(equation: MaximumEquation, load: number, reps: number): number {
  return reps === 1 ? load : equation(load, reps);
}

/** Two published tables that agree up to 10 reps and must not be mixed beyond. */
export type LoadTable = 'handbook' | 'web chart';

/** Per cent of one repetition maximum, for 1 to 10 reps in both tables. */
const SHARED_PERCENT = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75];

/** Handbook: Baechle & Earle, Essentials of Strength Training and Conditioning. The web chart has 12 reps only. */
const BEYOND_TEN: Readonly<Record<LoadTable, Readonly<Record<number, number>>>> = {
  handbook: { 11: 70, 12: 67, 15: 65 },
  'web chart': { 12: 70 },
};

/** Per cent of one repetition maximum that goes with so many reps; `null` where the table has no such row. */
export function percentForReps(reps: number, table: LoadTable): number | null {
  return SHARED_PERCENT[reps - 1] ?? BEYOND_TEN[table][reps] ?? null;
}

/** One equation's answer, for showing beside a test. */
export interface ShownMaximum {
  readonly equation: string;
  /** To the nearest 100 g. */
  readonly grams: number;
}

/** In order of name; up to how many reps each was published for. */
const PUBLISHED: readonly (readonly [string, MaximumEquation, number])[] = [
  ['Brzycki', brzyckiMaximum, 10],
  ['Epley', epleyMaximum, 10],
  ['Lander', landerMaximum, 10],
  ['Lombardi', lombardiMaximum, 10],
  ['Mayhew', mayhewMaximum, 15],
  ['O’Conner', oConnerMaximum, 10],
  ['Wathan', wathanMaximum, 10],
];

/** What each equation makes of a set, where it was published for so many reps; `reps` to failure, in whole and part reps. */
export function listMaxima(grams: number, reps: number): readonly ShownMaximum[] {
  return PUBLISHED.filter(([, , most]) => reps >= 1 && reps <= most).map(([equation, maximum]) => {
    const single = estimateMaximum(maximum, grams, reps);
    return { equation, grams: Math.floor(single / 100 + 0.5) * 100 };
  });
}
