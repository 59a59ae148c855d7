/** From this gap between the sides, against the stronger one, the coach is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SIDE_GAP_TOLD: Rule = {
  id: ruleId('side-gap-told'),
  value: 100,
  unit: 'per-mille',
  source: 'Bishop et al. 2016, Strength Cond J; limb symmetry index',
  locator: 'asymmetry flags of 10 to 15 per cent',
  standing: 'adapted',
  date: '2026-11-24',
};
