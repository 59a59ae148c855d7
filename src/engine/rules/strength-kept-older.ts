/** The same from the age of `older-from`, who lose sooner. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const STRENGTH_KEPT_OLDER: Rule = {
  id: ruleId('strength-kept-older'),
  value: 14,
  unit: 'days',
  source: 'Bosquet et al. 2013, Scand J Med Sci Sports 23:e140-e149',
  locator: 'loss of strength larger above 65 years',
  standing: 'adapted',
  date: '2026-11-25',
};
