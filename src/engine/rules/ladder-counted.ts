/** A session in which nothing may be made harder counts for nothing on the ladder, and breaks nothing. */
import type { LadderCustom } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderCounted: LadderCustom = { kind: 'custom', row: practiceRow('ladder-counted', 0, 'occurrences') };
