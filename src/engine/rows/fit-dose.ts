/**
 * What a version makes of a dose and an effort that the coach wrote for another exercise. What was written for the
 * exercise itself is judged with its row.
 */
import type { Dose, Effort } from '../../model/dose.js';
import type { Facts, Way } from '../../model/exercise.js';
import type { Range } from '../../model/quantity.js';
import type { Rulebook } from '../rulebook.js';
import { DOSE_OF_VERSION } from '../rules/dose-of-version.js';
import { SECONDS_A_METRE } from '../rules/seconds-a-metre.js';
import { SECONDS_A_ROUND } from '../rules/seconds-a-round.js';
import { secondsOfRep } from '../sessions/seconds-of-rep.js';
import { type Planned, plannedBy, setsOf } from './planned-by.js';

/** What of a row did not fit the version; `null` for what did. */
export interface Refitted {
  readonly dose: Dose['kind'] | null;
  readonly effort: Effort['kind'] | null;
  /** Reps of a signal where those written do not fit. */
  readonly signal: number | null;
}

/**
 * The dose as written where the version takes it; work at a signal, or with a bell and the next, only where the version
 * is of the same way of working as what it was written for. Else plain sets: of seconds for a hold or a carry, else of reps. One
 * amount becomes the other by the version's own tempo.
 */
export function doseOfVersion(facts: Facts, dose: Dose, written: Way, rules: Rulebook): Dose {
  const asDense = facts.way === written || (dose.kind !== 'every' && dose.kind !== 'main-next');
  if (asDense && plannedBy(facts, dose) !== null) return dose;
  const sets = Math.min(setsOf(dose), rules.valueOf(DOSE_OF_VERSION));
  const eachSide = 'eachSide' in dose && dose.eachSide;
  const rep = secondsOfRep(facts.tempo, 'normal', rules);
  const amount = amountOf(dose, rules);
  const inSeconds = facts.way === 'hold' || facts.way === 'carry';
  if (inSeconds) return { kind: 'timed', sets, seconds: amount.unit === 's' ? amount : times(amount, rep), eachSide };
  return { kind: 'sets', sets, reps: amount.unit === 's' ? times(amount, 1 / rep) : amount, eachSide };
}

/**
 * Reserve, RPE and part of a maximum speak of reps to failure; the talk test of breath, which a ladder goes by. The body
 * alone has one load, of which no part can be taken.
 */
export const takesEffort = ({ way }: Facts, { kind }: Effort, planned: Planned): boolean =>
  !(kind === 'percent' && way === 'bodyweight') && (kind === 'talk') === (planned === 'ladder');

interface Amount extends Range {
  readonly unit: 'reps' | 's';
}

const times = ({ min, max }: Range, factor: number): Range => ({
  min: Math.max(1, Math.floor(min * factor)),
  max: Math.max(1, Math.floor(max * factor)),
});

function amountOf(dose: Dose, rules: Rulebook): Amount {
  // Counted for other work: what is slower, or heavier, may need to be begun with fewer.
  const reps = (count: number): Amount => ({ min: Math.ceil(count / 2), max: count, unit: 'reps' });
  switch (dose.kind) {
    case 'sets':
      return { ...dose.reps, unit: 'reps' };
    case 'timed':
      return { ...dose.seconds, unit: 's' };
    case 'distance':
      return { ...times(dose.metres, rules.valueOf(SECONDS_A_METRE) / 10), unit: 's' };
    case 'every':
      return reps(dose.reps);
    case 'main-next':
      return reps(dose.main);
    case 'steps':
      return reps(Math.max(1, ...dose.reps));
    case 'rounds': {
      const seconds = rules.valueOf(SECONDS_A_ROUND);
      return { min: seconds, max: seconds, unit: 's' };
    }
  }
}
