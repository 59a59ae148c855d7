/** Which reason of the new plan explains a change: one that the old plan did not have, what is weightiest first. */
import type { Finding, Item, Plan, PlanSession } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { RULES_OF_SCREENING } from './rules-of-screening.js';

const SCREENING: ReadonlySet<string> = new Set(RULES_OF_SCREENING.map(({ id }) => id));
const CAUTIONS: readonly string[] = ['caution-met', 'caution-in-block', 'floor-cautioned', 'gain-cautioned'];

/** It is there so that nobody is hurt. */
export const isOfSafety = (rule: string): boolean =>
  rule.startsWith('pain-') || rule === 'seen-pain' || CAUTIONS.includes(rule) || SCREENING.has(rule);

/** Rules of the walk, and that another version was chosen, say how, seldom why: they explain only where nothing else does. */
const RANKS: readonly ((rule: string) => boolean)[] = [
  (rule) => rule.startsWith('pain-') || rule === 'seen-pain',
  isOfSafety,
  (rule) => rule.startsWith('seen-'),
  // What was known is what a set was; what came of it explains more.
  (rule) => rule.startsWith('done-') && !['done-median', 'done-unsaid', 'done-days', 'done-greatest'].includes(rule),
  (rule) => rule.startsWith('break-') || rule.startsWith('return-'),
  (rule) => rule.startsWith('done-'),
  (rule) => !rule.startsWith('walk-') && !rule.startsWith('ladder-') && rule !== 'version-chosen',
];

const rankOf = (rule: string): number => {
  const rank = RANKS.findIndex((belongs) => belongs(rule));
  return rank === -1 ? RANKS.length : rank;
};

const sameReason = (a: Reason, b: Reason): boolean =>
  a.rule === b.rule && a.audience === b.audience && JSON.stringify(a.inputs) === JSON.stringify(b.inputs);

/** One pair of items, as the two plans have them; either may be missing. */
export interface Pair {
  readonly before: Item | null;
  readonly after: Item | null;
}

/** The weightiest, of several alike the earliest; what is said to the coach before what is said to the client. */
const weightiest = (reasons: readonly Reason[]): Reason | undefined =>
  [...reasons].sort(
    (a, b) => rankOf(a.rule) - rankOf(b.rule) || Number(a.audience === 'client') - Number(b.audience === 'client'),
  )[0];

/** With these an exercise stays, or its load is known: they never say why another is done. */
const STAYS: readonly string[] = [
  'caution-met',
  'floor-cautioned',
  'gain-cautioned',
  'pain-gentle',
  'done-days',
  'done-greatest',
  'done-median',
  'done-side',
  'done-unsaid',
];

/** Of the items in which something is otherwise, in order. `another`: it is another exercise that is done. */
export function explaining(pairs: readonly Pair[], another = false): Reason | undefined {
  const told = ({ after }: Pair): readonly Reason[] =>
    (after?.reasons ?? []).filter(({ rule }) => !another || !STAYS.includes(rule));
  const fresh = pairs.flatMap((pair) =>
    told(pair).filter((reason) => !(pair.before?.reasons ?? []).some((old) => sameReason(old, reason))),
  );
  return weightiest(fresh) ?? weightiest(pairs.flatMap(told));
}

/** Why a session leaves out sets or all of a row, where it did not before. */
export function newTrims(before: PlanSession, after: PlanSession, row: string): readonly Reason[] {
  const then = before.trimmed.filter((trim) => trim.row === row);
  return after.trimmed
    .filter((trim) => trim.row === row && !then.some(({ reason }) => sameReason(reason, trim.reason)))
    .map(({ reason }) => reason);
}

const isNew = (finding: Finding, before: Plan): boolean =>
  !before.findings.some(
    (old) => old.row === finding.row && old.session === finding.session && sameReason(old.reason, finding.reason),
  );

/** A finding of the new plan about this row alone, which the old one did not have. */
export function newFindingOf(before: Plan, after: Plan, session: string, row: string): Reason | undefined {
  const own = after.findings.filter((one) => one.row === row && (one.session ?? session) === session);
  return weightiest(own.filter((one) => isNew(one, before)).map(({ reason }) => reason));
}

/** A finding of the new plan by the beginning of its rule's name, which the old one did not have. */
export function newFinding(before: Plan, after: Plan, rules: readonly string[]): { readonly reason?: Reason } {
  const own = after.findings.filter(({ rule }) => rules.some((beginning) => rule.startsWith(beginning)));
  const reason = weightiest(own.filter((one) => isNew(one, before)).map((finding) => finding.reason));
  return reason === undefined ? {} : { reason };
}
