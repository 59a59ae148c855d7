/** Breaks with no more than so many days between them are one, for its length and for what a test still says. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_JOINED: Rule = {
  id: ruleId('break-joined'),
  value: 1,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
