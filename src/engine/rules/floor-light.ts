/** Reps in reserve not gone below in the first weeks of a block that begins within `birth-window`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_LIGHT: Rule = {
  id: ruleId('floor-light'),
  value: 50,
  unit: 'tenths',
  source: 'Davenport et al. 2025, Br J Sports Med (Canadian guideline after a birth)',
  locator: 'light first, as symptoms allow',
  standing: 'adapted',
  date: '2026-11-25',
};
