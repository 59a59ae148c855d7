/** A new load, band or version stands behind a gate: what it needs is printed beside it, with what to do otherwise. */
import type { LadderCustom } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderGate: LadderCustom = { kind: 'custom', row: practiceRow('ladder-gate', 1, 'gates') };
