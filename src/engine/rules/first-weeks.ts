/** How many weeks of a first block the floor `floor-first-weeks` holds for. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FIRST_WEEKS: Rule = {
  id: ruleId('first-weeks'),
  value: 2,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
