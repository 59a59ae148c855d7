/** One gate a strand and edition; later ones wait for what was done. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const gateOnceGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-gate-once', 1, ''),
  permits: (at) => at.gate !== 'used',
  numbers: () => [{ name: 'gates', value: 1, unit: '' }],
};
