/** A sign-off taken back by pain or an alarm: see the exercise done again before it goes home. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_SIGN_OFF: Rule = {
  id: ruleId('propose-sign-off'),
  value: 1,
  unit: 'exercises',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
