/** Days left free after a break before the next session; all later ones follow in their order. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const QUEUE_SLIDES: Rule = {
  id: ruleId('queue-slides'),
  value: 0,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
