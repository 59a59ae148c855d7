/** Trials are for clients and patterns that allow them. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialAllowedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-allowed', 0, ''),
  permits: (at) => at.ground.input.trials,
  numbers: () => [],
};
