/** A load of a rung as the plan writes it: in kilograms, or a band by its step. */
import type { RungLoad } from '../../model/ladder.js';
import type { PlanLoad } from '../../model/plan.js';
import { planLoad } from '../items/plan-load.js';

export function planRungLoad(load: RungLoad): PlanLoad {
  if (!('band' in load)) return planLoad(load);
  const { band, step, mode, pieces, label } = load;
  return { band, step, mode, pieces, label };
}

/** Nothing for the body alone. */
export const loadPart = (load: RungLoad | null): { readonly load?: PlanLoad } =>
  load === null ? {} : { load: planRungLoad(load) };
