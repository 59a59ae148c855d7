/** With low bone density: take care with twisting, loaded or deep. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BONE_TWIST: Rule = {
  id: ruleId('bone-twist'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: change twisting that is loaded, rapid, repeated or at the end of the range',
  standing: 'adapted',
  date: '2026-11-25',
};
