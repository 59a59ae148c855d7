/** Why hands or sides do not hold the same: two unequal bells, and the stronger side's own. */
import type { PlanSet } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import { isUnequal } from '../kit/hands.js';
import { reasonOf } from '../reason-of.js';
import type { OwnBell } from '../rows/own-bell.js';
import { SIDE_GAP_OWN_BELL } from '../rules/side-gap-own-bell.js';
import { UNEQUAL_HANDS } from '../rules/unequal-hands.js';

export function reasonsOfLoad(sets: readonly PlanSet[], own: OwnBell | null): readonly Reason[] {
  const reasons: Reason[] = [];
  if (own !== null) {
    const inputs = [
      { name: 'side', value: own.side, unit: '' },
      { name: 'load', value: own.load.grams, unit: 'g' },
      { name: 'sets', value: own.sets, unit: 'sets' },
      { name: 'reserve', value: own.reserve, unit: 'tenths' },
    ];
    reasons.push(reasonOf(SIDE_GAP_OWN_BELL, 'client', inputs), reasonOf(SIDE_GAP_OWN_BELL, 'coach', inputs));
  }
  return [...reasons, ...reasonsOfHands(sets)];
}

/** Of two unequal bells both are told which hand changes: carried, swung or lifted. */
export const reasonsOfHands = (sets: readonly PlanSet[]): readonly Reason[] =>
  sets.some(({ load }) => load !== undefined && isUnequal(load))
    ? [reasonOf(UNEQUAL_HANDS, 'client', []), reasonOf(UNEQUAL_HANDS, 'coach', [])]
    : [];
