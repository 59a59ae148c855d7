/** Reps more on each rung of a ladder that climbs by reps. */
import { practiceRow } from './walk-row.js';

export const RUNG_REPS = practiceRow('rung-reps', 2, 'reps');
