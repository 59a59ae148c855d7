/** Part of the programme's minutes with which work by the signal begins where it or its load is new. */
import { practiceRow } from './walk-row.js';

export const SIGNAL_MINUTES_FIRST = practiceRow('signal-minutes-first', 600, 'per-mille');
