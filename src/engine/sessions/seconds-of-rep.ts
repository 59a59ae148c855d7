/** How long one rep takes. */
import type { Tempo } from '../../model/exercise.js';
import type { TempoStep } from '../../model/programme.js';
import type { Seconds } from '../../model/quantity.js';
import type { Rulebook } from '../rulebook.js';
import { PAUSE_SECONDS } from '../rules/pause-seconds.js';
import { SECONDS_A_REP } from '../rules/seconds-a-rep.js';
import { SLOW_LOWERING_SECONDS } from '../rules/slow-lowering-seconds.js';

/** The tempo's own figures; a fast lift counts as one second; without figures the common length of a rep. */
export function secondsOfRep(tempo: Tempo, step: TempoStep, rules: Rulebook): Seconds {
  const slow = step !== 'normal';
  const lower = slow ? Math.max(tempo.lower, rules.valueOf(SLOW_LOWERING_SECONDS)) : tempo.lower;
  const bottom = step === 'slow with a pause' ? Math.max(tempo.bottom, rules.valueOf(PAUSE_SECONDS)) : tempo.bottom;
  const seconds = lower + bottom + (tempo.lift === 'fast' ? 1 : tempo.lift) + tempo.top;
  return seconds === 0 ? rules.valueOf(SECONDS_A_REP) : seconds;
}
