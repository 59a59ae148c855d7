/** Part of the programme's reps at every signal with which work by the signal begins. */
import { practiceRow } from './walk-row.js';

export const SIGNAL_REPS_FIRST = practiceRow('signal-reps-first', 750, 'per-mille');
