/** A caution that begins or ends inside the block counts for all of it, and is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CAUTION_IN_BLOCK: Rule = {
  id: ruleId('caution-in-block'),
  value: 1,
  unit: 'blocks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
