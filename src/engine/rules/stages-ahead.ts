/** How many loads, bands or versions above the first are listed; one of them at most is opened in an edition. */
import { practiceRow } from './walk-row.js';

export const STAGES_AHEAD = practiceRow('stages-ahead', 2, 'stages');
