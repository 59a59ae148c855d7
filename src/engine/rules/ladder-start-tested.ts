/** A ladder begins with the load last tested in the exercise, or the heaviest below it. */
import { practiceRow } from './walk-row.js';

export const LADDER_START_TESTED = practiceRow('ladder-start-tested', 1, 'starts');
