/** A row of the next bell up starts so many loads above the main one, where the estimate is sound. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const NEXT_UP_BELL: Rule = {
  id: ruleId('next-up-bell'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
