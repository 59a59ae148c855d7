/** How long nothing is made harder after what was seen of how a movement is done, the day itself counted. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_HOLD_DAYS: Rule = {
  id: ruleId('seen-hold-days'),
  value: 14,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
