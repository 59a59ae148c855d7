/** Is what was planned again for a session lighter than what is printed of it, so that it may be said so on the way in? */
import type { PlanLoad, PlanSet } from '../../model/plan.js';
import type { ReplannedItem } from '../replan.js';

/** Something of it is, and nothing is heavier. */
export function isLighter(replanned: readonly ReplannedItem[], occurrence: number | null): boolean {
  const changes = replanned.filter((one) => one.occurrence === occurrence).map(changeOf);
  return changes.some((change) => change < 0) && changes.every((change) => change <= 0);
}

type Changed = Pick<ReplannedItem, 'paper' | 'today' | 'sets'>;

/** Below 0 where it is lighter: in its load, else in what is done with it. */
function changeOf({ paper, today, sets }: Changed): number {
  if (today === null) return -1;
  if (paper === null) return 0;
  const inLoad = loadChange(paper.load, today.load);
  if (inLoad !== 0) return inLoad;
  return amountOf(today) - amountOf(paper) || (sets.some(({ set }) => set === null) ? -1 : 0);
}

/** What holds nothing is lighter than what holds something; of two ways of holding neither is. */
function loadChange(paper: PlanLoad | undefined, today: PlanLoad | undefined): number {
  if (paper === undefined || today === undefined) return weightOf(today) - weightOf(paper);
  return paper.mode === today.mode ? weightOf(today) - weightOf(paper) : 0;
}

/** Of help more is lighter. */
function weightOf(load: PlanLoad | undefined): number {
  if (load === undefined) return 0;
  return (load.mode === 'assisted' ? -1 : 1) * (load.grams === undefined ? load.step : load.grams);
}

const amountOf = ({ reps, seconds, metres }: PlanSet): number => reps ?? seconds ?? metres ?? 0;
