/** How long ago a birth was on the first day of the block. */
import type { Birth } from '../../model/client.js';
import type { Rule } from '../../model/reason.js';
import { BIRTH_CHECK } from '../rules/birth-check.js';
import type { Screened } from './screened.js';

/** Within so many days of the birth, the last of them included, as the rule says; a birth to come counts too. */
export const isWithin = (rule: Rule, { date }: Birth, { firstDay, rules }: Screened): boolean =>
  firstDay - date <= rules.valueOf(rule);

/** Nobody licensed has looked yet, on the day of planning, and `birth-check` asks for it. */
export const isUnchecked = (birth: Birth, screened: Screened): boolean =>
  isWithin(BIRTH_CHECK, birth, screened) && (birth.checked === undefined || birth.checked > screened.today);
