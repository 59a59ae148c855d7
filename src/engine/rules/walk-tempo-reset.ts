/** A rise in load and a change of version bring the tempo back to normal. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const tempoReset: Custom = {
  kind: 'custom',
  row: practiceRow('walk-tempo-reset', 0, ''),
};
