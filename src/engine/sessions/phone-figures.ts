/** Figures that the training screens go by and no plan: rests, holds and days away. */
import type { ClientPlan } from '../../model/client-plan.js';
import type { Rule } from '../../model/reason.js';
import { AWAY_SAID } from '../rules/away-said.js';
import { INTO_PLACE } from '../rules/into-place.js';
import { REST_LONGER } from '../rules/rest-longer.js';

export const phoneFigures = (inForce: (rule: Rule) => number): ClientPlan['phone'] => ({
  restLonger: inForce(REST_LONGER),
  intoPlace: inForce(INTO_PLACE),
  awaySaid: inForce(AWAY_SAID),
});
