/** Medicines nobody asked about count as if one slowed the heart; what was not asked is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const NOT_ASKED: Rule = {
  id: ruleId('not-asked'),
  value: 1,
  unit: 'phrases',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
