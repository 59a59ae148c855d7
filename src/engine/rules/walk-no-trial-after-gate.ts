/** After a gate is used, no further trial in that edition. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const noTrialAfterGateGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-no-trial-after-gate', 0, ''),
  permits: (at) => at.gate !== 'used',
  numbers: () => [{ name: 'gates', value: 1, unit: '' }],
};
