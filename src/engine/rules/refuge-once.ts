/** Of the rows of a session for which one version takes another’s place, so many are done; the others are left out, and told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const REFUGE_ONCE: Rule = {
  id: ruleId('refuge-once'),
  value: 1,
  unit: 'rows',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
