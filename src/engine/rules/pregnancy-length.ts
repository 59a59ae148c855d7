/** The day a pregnancy began is so many days before the day the child is due. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_LENGTH: Rule = {
  id: ruleId('pregnancy-length'),
  value: 280,
  unit: 'days',
  source: 'ACOG Committee Opinion 700, 2017',
  locator: '280 days from the first day of the last period',
  standing: 'adapted',
  date: '2026-11-25',
};
