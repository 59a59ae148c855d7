/** A movement that is new starts lighter than the one it follows. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const newIsLighter: Custom = {
  kind: 'custom',
  row: practiceRow('walk-new-is-lighter', 0, ''),
};
