/** The grip went first: an easier version for the grip, else so many loads lighter. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_GRIP: Rule = {
  id: ruleId('seen-grip'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
