/** A part of a maximum is a part of capacity over this: loads above it are not used, and the reps are the walk’s. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PERCENT_OF_MAXIMUM: Rule = {
  id: ruleId('percent-of-maximum'),
  value: 310,
  unit: 'tenths',
  source: 'Epley 1985, Poundage Chart (equation as quoted in reviews)',
  locator: 'a maximum is one rep and none left: K over 300 and 10',
  standing: 'derived',
  date: '2026-11-25',
};
