/** Reps more at every signal, once the minutes are those of the programme: the same time, more work. */
import { practiceRow } from './walk-row.js';

export const RUNG_SIGNAL_REPS = practiceRow('rung-signal-reps', 1, 'reps');
