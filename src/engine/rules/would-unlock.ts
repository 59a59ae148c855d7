/** Of a version refused, and of a harder one out of reach, the coach is told all that would open it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WOULD_UNLOCK: Rule = {
  id: ruleId('would-unlock'),
  value: 1,
  unit: 'lists',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
