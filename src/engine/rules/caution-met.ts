/** Where a caution changes or holds back a row, the client reads what to do, never the diagnosis. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CAUTION_MET: Rule = {
  id: ruleId('caution-met'),
  value: 1,
  unit: 'sentences',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
