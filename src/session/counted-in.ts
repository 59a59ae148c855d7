/** What a timed measure of a plan finds: reps counted in its time, or the time itself. */
import { CHAIR_STAND_SECONDS } from '../engine/rules/chair-stand-seconds.js';
import type { ClientItem } from '../model/client-plan.js';
import type { Item } from '../model/plan.js';

export const countedIn = ({ reasons }: Pick<Item, 'reasons'>): ClientItem['counts'] =>
  reasons.some(({ rule }) => rule === CHAIR_STAND_SECONDS.id) ? 'reps' : undefined;
