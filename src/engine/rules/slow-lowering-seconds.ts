/** Least length of a slow lowering. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SLOW_LOWERING_SECONDS: Rule = {
  id: ruleId('slow-lowering-seconds'),
  value: 4,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
