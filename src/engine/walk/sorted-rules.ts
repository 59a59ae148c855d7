/** The rules a walk goes by, sorted once by what they do, so that the walk itself never searches. */
import type { StrandInput } from '../../model/strand.js';
import { weakTrial } from '../rules/walk-weak-trial.js';
import type { Habits, Values } from './situation.js';
import type { Earning, Fall, Guard, Limit, Preference, RuleOfWalk, StepOfWalk, Telling } from './walk-rule.js';

export interface StepWithGuards {
  readonly step: StepOfWalk;
  readonly guards: readonly Guard[];
}

export interface SortedRules {
  readonly has: (id: string) => boolean;
  readonly habits: Habits;
  readonly strengthSteps: readonly StepWithGuards[];
  readonly bodyweightSteps: readonly StepWithGuards[];
  readonly workLimits: readonly Limit[];
  readonly easyLimits: readonly Limit[];
  readonly falls: readonly Fall[];
  readonly preferences: readonly Preference[];
  readonly earnings: readonly Earning[];
  readonly tellings: readonly Telling[];
}

export function sortRules(rules: readonly RuleOfWalk[]): SortedRules {
  const ids = new Set<string>(rules.map((rule) => rule.row.id));
  const steps: StepWithGuards[] = [];
  const workLimits: Limit[] = [];
  const easyLimits: Limit[] = [];
  const falls: Fall[] = [];
  const preferences: Preference[] = [];
  const earnings: Earning[] = [];
  const tellings: Telling[] = [];
  for (const rule of rules) {
    if (rule.kind === 'step') steps.push({ step: rule, guards: rule.guards.filter((guard) => ids.has(guard.row.id)) });
    if (rule.kind === 'limit' && rule.weeks !== 'easy') workLimits.push(rule);
    if (rule.kind === 'limit' && rule.weeks !== 'work') easyLimits.push(rule);
    if (rule.kind === 'fall') falls.push(rule);
    if (rule.kind === 'preference') preferences.push(rule);
    if (rule.kind === 'earning') earnings.push(rule);
    if (rule.kind === 'telling') tellings.push(rule);
  }
  const isSlower = (entry: StepWithGuards): boolean => entry.step.named === 'slower';
  return {
    has: (id) => ids.has(id),
    habits: habitsOf(ids),
    strengthSteps: steps,
    bodyweightSteps: ids.has('walk-bodyweight-version-first')
      ? [...steps.filter((entry) => !isSlower(entry)), ...steps.filter(isSlower)]
      : steps,
    workLimits,
    easyLimits,
    falls,
    preferences,
    earnings,
    tellings,
  };
}

function habitsOf(rules: ReadonlySet<string>): Habits {
  return {
    volumeOneRep: rules.has('walk-volume-one-rep'),
    volumeFirstExempt: rules.has('walk-volume-first'),
    tempoCounts: rules.has('walk-tempo-factor'),
    tempoReset: rules.has('walk-tempo-reset'),
    halfReps: rules.has('walk-half-reps'),
    newIsLighter: rules.has('walk-new-is-lighter'),
    tempoBeforeLoad: rules.has('walk-normal-tempo'),
    bodyweightVersionFirst: rules.has('walk-bodyweight-version-first'),
    heldReps: rules.has('walk-held-reps'),
    floor: rules.has('walk-floor'),
    fewest: rules.has('walk-fewest'),
    earnedReset: rules.has('walk-earned-reset'),
    trialCloses: rules.has('walk-trial-closes'),
    easyWeek: rules.has('walk-easy-week'),
    easyDepth: rules.has('walk-easy-depth'),
    easyLeast: rules.has('walk-easy-least'),
  };
}

/** The values of one strand as its rules leave them. */
export function valuesOf(rules: SortedRules, input: StrandInput): Values {
  const own = input.rules;
  return {
    tolerance: rules.has('walk-tolerance') ? own.tolerance : 0,
    smallStep: rules.has('walk-small-step-size') ? own.smallStep : 0,
    trialMargin: own.trialMargin,
    weakTrial: rules.has('walk-weak-trial') ? weakTrial.row.value : Number.MAX_SAFE_INTEGER,
    gates: input.gates !== false || !rules.has('walk-gates-allowed'),
    volume: rules.has('walk-volume-share') ? own.volume : 0,
    top: rules.has('walk-range') ? input.top : Number.MAX_SAFE_INTEGER,
  };
}
