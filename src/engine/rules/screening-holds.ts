/** Screening answers older than this at the start are asked again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SCREENING_HOLDS: Rule = {
  id: ruleId('screening-holds'),
  value: 365,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
