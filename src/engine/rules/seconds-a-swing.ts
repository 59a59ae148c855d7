/** Length of one rep of swing work, its pauses included. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SECONDS_A_SWING: Rule = {
  id: ruleId('seconds-a-swing'),
  value: 27,
  unit: 'tenths of a second',
  source: 'Farrar, Mayhew & Koch 2010, J Strength Cond Res 24(4):1034-1036',
  locator: '265 swings in 12 minutes',
  standing: 'derived',
  date: '2026-11-25',
};
