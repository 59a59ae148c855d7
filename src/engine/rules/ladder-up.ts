/** A rung done as asked leads to the next one. */
import type { LadderCustom } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderUp: LadderCustom = { kind: 'custom', row: practiceRow('ladder-up', 1, 'steps') };
