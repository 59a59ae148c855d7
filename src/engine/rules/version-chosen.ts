/** An exercise that is not allowed gives way to the easier version that answers the cause. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const VERSION_CHOSEN: Rule = {
  id: ruleId('version-chosen'),
  value: 0,
  unit: 'steps',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
