/** From so many falls in a year the coach is told to have them looked into, and no measure is sent home. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FALLS_REFER: Rule = {
  id: ruleId('falls-refer'),
  value: 2,
  unit: 'falls',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
