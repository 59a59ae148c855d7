/** An unequal pair within this part of the mass of an equal one is not used: the equal one goes before it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const UNEQUAL_NEAR: Rule = {
  id: ruleId('unequal-near'),
  value: 100,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
