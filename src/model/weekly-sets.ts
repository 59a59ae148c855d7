/** Working sets of a block, counted by week: what the audit reads, and what the coach's table shows. */
import type { Pattern } from './exercise.js';
import type { Tenths } from './quantity.js';

/** The major muscle groups, as the Physical Activity Guidelines for Americans (2nd edition, 2018) name them. */
export const MUSCLE_GROUPS = ['legs', 'hips', 'back', 'abdomen', 'chest', 'shoulders', 'arms'] as const;
export type MuscleGroup = (typeof MUSCLE_GROUPS)[number];

/** Tenths of a set, one figure for each week of the block. */
export type SetsByWeek = readonly Tenths[];

export interface MuscleSets {
  /** Its anatomical name. */
  readonly muscle: string;
  readonly group: MuscleGroup;
  readonly weeks: SetsByWeek;
}

export interface WeeklySets {
  /** The weeks' numbers, in order. */
  readonly weeks: readonly number[];
  /** A set counts once for a group, by the muscle of it that works most. Every group, in the order above. */
  readonly groups: readonly { readonly group: MuscleGroup; readonly weeks: SetsByWeek }[];
  /** Those that work at all, by group and then in the order of the table of muscles. */
  readonly muscles: readonly MuscleSets[];
  /** Those that are worked, in the order of `PATTERNS`. */
  readonly patterns: readonly { readonly pattern: Pattern; readonly weeks: SetsByWeek }[];
}
