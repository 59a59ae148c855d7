/** In pregnancy, blood pressure or diabetes on file, or a medicine for either, asks first even where the pregnancy names no condition. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_ASKS_KNOWN: Rule = {
  id: ruleId('pregnancy-asks-known'),
  value: 1,
  unit: 'answers',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'table 2, relative: gestational hypertension, cardiovascular disease, other significant conditions',
  standing: 'adapted',
  date: '2026-11-25',
};
