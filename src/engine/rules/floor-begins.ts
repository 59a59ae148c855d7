/** Reps in reserve not gone below in the first weeks where there was no regular exercise. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_BEGINS: Rule = {
  id: ruleId('floor-begins'),
  value: 40,
  unit: 'tenths',
  source: 'Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479',
  locator: 'no regular exercise: light to moderate at first, then progress',
  standing: 'adapted',
  date: '2026-11-25',
};
