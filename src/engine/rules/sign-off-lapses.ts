/** A movement neither signed off nor tested for longer than this must be seen again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SIGN_OFF_LAPSES: Rule = {
  id: ruleId('sign-off-lapses'),
  value: 84,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
