/** From the first work week to the last nothing rose: no reps, no load, no tempo, no version, no trial. */
import type { Telling } from '../walk/walk-rule.js';
import { reasonAt } from '../walk/why.js';
import type { StepRule, WalkStep } from '../walk-step.js';
import { practiceRow } from './walk-row.js';

export const nothingClimbs: Telling = {
  kind: 'telling',
  row: practiceRow('nothing-climbs', 0, ''),
  tell: (trail) => {
    const work = trail.steps.filter((step) => !step.easy);
    const [first] = work;
    const at = trail.situations[0];
    if (first === undefined || at === undefined || work.length < 2) return null;
    if (work.some((step, index) => climbs(step, work[index - 1]))) return null;
    const reason = reasonAt(at, nothingClimbs.row, at.place, 'coach', [
      { name: 'reps', value: first.reps, unit: 'reps' },
      { name: 'earned', value: work[work.length - 1]?.earned ?? 0, unit: '' },
      { name: 'gain', value: at.ground.input.gain, unit: 'per-ten-thousand' },
    ]);
    return { rule: nothingClimbs.row.id, weeks: [...new Set(work.map(({ week }) => week))], reason };
  },
};

function climbs(step: WalkStep, before: WalkStep | undefined): boolean {
  if (step.trial !== undefined || RISES.has(step.rule)) return true;
  return before !== undefined && step.rule === 'stay' && step.reps > before.reps;
}

const RISES: ReadonlySet<StepRule> = new Set(['back-up', 'small-step', 'big-step', 'slower', 'harder-version']);
