/** Every planned exercise has at least this many easier versions this client may do with this kit. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EASIER_IN_KIT: Rule = {
  id: ruleId('easier-in-kit'),
  value: 1,
  unit: 'versions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
