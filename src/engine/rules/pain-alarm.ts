/** One sign of alarm, whatever else is said, and nothing is planned until the coach has looked and writes that it is cleared. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_ALARM: Rule = {
  id: ruleId('pain-alarm'),
  value: 1,
  unit: 'signs',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
