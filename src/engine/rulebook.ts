/** The rules with the coach's own values laid over them. What each rule decides stands with the rule. */
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Rule } from '../model/reason.js';
import type { Result } from '../model/result.js';
import type { RuleBounds, RulebookEntry, RulebookRoom } from '../model/rulebook.js';
import type { RuleOverride } from '../model/studio.js';
import { WALK_VALUES } from './rows/walk-values.js';
import { RULES_OF_HISTORY } from './rules-of-history.js';
import { RULES_OF_REVIEW } from './rules-of-review.js';
import { RULES_OF_SCREENING } from './rules-of-screening.js';
import { RULES_OF_SESSIONS } from './rules-of-sessions.js';
import { RULES_OF_THE_AUDIT } from './rules-of-the-audit.js';
import { RULES_OF_ROWS, RULES_OF_THE_BLOCK } from './rules-of-the-block.js';
import { RULES_OF_THE_LADDER } from './rules-of-the-ladder.js';
import { rulesOfTheWalk } from './rules-of-the-walk.js';
import { RULES_OF_VERSIONS } from './rules-of-versions.js';

/** Every rule of the planner, the walk's included. */
const EVERY_RULE: readonly Rule[] = [...RULES_OF_THE_BLOCK, ...rulesOfTheWalk.map((rule) => rule.row)];

const IN_ORDER: readonly Rule[] = [...EVERY_RULE].sort((a, b) => compareIds(a.id, b.id));

/** Rules of the walk that stand or fall as a whole: there is no value to set. */
const FIXED: ReadonlySet<string> = new Set(
  rulesOfTheWalk
    .map((rule) => rule.row)
    .filter((row) => !WALK_VALUES.some((value) => value.id === row.id))
    .map((row) => row.id),
);

/** The rules a coach may set, in order of id. */
export const RULE_IDS: readonly string[] = EVERY_RULE.map((rule): string => rule.id)
  .filter((id) => !FIXED.has(id))
  .sort(compareIds);

export interface Rulebook {
  /** In order of id, each with its `overridden` where the coach has set one. */
  readonly rows: readonly Rule[];
  /** The value in force, in the rule's own unit. */
  readonly valueOf: (rule: Rule) => number;
}

const A_FLOOR: RuleBounds = { least: 10, most: 60 };

/** What a coach may set, where it is not what `boundsOf` says of any quantity. Floors of reserve are never 0. */
const LIMITS: ReadonlyMap<string, RuleBounds> = new Map([
  ['floor-alone', { least: 10, most: 60 }],
  ['floor-novice', { least: 10, most: 60 }],
  ['floor-older', { least: 10, most: 60 }],
  ['floor-first-weeks', { least: 10, most: 60 }],
  ['adult-from', { least: 18, most: 120 }],
  ['gain-novice', { least: 0, most: 300 }],
  ['gain-trained', { least: 0, most: 300 }],
  ['gain-cautioned', { least: 0, most: 300 }],
  ['sign-off-lapses', { least: 1, most: 366 }],
  ['same-bell', { least: 0, most: 20 }],
  ['measures-apart', { least: 0, most: 4 }],
  ['clearance-holds', { least: 1, most: 365 }],
  ['screening-holds', { least: 1, most: 366 }],
  ['clearance-warned', { least: 7, most: 42 }],
  ['floor-begins', { least: 40, most: 60 }],
  ['floor-light', { least: 50, most: 80 }],
  ['floor-moderate', { least: 40, most: 60 }],
  ['older-from', { least: 40, most: 65 }],
  ['pressure-ask-diastolic', { least: 80, most: 100 }],
  ['pressure-ask-systolic', { least: 120, most: 160 }],
  ['pressure-holds', { least: 1, most: 90 }],
  ['pressure-stop-diastolic', { least: 90, most: 110 }],
  ['pressure-stop-systolic', { least: 140, most: 180 }],
  ['fast-first', { least: 0, most: 1 }],
  ['warm-up-standing', { least: 0, most: 1 }],
  ['floor-last', { least: 0, most: 1 }],
  ['partner-apart', { least: 0, most: 1 }],
  ['circuit-bells', { least: 1, most: 4 }],
  ['circuit-apart', { least: 0, most: 2 }],
  ['queue-slides', { least: 0, most: 7 }],
  ['sessions-lost', { least: 0, most: 18 }],
  ['warm-up', { least: 5, most: 15 }],
  ['warm-up-older', { least: 5, most: 20 }],
  ['warm-up-load', { least: 0, most: 900 }],
  ['tempo-slow-lowering', { least: 100, most: 1000 }],
  ['tempo-slow-with-a-pause', { least: 100, most: 1000 }],
  ['minutes-cap', { least: 60, most: 60 }],
  ['easier-in-kit', { least: 1, most: 1 }],
  ['rpe-to-reserve', { least: 100, most: 100 }],
  ['feeler-rise', { least: 0, most: 1 }],
  ['percent-of-maximum', { least: 310, most: 310 }],
  ['lighter-bell', { least: 1, most: 3 }],
  ['next-up-bell', { least: 1, most: 1 }],
  ['main-bell', { least: 1, most: 1 }],
  ['weakest-part', { least: 1, most: 1 }],
  ['unequal-hands', { least: 1, most: 1 }],
  ['unequal-at-most', { least: 0, most: 500 }],
  ['unequal-near', { least: 0, most: 250 }],
  ['plates-a-side', { least: 1, most: 12 }],
  ['side-gap-own-bell', { least: 0, most: 10 }],
  ['clock-one-tempo', { least: 1, most: 1 }],
  ['new-movement-lighter', { least: 0, most: 3 }],
  ['start-moved', { least: 0, most: 6 }],
  ['break-floor', A_FLOOR],
  ['test-reserve', A_FLOOR],
  ['way-unlocks', { least: 0, most: 1 }],
  ['own-dose', { least: 0, most: 1 }],
  ['easier-hold', { least: 3, most: 30 }],
  ['easier-reps', { least: 1, most: 12 }],
  ['done-days', { least: 14, most: 84 }],
  ['done-unsaid', { least: 0, most: 1 }],
  ['done-earned', { least: 0, most: 2 }],
  ['done-missed', { least: 1, most: 3 }],
  ['done-easier', { least: 1, most: 4 }],
  ['done-trial', { least: 1, most: 6 }],
  ['done-greatest', { least: 0, most: 1 }],
  ['done-gap', { least: 10, most: 42 }],
  ['pain-hold-days', { least: 14, most: 56 }],
  ['review-load', { least: 7, most: 7 }],
  ['review-share', { least: 1, most: 3 }],
  ['propose-caution', { least: 1, most: 4 }],
  ['propose-look', { least: 14, most: 84 }],
  ['propose-break', { least: 0, most: 1 }],
  ['propose-next-block', { least: 0, most: 3 }],
  ['propose-repeat', { least: 0, most: 1 }],
  ['propose-test', { least: 10, most: 60 }],
  ['dead-stop-reps', { least: 1, most: 10 }],
  ['next-up-first', { least: 100, most: 1000 }],
  ['signal-minutes-first', { least: 300, most: 1000 }],
  ['signal-reps-first', { least: 300, most: 1000 }],
  ['swing-cap', { least: 1, most: 30 }],
  ['hold-most', { least: 10, most: 300 }],
  ['ceiling-arms', { least: 2000, most: 3000 }],
  ['ceiling-load', { least: 2200, most: 3500 }],
  ['audit-direct-set', { least: 1000, most: 1000 }],
  ['audit-indirect-set', { least: 0, most: 1000 }],
  ['audit-push-pull', { least: 1000, most: 4000 }],
  ['audit-squat-hinge', { least: 1000, most: 4000 }],
  ['audit-side-side', { least: 0, most: 10 }],
  ['audit-unknown-muscle', { least: 0, most: 100 }],
]);

/** What can be more or less. Any other unit counts something that is there or not. */
const QUANTITIES: ReadonlySet<string> = new Set([
  ...['s', 'tenths of a second', 'minutes', 'days', 'weeks', 'years', 'mm', 'm', 'reps', 'tenths', 'sets', 'rounds'],
  ...['per-mille', 'per-ten-thousand', 'loads', 'rungs', 'occurrences', 'rows', 'exercises', 'sessions'],
]);
const OF_SCREENING: ReadonlySet<Rule> = new Set(RULES_OF_SCREENING);

/**
 * What a coach may set: from a quarter of the rule's value to four times as much, a share never above the
 * whole, where nothing narrower is said. A
 * rule that is no quantity stands as it is, and so does one of screening or health unless a bound is said for it.
 */
function boundsOf(rule: Rule): RuleBounds {
  const said = LIMITS.get(rule.id);
  if (said !== undefined) return said;
  if (OF_SCREENING.has(rule) || !QUANTITIES.has(rule.unit)) return { least: rule.value, most: rule.value };
  if (rule.unit === 'tenths' && rule.id.startsWith('floor-')) return A_FLOOR;
  const most = rule.unit === 'per-mille' && rule.value <= 1000 ? Math.min(1000, 4 * rule.value) : 4 * rule.value;
  return { least: Math.ceil(rule.value / 4), most };
}

const BOUNDS: ReadonlyMap<string, RuleBounds> = new Map(
  EVERY_RULE.filter(({ id }) => !FIXED.has(id)).map((rule) => [rule.id, boundsOf(rule)]),
);

/**
 * Lays the coach's values over the rules. Reports `rule-not-found` and `rule-out-of-range`; both concern the
 * whole folder, and leave the rule's own value standing.
 */
export function layOverrides(overrides: readonly RuleOverride[]): Result<Rulebook> {
  const problems: Problem[] = [];
  const own = new Map<string, { readonly value: number; readonly reason: string }>();
  for (const { rule, value, reason, place } of overrides) {
    const bounds = BOUNDS.get(rule);
    if (bounds === undefined) {
      problems.push({ code: 'rule-not-found', severity: 'error', scope: FOLDER, place, data: { rule } });
    } else if (!Number.isInteger(value) || value < bounds.least || value > bounds.most) {
      const data = { rule, value, ...bounds };
      problems.push({ code: 'rule-out-of-range', severity: 'error', scope: FOLDER, place, data });
    } else {
      own.set(rule, { value, reason });
    }
  }
  const rows = IN_ORDER.map((rule) => {
    const overridden = own.get(rule.id);
    return overridden ? { ...rule, overridden } : rule;
  });
  const inForce = (rule: Rule): number => own.get(rule.id)?.value ?? rule.value;
  return { value: { rows, valueOf: inForce }, problems };
}

/** Every rule once, room by room, as the rulebook's page shows it; the coach's values laid over where they stand. */
export function listRulebook(overrides: readonly RuleOverride[]): readonly RulebookRoom[] {
  const inForce = new Map(layOverrides(overrides).value.rows.map((row) => [row.id, row]));
  const entry = (rule: Rule): RulebookEntry => {
    const bounds = BOUNDS.get(rule.id);
    const open = bounds !== undefined && bounds.least < bounds.most;
    return { rule: inForce.get(rule.id) ?? rule, bounds: open ? bounds : null };
  };
  const room = (name: RulebookRoom['room'], rules: readonly Rule[]): RulebookRoom => {
    return { room: name, entries: rules.map(entry) };
  };
  return [
    room('screening', RULES_OF_SCREENING),
    room('versions', RULES_OF_VERSIONS),
    room('rows', RULES_OF_ROWS),
    room('sessions', RULES_OF_SESSIONS),
    room(
      'walk',
      rulesOfTheWalk.map(({ row }) => row),
    ),
    room('ladder', RULES_OF_THE_LADDER),
    room('history', RULES_OF_HISTORY),
    room('audit', RULES_OF_THE_AUDIT),
    room('review', RULES_OF_REVIEW),
  ];
}
