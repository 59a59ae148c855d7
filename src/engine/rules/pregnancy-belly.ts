/** From this week of pregnancy, take care with what asks of the belly or the pelvic floor. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_BELLY: Rule = {
  id: ruleId('pregnancy-belly'),
  value: 14,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
