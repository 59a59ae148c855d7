/** Without either, a fast lift begins with the heaviest load it was signed off with: too light teaches the wrong thing. */
import { practiceRow } from './walk-row.js';

export const LADDER_START_SIGNED_OFF = practiceRow('ladder-start-signed-off', 1, 'starts');
