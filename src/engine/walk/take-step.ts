/** The one right next step of a work occurrence: the first way on whose guards all permit it, and what refused the others. */
import type { Reason } from '../../model/reason.js';
import type { WalkStep } from '../walk-step.js';
import { aheadOf } from './ahead.js';
import { type Candidate, isTried, type Situation, samePlace } from './situation.js';
import type { SortedRules } from './sorted-rules.js';
import type { Guard, StepOfWalk } from './walk-rule.js';
import { optionOf, refusalReason, stepReason, triedReason } from './why.js';

export interface Taken {
  /** `null`: nothing is open, the walk stays. */
  readonly step: StepOfWalk | null;
  readonly next: Candidate | null;
  /** A plain rise to what trials have opened. */
  readonly byTrials: boolean;
  readonly considered: WalkStep['considered'];
  readonly reasons: readonly Reason[];
}

interface Refusal {
  readonly next: Candidate;
  readonly guard: Guard;
}

export const BARRED: Taken = { step: null, next: null, byTrials: false, considered: [], reasons: [] };

/** Not `told`: what was considered and why is left out. */
export function takeStep(at: Situation, rules: SortedRules, told: boolean): Taken {
  const ahead = aheadOf(at);
  const refusals: Refusal[] = [];
  const steps = at.ground.input.way === 'bodyweight' ? rules.bodyweightSteps : rules.strengthSteps;
  for (const { step, guards } of steps) {
    const next = step.next(at, ahead);
    if (next === null) continue;
    const guard = refusing(at, guards, next);
    if (guard === null) return takenTo(at, step, next, refusals, told);
    if (told) note(refusals, { next, guard });
  }
  return told ? taken(at, null, null, false, refusals) : BARRED;
}

/** What its trials have opened is no gate: nothing is left to be earned. */
function takenTo(at: Situation, way: StepOfWalk, next: Candidate, refusals: readonly Refusal[], told: boolean): Taken {
  const plain = way.outcome === 'gate' && isTried(at.ground, next);
  const step: StepOfWalk = plain ? { ...way, outcome: 'rise' } : way;
  return told ? taken(at, step, next, plain, refusals) : { ...BARRED, step, next, byTrials: plain };
}

function refusing(at: Situation, guards: readonly Guard[], next: Candidate): Guard | null {
  for (const guard of guards) if (!guard.permits(at, next)) return guard;
  return null;
}

/** Refused to be won back, since it was never lost, says nothing once another rule has refused the same place. */
function note(refusals: Refusal[], refusal: Refusal): void {
  const { next, guard } = refusal;
  const index = refusals.findIndex((each) => samePlace(each.next, next));
  if (index >= 0 && refusals[index]?.guard.row.id === 'walk-below-tested') refusals[index] = refusal;
  else if (index < 0 || refusals.every((each) => each.guard !== guard)) refusals.push(refusal);
}

function taken(
  at: Situation,
  step: StepOfWalk | null,
  next: Candidate | null,
  byTrials: boolean,
  refusals: readonly Refusal[],
): Taken {
  const considered: WalkStep['considered'][number][] = [];
  const reasons: Reason[] = [];
  if (step !== null && next !== null) {
    considered.push({ option: optionOf(at.ground, next), predicted: next.predicted });
    reasons.push(byTrials ? triedReason(at, next) : stepReason(at, step, next));
  }
  refusals.forEach((refusal, index) => {
    const { guard } = refusal;
    const isFirst = refusals.findIndex((each) => samePlace(each.next, refusal.next)) === index;
    const isOpen = step?.outcome !== 'trial' && next !== null && samePlace(next, refusal.next);
    if (isOpen) return;
    reasons.push(refusalReason(at, guard, refusal.next));
    if (!isFirst || (next !== null && samePlace(next, refusal.next))) return;
    const predicted = guard.row.id === 'walk-derived' ? 0 : refusal.next.predicted;
    considered.push({ option: optionOf(at.ground, refusal.next), predicted, refusedBy: guard.row.id });
  });
  return { step, next, byTrials, considered, reasons };
}
