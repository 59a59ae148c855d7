/** The rung of a new ladder that goes on from the one marked last. */
import type { Rung, RungDose } from '../../model/ladder.js';
import type { LastRung } from '../history/recall.js';

export interface BeginsAt {
  /** Index among the rungs. */
  readonly start: number;
  readonly earned: 0 | 1 | 2;
}

/**
 * The same exercise, load and dose; else the most of that exercise and load that is no more than was done, where a set
 * is one amount. `first` where there is none, and where it begins with a lighter load.
 */
export function rungToBegin(rungs: readonly Rung[], first: number, last: LastRung | null): BeginsAt {
  if (last === null || last.lighter > 0) return { start: first, earned: 0 };
  const { rung } = last;
  const alike = (one: Rung): boolean =>
    one.exercise === rung.exercise && one.load?.label === rung.load?.label && one.deadStop === rung.deadStop;
  const same = rungs.findIndex((one) => alike(one) && JSON.stringify(one.dose) === JSON.stringify(rung.dose));
  const at = same >= 0 ? same : rungs.findLastIndex((one) => alike(one) && isWithin(one.dose, rung.dose));
  if (at < 0) return { start: rungs.some(alike) ? rungs.findIndex(alike) : first, earned: 0 };
  const stage = rungs.findIndex((one) => one.stage === rungs[at]?.stage);
  const start = Math.max(stage, at - last.lower);
  return { start, earned: same >= 0 && last.lower === 0 ? last.earned : 0 };
}

function isWithin(dose: RungDose, done: RungDose): boolean {
  const amount = amountOf(dose);
  const most = amountOf(done);
  return dose.kind === done.kind && amount !== null && most !== null && amount <= most;
}

/** `null` for signals, steps, rounds and two bells in a row. */
function amountOf(dose: RungDose): number | null {
  switch (dose.kind) {
    case 'reps':
      return dose.reps;
    case 'seconds':
      return dose.seconds;
    case 'metres':
      return dose.metres;
    default:
      return null;
  }
}
