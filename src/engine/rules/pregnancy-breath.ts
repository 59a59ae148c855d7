/** In pregnancy the breath is never held. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_BREATH: Rule = {
  id: ruleId('pregnancy-breath'),
  value: 1,
  unit: 'cautions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
