/** Pain that the coach saw counts as pain that the client marked, by the same bands, until it is cleared. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_PAIN: Rule = {
  id: ruleId('seen-pain'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
