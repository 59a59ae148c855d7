/** In how many different weeks, at least, the last rung of a stage is done before a new one: two sessions of one week are one. */
import { isNewStage, type LadderGuard } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderWeeks: LadderGuard = {
  kind: 'guard',
  row: practiceRow('ladder-weeks', 2, 'weeks'),
  permits: (at, next) => weeksIn(at.weeks) >= at.input.rules.weeks || !isNewStage(at.input, at.rung, next),
  numbers: (at) => [
    { name: 'weeks', value: weeksIn(at.weeks), unit: '' },
    { name: 'needed', value: at.input.rules.weeks, unit: '' },
  ],
};

/** What was done before the block counts as a week each. */
const weeksIn = (weeks: readonly number[]): number =>
  weeks.filter((week) => week === 0).length + new Set(weeks.filter((week) => week > 0)).size;
