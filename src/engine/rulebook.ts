/** The rules with the coach's own values laid over them. What each rule decides stands with the rule. */
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Rule } from '../model/reason.js';
import type { Result } from '../model/result.js';
import type { RuleOverride } from '../model/studio.js';
import { WALK_VALUES } from './rows/walk-values.js';
import { RULES_OF_THE_BLOCK } from './rules-of-the-block.js';
import { rulesOfTheWalk } from './rules-of-the-walk.js';

/** Every rule of the planner, the walk's included. */
const EVERY_RULE: readonly Rule[] = [...RULES_OF_THE_BLOCK, ...rulesOfTheWalk.map((rule) => rule.row)];

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

/** What a coach may set, where it is narrower than any whole number from 0 up. Floors of reserve are never 0. */
const LIMITS: ReadonlyMap<string, { readonly least: number; readonly most: number }> = new Map([
  ['floor-alone', { least: 10, most: 60 }],
  ['floor-novice', { least: 10, most: 60 }],
  ['floor-older', { least: 10, most: 60 }],
  ['floor-first-weeks', { least: 10, most: 60 }],
  ['adult-from', { least: 18, most: 120 }],
  ['gain-novice', { least: 0, most: 300 }],
  ['gain-trained', { least: 0, most: 300 }],
  ['gain-cautioned', { least: 0, most: 300 }],
  ['sign-off-lapses', { least: 1, most: 366 }],
  ['clearance-holds', { least: 1, most: 365 }],
  ['screening-holds', { least: 1, most: 366 }],
  ['warm-up', { least: 5, most: 15 }],
  ['warm-up-older', { least: 5, most: 20 }],
  ['warm-up-load', { least: 0, most: 900 }],
  ['tempo-slow-lowering', { least: 100, most: 1000 }],
  ['tempo-slow-with-a-pause', { least: 100, most: 1000 }],
  ['minutes-cap', { least: 60, most: 60 }],
  ['easier-in-kit', { least: 1, most: 1 }],
  ['rpe-to-reserve', { least: 100, most: 100 }],
  ['feeler-rise', { least: 0, most: 1 }],
]);
const ANY = { least: 0, most: 10_000 };

/**
 * Lays the coach's values over the rules. Reports `rule-not-found` and `rule-out-of-range`; both concern the
 * whole folder, and leave the rule's own value standing.
 */
export function layOverrides(overrides: readonly RuleOverride[]): Result<Rulebook> {
  const problems: Problem[] = [];
  const own = new Map<string, { readonly value: number; readonly reason: string }>();
  const known = new Set<string>(RULE_IDS);
  for (const { rule, value, reason, place } of overrides) {
    const { least, most } = LIMITS.get(rule) ?? ANY;
    if (!known.has(rule)) {
      problems.push({ code: 'rule-not-found', severity: 'error', scope: FOLDER, place, data: { rule } });
    } else if (!Number.isInteger(value) || value < least || value > most) {
      const data = { rule, value, least, most };
      problems.push({ code: 'rule-out-of-range', severity: 'error', scope: FOLDER, place, data });
    } else {
      own.set(rule, { value, reason });
    }
  }
  const rows = EVERY_RULE.map((rule) => {
    const overridden = own.get(rule.id);
    return overridden ? { ...rule, overridden } : rule;
  }).sort((a, b) => compareIds(a.id, b.id));
  const inForce = (rule: Rule): number => own.get(rule.id)?.value ?? rule.value;
  return { value: { rows, valueOf: inForce }, problems };
}
