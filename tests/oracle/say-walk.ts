/** A walk in one line, in the notation of the check values: `9, 9 · 9 + trial 4 @ 28 · gate 5 @ 28 · e 4`. */
import type { Option, StrandJson } from './strand-json.js';

export interface Sayable {
  readonly easy: boolean;
  readonly option: Option;
  readonly reps: number;
  readonly trial?: { readonly option: Option; readonly reps: number };
  readonly gate?: unknown;
}

const TEMPO_NAMES = ['', 'slow ', 'paused '];

/** Every occurrence by itself: `gate slow 9 @ 20`. */
function sayStep(strand: StrandJson, step: Sayable): string {
  const start = strand.start;
  const other = start !== null && step.option.version !== start.version;
  const name = other ? `${strand.versions[step.option.version]?.exercise ?? '?'} ` : '';
  const trialOf = step.trial?.option;
  const trialName =
    trialOf !== undefined && trialOf.version !== step.option.version
      ? ` of ${strand.versions[trialOf.version]?.exercise ?? '?'}`
      : '';
  return [
    step.easy ? 'e ' : '',
    step.gate === undefined ? '' : 'gate ',
    TEMPO_NAMES[step.option.tempo] ?? '? ',
    name,
    String(step.reps),
    step.option.load === 0 ? '' : ` @ ${step.option.load / 1000}`,
    step.trial === undefined ? '' : ` + trial ${step.trial.reps}${trialName} @ ${step.trial.option.load / 1000}`,
  ].join('');
}

export const sayWalk = (strand: StrandJson, steps: readonly Sayable[]): string =>
  steps.map((step) => sayStep(strand, step)).join(' · ');
