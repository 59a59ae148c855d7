/** A slower tempo leaves fewer reps to failure: τ. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const tempoFactor: Custom = {
  kind: 'custom',
  row: practiceRow('walk-tempo-factor', 0, 'per-mille'),
};
