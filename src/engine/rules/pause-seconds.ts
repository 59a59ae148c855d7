/** Least length of the pause at the bottom of a slow rep with a pause. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAUSE_SECONDS: Rule = {
  id: ruleId('pause-seconds'),
  value: 2,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
