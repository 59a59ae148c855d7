/** The rules a walk goes by, sorted once by what they do, so that the walk itself never searches. */
import type { StrandInput } from '../../model/strand.js';
import type { Values } from './situation.js';
import type { Earning, Fall, Guard, Limit, Preference, RuleOfWalk, StepOfWalk } from './walk-rule.js';

export interface StepWithGuards {
  readonly step: StepOfWalk;
  readonly guards: readonly Guard[];
}

export interface SortedRules {
  readonly has: (id: string) => boolean;
  readonly strengthSteps: readonly StepWithGuards[];
  readonly bodyweightSteps: readonly StepWithGuards[];
  readonly workLimits: readonly Limit[];
  readonly easyLimits: readonly Limit[];
  readonly falls: readonly Fall[];
  readonly preferences: readonly Preference[];
  readonly earnings: readonly Earning[];
}

export function sortRules(rules: readonly RuleOfWalk[]): SortedRules {
  const ids = new Set<string>(rules.map((rule) => rule.row.id));
  const steps: StepWithGuards[] = [];
  const workLimits: Limit[] = [];
  const easyLimits: Limit[] = [];
  const falls: Fall[] = [];
  const preferences: Preference[] = [];
  const earnings: Earning[] = [];
  for (const rule of rules) {
    if (rule.kind === 'step') steps.push({ step: rule, guards: rule.guards.filter((guard) => ids.has(guard.row.id)) });
    if (rule.kind === 'limit' && rule.weeks !== 'easy') workLimits.push(rule);
    if (rule.kind === 'limit' && rule.weeks !== 'work') easyLimits.push(rule);
    if (rule.kind === 'fall') falls.push(rule);
    if (rule.kind === 'preference') preferences.push(rule);
    if (rule.kind === 'earning') earnings.push(rule);
  }
  const isSlower = (entry: StepWithGuards): boolean => entry.step.named === 'slower';
  return {
    has: (id) => ids.has(id),
    strengthSteps: steps,
    bodyweightSteps: ids.has('walk-bodyweight-version-first')
      ? [...steps.filter((entry) => !isSlower(entry)), ...steps.filter(isSlower)]
      : steps,
    workLimits,
    easyLimits,
    falls,
    preferences,
    earnings,
  };
}

/** The values of one strand as its rules leave them. */
export function valuesOf(book: SortedRules, input: StrandInput): Values {
  const { rules } = input;
  return {
    tolerance: book.has('walk-tolerance') ? rules.tolerance : 0,
    smallStep: book.has('walk-small-step-size') ? rules.smallStep : 0,
    trialMargin: rules.trialMargin,
    volume: book.has('walk-volume-share') ? rules.volume : 0,
    volumeOneRep: book.has('walk-volume-one-rep'),
    volumeFirstExempt: book.has('walk-volume-first'),
    tempoCounts: book.has('walk-tempo-factor'),
    tempoReset: book.has('walk-tempo-reset'),
    halfReps: book.has('walk-half-reps'),
    newIsLighter: book.has('walk-new-is-lighter'),
    bodyweightVersionFirst: book.has('walk-bodyweight-version-first'),
    top: book.has('walk-range') ? input.top : Number.MAX_SAFE_INTEGER,
  };
}
