/** What is told of a version that the row was not written for: begun with because it was tested, its dose, its effort. */
import type { ReasonInput, Rule } from '../../model/reason.js';
import { BEGIN_LIGHTER } from '../rules/begin-lighter.js';
import { BEGIN_TESTED } from '../rules/begin-tested.js';
import { DOSE_OF_VERSION } from '../rules/dose-of-version.js';
import { EFFORT_OF_VERSION } from '../rules/effort-of-version.js';
import { SIGNAL_WORK } from '../rules/signal-work.js';
import type { FittedRow } from './fit-rows.js';

const words = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });

const byMarks = (marked = false): readonly ReasonInput[] => (marked ? [words('by', 'marks')] : []);

export function tellRefit({
  choice: { chosen, untested, tooHeavy, marked, seen },
  refitted: { dose, effort, signal },
  sets,
}: Pick<FittedRow, 'choice' | 'refitted' | 'sets'>): readonly (readonly [Rule, readonly ReasonInput[]])[] {
  const exercise = words('exercise', chosen?.exercise.id ?? '');
  return [
    ...(untested === undefined ? [] : [[BEGIN_TESTED, [exercise, words('programme', untested.exercise.id)]] as const]),
    ...(tooHeavy === undefined
      ? []
      : [[BEGIN_LIGHTER, [exercise, words('programme', tooHeavy.exercise.id), ...byMarks(marked)]] as const]),
    ...(seen === undefined ? [] : [[seen.rule, [exercise, words('programme', seen.own.exercise.id)]] as const]),
    ...(dose === null
      ? []
      : [[DOSE_OF_VERSION, [exercise, words('dose', dose), { name: 'sets', value: sets, unit: 'sets' }]] as const]),
    ...(signal === null ? [] : [[SIGNAL_WORK, [exercise, { name: 'reps', value: signal, unit: 'reps' }]] as const]),
    ...(effort === null ? [] : [[EFFORT_OF_VERSION, [exercise, words('effort', effort)]] as const]),
  ];
}
