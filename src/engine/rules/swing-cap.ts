/** Most reps of one set of fast lifts before they lose their quality, unless the exercise says otherwise. */
import { practiceRow } from './walk-row.js';

export const SWING_CAP = practiceRow('swing-cap', 15, 'reps');
