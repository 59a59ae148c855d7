/** Both sides do what the weaker one can, and the weaker one goes first. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WEAKER_SIDE: Rule = {
  id: ruleId('weaker-side'),
  value: 1,
  unit: 'sides',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
