/** From so many falls in a year: take care where balance is asked, with support within reach. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FALLS_SUPPORT: Rule = {
  id: ruleId('falls-support'),
  value: 1,
  unit: 'falls',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
