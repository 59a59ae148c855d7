/** In pregnancy: avoid impact, and take care where balance is asked. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_FALLS: Rule = {
  id: ruleId('pregnancy-falls'),
  value: 2,
  unit: 'cautions',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'safety precautions: danger of falling',
  standing: 'adapted',
  date: '2026-11-25',
};
