/** After a vertebral fracture: avoid twisting, loaded or deep. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_TWIST: Rule = {
  id: ruleId('fracture-twist'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: change twisting that is loaded, rapid, repeated or at the end of the range',
  standing: 'adapted',
  date: '2026-11-25',
};
