/** With nothing known a ladder begins with the lightest load or the easiest band, and the coach is told. */
import { practiceRow } from './walk-row.js';

export const LADDER_START_LIGHTEST = practiceRow('ladder-start-lightest', 1, 'starts');
