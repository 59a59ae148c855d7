/** A row that names a bell by its role begins with that one. */
import { practiceRow } from './walk-row.js';

export const LADDER_START_ROLE = practiceRow('ladder-start-role', 1, 'starts');
