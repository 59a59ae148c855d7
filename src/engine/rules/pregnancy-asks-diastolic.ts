/** In pregnancy, a lower figure at rest of this or more asks first. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_ASKS_DIASTOLIC: Rule = {
  id: ruleId('pregnancy-asks-diastolic'),
  value: 90,
  unit: 'mmHg',
  source: 'ACOG Practice Bulletin 222, 2020',
  locator:
    'gestational hypertension: 140 or more, or 90 or more; a relative contraindication in Mottola et al. 2019, table 2',
  standing: 'adapted',
  date: '2026-11-25',
};
