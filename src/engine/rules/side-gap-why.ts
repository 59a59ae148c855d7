/** Above this gap between the sides the coach is asked why. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SIDE_GAP_WHY: Rule = {
  id: ruleId('side-gap-why'),
  value: 200,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
