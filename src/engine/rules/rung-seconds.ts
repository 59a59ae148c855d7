/** Seconds more on each rung of a ladder that climbs by seconds. */
import { practiceRow } from './walk-row.js';

export const RUNG_SECONDS = practiceRow('rung-seconds', 5, 's');
