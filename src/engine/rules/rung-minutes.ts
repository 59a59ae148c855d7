/** Minutes more on each rung of work by the signal, until those of the programme. */
import { practiceRow } from './walk-row.js';

export const RUNG_MINUTES = practiceRow('rung-minutes', 2, 'minutes');
