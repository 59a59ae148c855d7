/** It moves well: what was seen of the exercise before says nothing more. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_WELL: Rule = {
  id: ruleId('seen-well'),
  value: 0,
  unit: 'observations',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
