/** Least age planned for; the youngest age the birth year allows decides. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const ADULT_FROM: Rule = {
  id: ruleId('adult-from'),
  value: 18,
  unit: 'years',
  source: 'ACSM resistance training position stand, 2026',
  locator: 'scope: healthy adults of 18 and over',
  standing: 'adapted',
  date: '2026-11-24',
};
