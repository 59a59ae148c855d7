/** Diabetes, or a medicine that lowers blood sugar, counts as known disease whatever was answered. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DIABETES_IS_DISEASE: Rule = {
  id: ruleId('diabetes-is-disease'),
  value: 1,
  unit: 'answers',
  source: 'Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479',
  locator: 'known disease: cardiovascular, metabolic (type 1 and 2 diabetes) or renal',
  standing: 'adapted',
  date: '2026-11-25',
};
