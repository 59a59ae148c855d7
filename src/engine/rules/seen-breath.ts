/** The breath was held: one rep more is left in reserve, nothing is made harder, and the cue is to breathe out on the effort. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_BREATH: Rule = {
  id: ruleId('seen-breath'),
  value: 1,
  unit: 'cues',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
