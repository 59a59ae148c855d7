/** How many of the reps at normal tempo are left at a slower one, and the way back. */
import type { TempoStep } from '../../model/programme.js';
import type { PerMille, Tenths } from '../../model/quantity.js';
import type { Rulebook } from '../rulebook.js';
import { TEMPO_SLOW_LOWERING } from '../rules/tempo-slow-lowering.js';
import { TEMPO_SLOW_WITH_A_PAUSE } from '../rules/tempo-slow-with-a-pause.js';

export function tempoFactor(step: TempoStep, rules: Rulebook): PerMille {
  switch (step) {
    case 'normal':
      return 1000;
    case 'slow lowering':
      return rules.valueOf(TEMPO_SLOW_LOWERING);
    case 'slow with a pause':
      return rules.valueOf(TEMPO_SLOW_WITH_A_PAUSE);
  }
}

/** Reps to failure at normal tempo that go with so many at a slower one: the fewest, rounded down. */
export const normalReps = (reps: Tenths, factor: PerMille): Tenths => Math.floor((reps * 1000) / factor);
