/** From this week of pregnancy, avoid lying on the back. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_BACK: Rule = {
  id: ruleId('pregnancy-back'),
  value: 14,
  unit: 'weeks',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'recommendations: change position where lying on the back feels unwell; stricter here, with nobody beside',
  standing: 'adapted',
  date: '2026-11-25',
};
