/** In pregnancy the signs to stop at are told besides the usual ones. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_SIGNS: Rule = {
  id: ruleId('pregnancy-signs'),
  value: 1,
  unit: 'lists',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'reasons to stop; ACOG Committee Opinion 804, 2020, warning signs',
  standing: 'published',
  date: '2026-11-25',
};
