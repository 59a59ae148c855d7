/** How many rungs lower, within its stage, an easy week is whose sets could not fall. */
import type { LadderCustom } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderEasyDown: LadderCustom = { kind: 'custom', row: practiceRow('ladder-easy-down', 1, 'rungs') };
