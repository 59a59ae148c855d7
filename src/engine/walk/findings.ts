/** What a whole walk tells the coach; each telling is a rule of its own. */
import type { WalkFinding, WalkStep } from '../walk-step.js';
import type { Situation } from './situation.js';
import type { SortedRules } from './sorted-rules.js';
import type { Trail } from './trail.js';

export function findingsOf(trail: Trail, rules: SortedRules): readonly WalkFinding[] {
  const findings: WalkFinding[] = [];
  for (const telling of rules.tellings) {
    const finding = telling.tell(trail);
    if (finding !== null) findings.push(finding);
  }
  return findings;
}

export interface Stuck {
  readonly at: Situation;
  readonly step: WalkStep;
}

/** Work occurrences that had earned a step twice, were not held or kept from every gate, and stayed without even a trial that week. */
export function stuckIn(trail: Trail): readonly Stuck[] {
  const stuck: Stuck[] = [];
  trail.steps.forEach((step, index) => {
    const at = trail.situations[index];
    if (at === undefined || step.easy || at.occurrence.held !== undefined || at.earned < 2) return;
    if (!at.ground.values.gates) return;
    if (at.gate === 'open' && at.tried?.week === step.week) return;
    if ((step.rule === 'stay' || step.rule === 'start') && step.trial === undefined) stuck.push({ at, step });
  });
  return stuck;
}

/** Weeks of some occurrences, each once. */
export function weeksOf(occurrences: readonly Stuck[]): readonly number[] {
  return [...new Set(occurrences.map(({ step }) => step.week))];
}
