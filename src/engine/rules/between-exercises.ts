/** From one exercise to the next. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BETWEEN_EXERCISES: Rule = {
  id: ruleId('between-exercises'),
  value: 20,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
