/** Ill for this many days or more: the first weeks back are gentle; a shorter illness holds the work for
 * `break-held-ill`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_ILL: Rule = {
  id: ruleId('break-ill'),
  value: 7,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
