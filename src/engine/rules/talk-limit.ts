/** Breath never works harder than the plan allows, whatever the row asks. */
import { practiceRow } from './walk-row.js';

export const TALK_LIMIT = practiceRow('talk-limit', 1, 'levels');
