/** With a caution on the way, or in a moderate plan, no new load, band or version is offered. */
import { isNewStage, type LadderGuard } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderNewStage: LadderGuard = {
  kind: 'guard',
  row: practiceRow('ladder-new-stage', 0, 'stages'),
  permits: (at, next) => at.input.gates || !isNewStage(at.input, at.rung, next),
  numbers: () => [],
};
