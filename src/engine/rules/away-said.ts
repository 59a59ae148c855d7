/** So many days since the last mark, with a session due in them, and the phone says how long it has been. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AWAY_SAID: Rule = {
  id: ruleId('away-said'),
  value: 7,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-29',
};
