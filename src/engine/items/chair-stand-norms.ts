/**
 * Stands in 30 seconds of the middle half of people, by age: Rikli and Jones 1999, J Aging Phys Act 7(2):162-181, 25th
 * to 75th percentile, n = 7,183. Which of the two columns a client belongs to is not asked.
 */
import type { Range } from '../../model/quantity.js';

export interface Norm {
  /** From this age, up to four years more. */
  readonly from: number;
  readonly women: Range;
  readonly men: Range;
}

const norm = (from: number, women: readonly [number, number], men: readonly [number, number]): Norm => ({
  from,
  women: { min: women[0], max: women[1] },
  men: { min: men[0], max: men[1] },
});

export const CHAIR_STAND_NORMS: readonly Norm[] = [
  norm(60, [12, 17], [14, 19]),
  norm(65, [11, 16], [12, 18]),
  norm(70, [10, 15], [12, 17]),
  norm(75, [10, 15], [11, 17]),
  norm(80, [9, 14], [10, 15]),
  norm(85, [8, 13], [8, 14]),
  norm(90, [4, 11], [7, 12]),
];

/** `null` outside the ages printed. */
export const normAt = (age: number): Norm | null =>
  CHAIR_STAND_NORMS.find(({ from }) => age >= from && age < from + 5) ?? null;
