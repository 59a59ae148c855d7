/** Reasons of the walk: which rule, with which figures. No words; they are made outside the engine. */

import type { Tenths } from '../../model/quantity.js';
import type { Audience, Reason, ReasonInput, Rule } from '../../model/reason.js';
import { DONE_TRIAL } from '../rules/done-trial.js';
import type { Option } from '../walk-step.js';
import { type Candidate, type Ground, type Place, type Situation, samePlace } from './situation.js';
import type { Guard, StepOfWalk } from './walk-rule.js';

/** Measured only at the option the walk began with, before anything was gained; on poor evidence nothing is. */
export function reasonAt(
  at: Situation,
  row: Rule,
  place: Place,
  audience: Audience,
  inputs: readonly ReasonInput[],
): Reason {
  const { ground } = at;
  const measured = at.week.workWeeks === 0 && samePlace(place, ground.began);
  return {
    rule: row.id,
    says: '',
    inputs: placeInputs(ground, place, inputs),
    source: row.source,
    confidence: ground.weak ? 'weak' : measured ? 'measured' : 'estimated',
    audience,
  };
}

/** What was chosen, and from where. */
export function stepReason(at: Situation, step: StepOfWalk, next: Candidate): Reason {
  return reasonAt(at, step.row, next, 'client', [
    { name: 'held', value: gramsAt(at.ground, at.place), unit: 'g' },
    { name: 'predicted', value: next.predicted, unit: 'tenths' },
    { name: 'bottom', value: at.ground.input.bottom, unit: 'reps' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
    { name: 'earned', value: at.earned, unit: '' },
  ]);
}

/** What was tried, and in how many weeks. */
export function triedReason(at: Situation, next: Candidate): Reason {
  const { input } = at.ground;
  return reasonAt(at, DONE_TRIAL, next, 'client', [
    { name: 'held', value: gramsAt(at.ground, at.place), unit: 'g' },
    { name: 'tried', value: input.tried?.reps ?? 0, unit: 'reps' },
    { name: 'weeks', value: input.tried?.weeks ?? 0, unit: '' },
    { name: 'predicted', value: next.predicted, unit: 'tenths' },
    { name: 'bottom', value: input.bottom, unit: 'reps' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
  ]);
}

/** Why not the next one up: the rule that refuses it there. */
export function refusalReason(at: Situation, guard: Guard, next: Candidate): Reason {
  return reasonAt(at, guard.row, next, 'coach', guard.numbers(at, next));
}

export function optionOf(ground: Ground, place: Place): Option {
  return { version: place.version, load: gramsAt(ground, place), tempo: place.tempo };
}

export function gramsAt(ground: Ground, place: Place): number {
  return ground.input.versions[place.version]?.loads[place.load]?.grams ?? 0;
}

function placeInputs(ground: Ground, place: Place, more: readonly ReasonInput[]): readonly ReasonInput[] {
  const { input } = ground;
  const inputs: ReasonInput[] = [
    { name: 'exercise', value: input.versions[place.version]?.exercise ?? '', unit: '' },
    { name: 'load', value: gramsAt(ground, place), unit: 'g' },
    { name: 'tempo', value: input.tempi[place.tempo]?.step ?? 'normal', unit: '' },
  ];
  for (const each of more) inputs.push(each);
  return inputs;
}

/** Why so many reps and not one more. */
export function repsReason(at: Situation, row: Rule, place: Place, reps: number, reserve: Tenths): Reason {
  const { input } = at.ground;
  return reasonAt(at, row, place, 'client', [
    { name: 'reps', value: reps, unit: 'reps' },
    { name: 'predicted', value: reserve + 10 * reps, unit: 'tenths' },
    { name: 'reserve', value: reserve, unit: 'tenths' },
    { name: 'asked', value: at.occurrence.asked, unit: 'tenths' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
    { name: 'bottom', value: input.bottom, unit: 'reps' },
    { name: 'top', value: input.top, unit: 'reps' },
  ]);
}
