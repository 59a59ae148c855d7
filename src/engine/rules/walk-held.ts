/** While pain, a break or a caution holds a client, nothing is made harder. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const heldGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-held', 0, ''),
  permits: (at) => at.occurrence.held === undefined,
  numbers: (at) => [{ name: 'why', value: at.occurrence.held?.why ?? '', unit: '' }],
};
