/** How many new stages a ladder opens in one edition; later ones wait for what was done. */
import { isNewStage, type LadderGuard } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderGateOnce: LadderGuard = {
  kind: 'guard',
  row: practiceRow('ladder-gate-once', 1, 'gates'),
  permits: (at, next) => !at.gateUsed || !isNewStage(at.input, at.rung, next),
  numbers: () => [{ name: 'gates', value: 1, unit: '' }],
};
