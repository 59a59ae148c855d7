/** An easy week keeps the last rung worked on, with fewer sets; it neither counts nor breaks. */
import type { LadderCustom } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderEasy: LadderCustom = { kind: 'custom', row: practiceRow('ladder-easy', 0, 'rungs') };
