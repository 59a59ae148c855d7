/** With low bone density: take care with loaded and with deep bending of the spine. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BONE_BEND: Rule = {
  id: ruleId('bone-bend'),
  value: 2,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: change bending that is loaded, rapid, repeated or at the end of the range',
  standing: 'adapted',
  date: '2026-11-25',
};
