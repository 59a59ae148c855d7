/** A set of more than 12 reps and reserve is weak evidence: prediction gets worse as repetitions rise. */
import type { Custom } from '../walk/walk-rule.js';
import { sourcedRow } from './walk-row.js';

export const weakAbove: Custom = {
  kind: 'custom',
  row: sourcedRow(
    'walk-weak-above',
    120,
    'tenths',
    'adapted',
    'Whisenant et al. 2003; Reynolds, Gordon & Robergs 2006 (J Strength Cond Res 20(3):584-592)',
    'validity falls as repetitions rise; linear equations not beyond 10 reps',
  ),
};
