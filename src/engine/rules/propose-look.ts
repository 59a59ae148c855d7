/** A place under a caution that kept quiet for so long while it was trained, in every week of it: look at it again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_LOOK: Rule = {
  id: ruleId('propose-look'),
  value: 21,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
