/** How many hands a load fills, and whether they hold the same. */
import type { Exercise } from '../../model/exercise.js';
import type { LoadNeed } from '../../model/kit.js';
import type { PlanLoad } from '../../model/plan.js';
import type { Grams } from '../../model/quantity.js';

/** Of one way to load an exercise; a bar or a band is not held hand by hand. */
export const handsOf = (way: LoadNeed | undefined): 0 | 1 | 2 => (way !== undefined && 'count' in way ? way.count : 0);

/** The way an exercise prefers says how its loads are counted. */
const fillsBoth = ({ facts }: Exercise): boolean => handsOf(facts.kit.load[0]) === 2;

/** Two items of unlike mass. A bar or a handle has its plates in pairs, so that two pieces are one in either hand. */
export function isUnequal({ pieces }: Pick<PlanLoad, 'pieces'>): boolean {
  const [one, two, more] = pieces;
  return one !== undefined && two !== undefined && more === undefined && one.grams !== two.grams;
}

/** What one hand holds of a load as the exercise counts it: two bells counted together are half as much in either. */
export const inOneHand = (grams: Grams, exercise: Exercise): Grams =>
  exercise.facts.holds === 'total' && fillsBoth(exercise) ? Math.ceil(grams / 2) : grams;

/** What all hands hold of it: counted per hand, twice that where the exercise fills both. */
export const inAllHands = (grams: Grams, exercise: Exercise): Grams =>
  exercise.facts.holds === 'per-hand' && fillsBoth(exercise) ? 2 * grams : grams;
