/** How far a test from before a break still says what a client can lift. */
import type { Day } from '../../model/day.js';
import type { Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import { BREAK_COUNTS } from '../rules/break-counts.js';
import { STRENGTH_KEPT } from '../rules/strength-kept.js';
import { STRENGTH_KEPT_OLDER } from '../rules/strength-kept-older.js';
import { STRENGTH_UNKNOWN } from '../rules/strength-unknown.js';

export type Trust =
  | { readonly kind: 'whole' }
  /** Weak, and some loads lighter. */
  | { readonly kind: 'lighter'; readonly rule: Rule; readonly days: number }
  /** Nothing any longer. */
  | { readonly kind: 'nothing'; readonly rule: Rule; readonly days: number };

export const WHOLE: Trust = { kind: 'whole' };

/**
 * By the longest break that began after the test and is over by the block's first session. A break inside the block
 * changes nothing here: what is planned before it is planned before it, and the coach is told to test again.
 */
export function trustIn(context: BlockContext, tested: Day): Trust {
  const { client, firstDay, rules } = context;
  const lengths = client.breaks
    .filter(({ from, until }) => until >= tested && from < firstDay)
    .map(({ from, until }) => Math.min(until, firstDay - 1) - Math.max(from, tested) + 1);
  const days = Math.max(0, ...lengths);
  if (days >= rules.valueOf(STRENGTH_UNKNOWN)) return { kind: 'nothing', rule: STRENGTH_UNKNOWN, days };
  const kept = isOlder(context) ? STRENGTH_KEPT_OLDER : STRENGTH_KEPT;
  return days >= rules.valueOf(kept) ? { kind: 'lighter', rule: kept, days } : WHOLE;
}

/** Of what has no date of its own, a bell that is stated or was passed: by a break that ended not long before the block. */
export function trustAfterBreak(context: BlockContext): Trust {
  const { client, firstDay, rules } = context;
  const recent = client.breaks.filter(
    ({ from, until }) => from < firstDay && until >= firstDay - rules.valueOf(BREAK_COUNTS),
  );
  const [first] = recent.map(({ from }) => from).sort((a, b) => a - b);
  return first === undefined ? WHOLE : trustIn(context, first);
}
