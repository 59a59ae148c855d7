/** No gate is offered in a moderate plan, nor while a fact of health asks for steady work. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const gatesAllowedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-gates-allowed', 0, ''),
  permits: (at) => at.ground.values.gates,
  numbers: () => [],
};
