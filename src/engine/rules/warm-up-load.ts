/** The warm-up set is done with the heaviest load up to this part of the working load. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_LOAD: Rule = {
  id: ruleId('warm-up-load'),
  value: 750,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
