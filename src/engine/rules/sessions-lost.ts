/** Sessions that breaks push out of the block are left out; more than so many are told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SESSIONS_LOST: Rule = {
  id: ruleId('sessions-lost'),
  value: 0,
  unit: 'sessions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
