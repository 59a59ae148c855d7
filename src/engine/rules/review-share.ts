/** Fewer than this share of the sessions planned is few. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const REVIEW_SHARE: Rule = {
  id: ruleId('review-share'),
  value: 2,
  unit: 'of 3',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
