/** A next load is heavier by at most this part of the one held, or by `ladder-step-grams`, whichever is more. */
import { practiceRow } from './walk-row.js';

export const LADDER_STEP_SHARE = practiceRow('ladder-step-share', 500, 'per-mille');
