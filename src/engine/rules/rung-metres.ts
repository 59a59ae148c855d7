/** Metres more on each rung of a ladder that climbs by metres. */
import { practiceRow } from './walk-row.js';

export const RUNG_METRES = practiceRow('rung-metres', 5, 'm');
