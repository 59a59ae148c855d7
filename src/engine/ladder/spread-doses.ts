/** Doses from the bottom of a range to its top, in steps. What the steps are is said by the rules. */
import type { RungDose } from '../../model/ladder.js';
import { invariant } from '../../model/result.js';
import { RUNG_METRES } from '../rules/rung-metres.js';
import { RUNG_MINUTES } from '../rules/rung-minutes.js';
import { RUNG_REPS } from '../rules/rung-reps.js';
import { RUNG_SECONDS } from '../rules/rung-seconds.js';
import { RUNG_SIGNAL_REPS } from '../rules/rung-signal-reps.js';
import { SIGNAL_MINUTES_FIRST } from '../rules/signal-minutes-first.js';
import { SIGNAL_REPS_FIRST } from '../rules/signal-reps-first.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

/** From `low` up in steps of `step`, and `high` last of all. */
export function spread(low: number, high: number, step: number): readonly number[] {
  const amounts: number[] = [];
  for (let amount = low; amount < high; amount += step) amounts.push(amount);
  return [...amounts, high];
}

/** A part of a whole number, rounded up, at least 1. */
export const partOf = (whole: number, share: number): number => Math.max(1, Math.ceil((whole * share) / 1000));

export const stageOf = (doses: readonly RungDose[], known = 0): DosesOfStage => ({
  doses: doses.map((dose) => ({ dose, deadStop: false })),
  known,
});

/** No set above `most`, where there is a most. */
export function spreadReps({ dose, inForce }: Asked, most = Number.POSITIVE_INFINITY): readonly RungDose[] {
  invariant(dose.kind === 'sets', 'reps are spread of a dose in reps');
  const [low, high] = [Math.min(dose.reps.min, most), Math.min(dose.reps.max, most)];
  return spread(low, high, inForce(RUNG_REPS)).map((reps) => ({ kind: 'reps', reps }));
}

export function spreadSeconds({ dose, inForce }: Asked, most = Number.POSITIVE_INFINITY): readonly RungDose[] {
  invariant(dose.kind === 'timed', 'seconds are spread of a dose in seconds');
  const [low, high] = [Math.min(dose.seconds.min, most), Math.min(dose.seconds.max, most)];
  return spread(low, high, inForce(RUNG_SECONDS)).map((seconds) => ({ kind: 'seconds', seconds }));
}

export function spreadMetres({ dose, inForce }: Asked): readonly RungDose[] {
  invariant(dose.kind === 'distance', 'metres are spread of a dose in metres');
  return spread(dose.metres.min, dose.metres.max, inForce(RUNG_METRES)).map((metres) => ({ kind: 'metres', metres }));
}

/**
 * By the signal: first more minutes, with a part of the reps; then, in the programme's minutes, more reps at every
 * signal. Who knows the movement begins with all the minutes.
 */
export function spreadSignals({ dose, inForce }: Asked, most = Number.POSITIVE_INFINITY): DosesOfStage {
  invariant(dose.kind === 'every', 'signals are spread of a dose by the signal');
  const reps = Math.min(dose.reps, most);
  const first = partOf(reps, inForce(SIGNAL_REPS_FIRST));
  const shortest = partOf(dose.minutes, inForce(SIGNAL_MINUTES_FIRST));
  const at = (count: number, minutes: number): RungDose => {
    return { kind: 'every', reps: count, everySeconds: dose.everySeconds, minutes };
  };
  const minutes = spread(shortest, dose.minutes, inForce(RUNG_MINUTES)).map((many) => at(first, many));
  const denser = spread(first, reps, inForce(RUNG_SIGNAL_REPS)).slice(1);
  return stageOf([...minutes, ...denser.map((count) => at(count, dose.minutes))], minutes.length - 1);
}
