/** The load held cannot be done for the bottom of the range with the asked reserve, and nothing lighter is nearer. */
import { weeksOf } from '../walk/findings.js';
import type { Situation } from '../walk/situation.js';
import type { Trail } from '../walk/trail.js';
import type { Telling } from '../walk/walk-rule.js';
import { reasonAt } from '../walk/why.js';
import type { WalkStep } from '../walk-step.js';
import { practiceRow } from './walk-row.js';

export const rangeTooHigh: Telling = {
  kind: 'telling',
  row: practiceRow('range-too-high', 0, 'reps'),
  tell: (trail) => {
    const short = shortIn(trail);
    const last = short[short.length - 1];
    if (last === undefined) return null;
    const { at, step } = last;
    const predicted = step.reserve + 10 * step.reps;
    const reason = reasonAt(at, rangeTooHigh.row, at.place, 'coach', [
      { name: 'bottom', value: at.ground.input.bottom, unit: 'reps' },
      { name: 'predicted', value: predicted, unit: 'tenths' },
      { name: 'asked', value: at.occurrence.asked, unit: 'tenths' },
      { name: 'reach', value: Math.max(1, Math.floor((predicted - at.occurrence.asked) / 10)), unit: 'reps' },
    ]);
    return { rule: rangeTooHigh.row.id, weeks: weeksOf(short), reason };
  },
};

/** Work occurrences at the load they came with, below the range or short of the asked reserve; none that is held. */
function shortIn(trail: Trail): readonly { readonly at: Situation; readonly step: WalkStep }[] {
  const short: { readonly at: Situation; readonly step: WalkStep }[] = [];
  trail.steps.forEach((step, index) => {
    const at = trail.situations[index];
    if (at === undefined || step.easy || at.occurrence.held !== undefined) return;
    const stayed = step.rule === 'start' || step.rule === 'stay';
    if (step.rule === 'fewer-reps' || (stayed && step.relaxed.includes('walk-asked'))) short.push({ at, step });
  });
  return short;
}
