/** A set may exceed the greatest so far by a tenth. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const volumeShare: Custom = {
  kind: 'custom',
  row: practiceRow('walk-volume-share', 1100, 'per-mille'),
};
