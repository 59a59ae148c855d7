/**
 * The walk: one strand, occurrence by occurrence, with one right next step each time. Decides version, load, tempo and
 * reps; sets, asked reserve, floors and minutes are decided before it. What each rule decides stands with the rule.
 */
import type { StrandInput } from '../model/strand.js';
import { rulesOfTheWalk } from './rules-of-the-walk.js';
import { findingsOf } from './walk/findings.js';
import { layGround } from './walk/ground.js';
import { type SortedRules, sortRules } from './walk/sorted-rules.js';
import type { Trail } from './walk/trail.js';
import { beginWalk, walkOn } from './walk/walk-on.js';
import type { RuleOfWalk } from './walk/walk-rule.js';
import type { WalkResult, WalkStep } from './walk-step.js';

const ALL = sortRules(rulesOfTheWalk);

/** `rules` is all of them, or fewer to see what one of them does. */
export function planStrand(input: StrandInput, rules: readonly RuleOfWalk[] = rulesOfTheWalk): WalkResult {
  const sorted = rules === rulesOfTheWalk ? ALL : sortRules(rules);
  const ground = layGround(input, sorted);
  if (ground === null) return { kind: 'feeler' };
  const begun = beginWalk(ground);
  const main = walkOn(begun, 0, sorted, false);
  if (main.kind === 'impossible') return main;
  const { gated } = main;
  if (gated === null) return finished(main, sorted);
  const barred = walkOn(gated.before, gated.index, sorted, true);
  if (barred.kind === 'impossible') return barred;
  return finished({ ...main, steps: withOtherwise(main.steps, barred.steps, gated.index) }, sorted);
}

function finished(trail: Trail, rules: SortedRules): WalkResult {
  return { kind: 'walked', steps: trail.steps, findings: findingsOf(trail, rules) };
}

/** From the gate on, each step carries what to do if the gate did not open. */
function withOtherwise(steps: readonly WalkStep[], barred: readonly WalkStep[], from: number): readonly WalkStep[] {
  return steps.map((step, index) => {
    const other = barred[index - from];
    if (other === undefined) return step;
    const { option, reps, reserve, sets } = other;
    return { ...step, otherwise: { option, reps, reserve, sets } };
  });
}
