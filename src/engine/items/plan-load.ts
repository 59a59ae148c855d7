/** A load as the plan writes it. */
import type { MakeableLoad } from '../../model/kit.js';
import type { PlanLoad } from '../../model/plan.js';

export function planLoad({ grams, mode, pieces, label }: MakeableLoad): PlanLoad {
  return { kg: grams / 1000, grams, mode, pieces: pieces.map(({ id, grams: mass }) => ({ id, grams: mass })), label };
}
