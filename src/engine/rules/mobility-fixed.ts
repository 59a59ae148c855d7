/** Mobility is a dose: it stays as it is. */
import { practiceRow } from './walk-row.js';

export const MOBILITY_FIXED = practiceRow('mobility-fixed', 1, 'doses');
