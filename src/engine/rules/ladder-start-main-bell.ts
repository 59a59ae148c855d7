/** Without a test a ladder begins with the main bell of the movement pattern, or the heaviest load below it. */
import { practiceRow } from './walk-row.js';

export const LADDER_START_MAIN_BELL = practiceRow('ladder-start-main-bell', 1, 'starts');
