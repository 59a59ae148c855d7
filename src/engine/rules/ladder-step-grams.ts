/** What a next load may be heavier by in any case, as the exercise counts its loads: one step of a common rack of bells. */
import { practiceRow } from './walk-row.js';

export const LADDER_STEP_GRAMS = practiceRow('ladder-step-grams', 4000, 'g');
