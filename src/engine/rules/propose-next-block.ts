/** From so many weeks before a block ends, the next one is proposed, from the training day after it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_NEXT_BLOCK: Rule = {
  id: ruleId('propose-next-block'),
  value: 1,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
