/** How far a test from before a break still says what a client can lift. */
import { addDays, type Day } from '../../model/day.js';
import type { Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import { BIRTH_CHECK } from '../rules/birth-check.js';
import { BIRTH_TEST } from '../rules/birth-test.js';
import { BREAK_COUNTS } from '../rules/break-counts.js';
import { PREGNANCY_TEST } from '../rules/pregnancy-test.js';
import { STRENGTH_KEPT } from '../rules/strength-kept.js';
import { STRENGTH_KEPT_OLDER } from '../rules/strength-kept-older.js';
import { STRENGTH_UNKNOWN } from '../rules/strength-unknown.js';
import { isWithin } from '../screening/read-birth.js';
import { pregnancyBegan } from '../screening/read-pregnancy.js';
import { joinBreaks } from './join-breaks.js';

export type Trust =
  | { readonly kind: 'whole' }
  /** Weak, and some loads lighter. */
  | { readonly kind: 'lighter'; readonly rule: Rule; readonly days: number }
  /** Nothing any longer. */
  | { readonly kind: 'nothing'; readonly rule: Rule; readonly days: number };

export const WHOLE: Trust = { kind: 'whole' };

/**
 * By a birth or a pregnancy begun since, and by the longest break that began after the test and is over by the next session. A break still to come
 * changes nothing here: what is planned before it is planned before it, and the coach is told to test again.
 */
export function trustIn(context: BlockContext, tested: Day): Trust {
  const { next, rules } = context;
  const borne = trustOfBirth(context, tested);
  if (borne.kind === 'nothing') return borne;
  const lengths = joinBreaks(context)
    .filter(({ from, until }) => until >= tested && from < next.day)
    .map(({ from, until }) => Math.min(until, next.day - 1) - Math.max(from, tested) + 1);
  const days = Math.max(0, ...lengths);
  if (days >= rules.valueOf(STRENGTH_UNKNOWN)) return { kind: 'nothing', rule: STRENGTH_UNKNOWN, days };
  const kept = isOlder(context) ? STRENGTH_KEPT_OLDER : STRENGTH_KEPT;
  return days >= rules.valueOf(kept) ? { kind: 'lighter', rule: kept, days } : borne;
}

/** A birth since the test takes from it all that it said; a pregnancy begun since makes it weak and lighter. */
function trustOfBirth(context: BlockContext, tested: Day): Trust {
  const { client, firstDay, rules } = context;
  const { birth, pregnancy } = client.health;
  const since = (rule: Rule, day: Day): boolean => rules.valueOf(rule) > 0 && tested < day;
  if (birth !== undefined && since(BIRTH_TEST, birth.date)) {
    return { kind: 'nothing', rule: BIRTH_TEST, days: firstDay - birth.date };
  }
  if (pregnancy === undefined) return WHOLE;
  const began = pregnancyBegan(pregnancy, context);
  return since(PREGNANCY_TEST, began) ? { kind: 'lighter', rule: PREGNANCY_TEST, days: firstDay - began } : WHOLE;
}

/** Of what has no date of its own, a bell that is stated or was passed: by a break that ended not long before the block. */
export function trustAfterBreak(context: BlockContext): Trust {
  const { client, firstDay, rules } = context;
  const { birth, pregnancy } = client.health;
  // Who cannot say when it was lifted has not lifted it since.
  if (birth !== undefined && isWithin(BIRTH_CHECK, birth, context)) return trustIn(context, addDays(birth.date, -1));
  if (pregnancy !== undefined) return trustIn(context, addDays(pregnancyBegan(pregnancy, context), -1));
  const recent = joinBreaks(context).filter(
    ({ from, until }) => from < firstDay && until >= firstDay - rules.valueOf(BREAK_COUNTS),
  );
  const [first] = recent.map(({ from }) => from).sort((a, b) => a - b);
  return first === undefined ? WHOLE : trustIn(context, first);
}
