/** From the tap that begins a hold on the phone to its first second: to lay the phone down and get into place. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const INTO_PLACE: Rule = {
  id: ruleId('into-place'),
  value: 5,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-29',
};
