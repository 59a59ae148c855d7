/** In pregnancy the plan is moderate, and no gain in strength is counted on. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_MODERATE: Rule = {
  id: ruleId('pregnancy-moderate'),
  value: 1,
  unit: 'plans',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'recommendations: moderate intensity',
  standing: 'adapted',
  date: '2026-11-25',
};
