/** Age from which a client counts as older; the oldest age the birth year allows decides. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const OLDER_FROM: Rule = {
  id: ruleId('older-from'),
  value: 65,
  unit: 'years',
  source: 'WHO guidelines on physical activity and sedentary behaviour, 2020',
  locator: 'age group 65 and over',
  standing: 'adapted',
  date: '2026-11-24',
};
