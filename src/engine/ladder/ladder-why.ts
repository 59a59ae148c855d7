/** Reasons of the ladder: which rule, about which rung, with which figures. No words; they are made outside the engine. */
import type { LadderInput, Rung } from '../../model/ladder.js';
import type { Audience, Reason, ReasonInput, Rule } from '../../model/reason.js';
import { reasonOf } from '../reason-of.js';

/** `at` is the rung spoken of. */
export function rungReason(
  rule: Rule,
  audience: Audience,
  input: LadderInput,
  at: number,
  more: readonly ReasonInput[] = [],
): Reason {
  const rung = input.rungs[at];
  const about = rung === undefined ? [] : rungInputs(rung);
  return reasonOf(rule, audience, [
    ...about,
    { name: 'rung', value: at + 1, unit: '' },
    { name: 'of', value: input.rungs.length, unit: '' },
    ...more,
  ]);
}

function rungInputs({ exercise, load, dose, deadStop }: Rung): readonly ReasonInput[] {
  return [
    { name: 'exercise', value: exercise, unit: '' },
    ...(load === null ? [] : [loadInput(load)]),
    ...doseInputs(dose),
    ...(deadStop ? [{ name: 'from', value: 'a dead stop', unit: '' }] : []),
  ];
}

const loadInput = (load: NonNullable<Rung['load']>): ReasonInput =>
  'band' in load ? { name: 'load', value: load.label, unit: '' } : { name: 'load', value: load.grams, unit: 'g' };

function doseInputs(dose: Rung['dose']): readonly ReasonInput[] {
  switch (dose.kind) {
    case 'reps':
      return [{ name: 'reps', value: dose.reps, unit: 'reps' }];
    case 'seconds':
      return [{ name: 'seconds', value: dose.seconds, unit: 's' }];
    case 'metres':
      return [{ name: 'metres', value: dose.metres, unit: 'm' }];
    case 'every':
      return [
        { name: 'reps', value: dose.reps, unit: 'reps' },
        { name: 'every', value: dose.everySeconds, unit: 's' },
        { name: 'minutes', value: dose.minutes, unit: 'minutes' },
      ];
    case 'main-next':
      return [
        { name: 'reps', value: dose.main, unit: 'reps' },
        { name: 'next up', value: dose.next, unit: 'reps' },
      ];
    case 'steps':
      return [{ name: 'steps', value: dose.reps.join('-'), unit: '' }];
    case 'round':
      return [];
  }
}
