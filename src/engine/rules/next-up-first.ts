/** Part of the programme's reps with the next bell up with which they begin. */
import { practiceRow } from './walk-row.js';

export const NEXT_UP_FIRST = practiceRow('next-up-first', 500, 'per-mille');
