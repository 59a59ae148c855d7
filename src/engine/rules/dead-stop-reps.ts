/** A fast lift that is new begins with this many reps at most, each from a dead stop, with the bell it was passed with. */
import { practiceRow } from './walk-row.js';

export const DEAD_STOP_REPS = practiceRow('dead-stop-reps', 5, 'reps');
