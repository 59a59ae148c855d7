/**
 * The walk: one strand, occurrence by occurrence, with one right next step each time. Decides version, load, tempo and
 * reps; sets, asked reserve, floors and minutes are decided before it. What each rule decides stands with the rule.
 */
import type { StrandInput } from '../model/strand.js';
import { rulesOfTheWalk } from './rules-of-the-walk.js';
import { findingsOf } from './walk/findings.js';
import { layGround } from './walk/ground.js';
import type { Ground } from './walk/situation.js';
import { type SortedRules, sortRules } from './walk/sorted-rules.js';
import type { Trail } from './walk/trail.js';
import { beginWalk, type Manner, walkOn } from './walk/walk-on.js';
import type { RuleOfWalk } from './walk/walk-rule.js';
import type { WalkResult, WalkStep } from './walk-step.js';

/** Every rule of the walk. */
export const ALL = sortRules(rulesOfTheWalk);

/** `rules` is all of them, or fewer to see what one of them does. */
export function planStrand(input: StrandInput, rules: readonly RuleOfWalk[] = rulesOfTheWalk): WalkResult {
  const sorted = rules === rulesOfTheWalk ? ALL : sortRules(rules);
  const ground = layGround(input, sorted);
  if (ground === null) return { kind: 'feeler' };
  const begun = beginWalk(ground);
  const main = walkOn(begun, 0, sorted, { barred: false, told: true });
  if (main.kind === 'impossible') return main;
  const { gated } = main;
  if (gated === null) return finished(main, sorted, ground);
  const barred = walkOn(gated.before, gated.index, sorted, BARRED);
  if (barred.kind === 'impossible') return barred;
  return finished({ ...main, steps: withOtherwise(main.steps, barred.steps, gated.index) }, sorted, ground);
}

const BARRED: Manner = { barred: true, told: false };

function finished(trail: Trail, rules: SortedRules, ground: Ground): WalkResult {
  return { kind: 'walked', steps: trail.steps, findings: findingsOf(trail, rules), ground };
}

/** What is done in each occurrence whether a gate opens or not, and no reasons; `null` where nothing is planned. */
export function planSurely(input: StrandInput): readonly Omit<WalkStep, 'reasons' | 'considered'>[] | null {
  const ground = layGround(input, ALL);
  if (ground === null) return null;
  const main = walkOn(beginWalk(ground), 0, ALL, { barred: false, told: false });
  if (main.kind === 'impossible') return null;
  const { gated } = main;
  if (gated === null) return main.steps;
  const barred = walkOn(gated.before, gated.index, ALL, BARRED);
  return barred.kind === 'impossible' ? null : [...main.steps.slice(0, gated.index), ...barred.steps];
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
