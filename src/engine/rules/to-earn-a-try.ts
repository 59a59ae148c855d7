/** Earned twice, a heavier load is there, and the range is too low to earn it: how far the range must reach. */
import { repsThatEarn } from '../capacity.js';
import { stuckIn, weeksOf } from '../walk/findings.js';
import { type Place, resistedAt, type Situation } from '../walk/situation.js';
import type { Telling } from '../walk/walk-rule.js';
import { gramsAt, reasonAt } from '../walk/why.js';
import { practiceRow } from './walk-row.js';

export const toEarnATry: Telling = {
  kind: 'telling',
  row: practiceRow('to-earn-a-try', 0, 'reps'),
  tell: (trail) => {
    const stuck = stuckIn(trail).filter(({ at, step }) => {
      const refused = step.considered.find(({ option }) => isNextLoad(at, option))?.refusedBy;
      return refused === 'walk-bottom-and-floor' || refused === 'walk-weak-no-rise';
    });
    const last = stuck[stuck.length - 1];
    if (last === undefined) return null;
    const { at } = last;
    const next = { ...at.place, load: at.place.load + 1 };
    const reason = reasonAt(at, toEarnATry.row, next, 'coach', [
      { name: 'held', value: gramsAt(at.ground, at.place), unit: 'g' },
      { name: 'top', value: at.ground.input.top, unit: 'reps' },
      { name: 'reach', value: reachFor(at, next), unit: 'reps' },
    ]);
    return { rule: toEarnATry.row.id, weeks: weeksOf(stuck), reason };
  },
};

function isNextLoad(at: Situation, option: { readonly version: number; readonly load: number }): boolean {
  const next = { ...at.place, load: at.place.load + 1 };
  return option.version === at.place.version && option.load === gramsAt(at.ground, next);
}

/** The top at which, with the asked reserve left, a trial would be offered; a rise, where there are no trials. */
function reachFor(at: Situation, next: Place): number {
  const { ground, occurrence } = at;
  const tries = ground.input.trials && occurrence.sets >= 2;
  const needed = occurrence.floor + (tries ? ground.values.trialMargin : 10 * ground.input.bottom);
  const toFailure = repsThatEarn(ground.equation, resistedAt(ground, at.place), resistedAt(ground, next), needed);
  return Math.max(ground.input.top + 1, Math.ceil((toFailure - occurrence.asked) / 10));
}
