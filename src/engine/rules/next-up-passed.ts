/** Reps with the next bell up are planned only where there is one and it is signed off too; else the main bell is done alone. */
import { practiceRow } from './walk-row.js';

export const NEXT_UP_PASSED = practiceRow('next-up-passed', 1, 'bells');
