/** Marked rows as the rules of marks read them: recent, in order, and what their sets resisted. */
import type { Day } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { DoneRow, DoneSession, DoneSet } from '../../../model/history.js';
import type { PlanLoad } from '../../../model/plan.js';
import type { Grams } from '../../../model/quantity.js';
import { bodyPart } from '../../capacity.js';
import { inAllHands } from '../../kit/hands.js';
import { DONE_DAYS } from '../../rules/done-days.js';
import type { Remembering } from '../recall.js';

export interface MarkedRow {
  readonly session: DoneSession;
  readonly row: DoneRow;
  /** `session/row`, the same in every block of a programme. */
  readonly key: string;
  readonly day: Day;
}

/** Of sessions no older than `done-days`, earliest first; rows of which nothing was marked are among them. */
export function recentRows({ history, rules, today }: Remembering): readonly MarkedRow[] {
  const oldest = today - rules.valueOf(DONE_DAYS);
  return history.sessions.filter(({ day }) => day >= oldest && day <= today).flatMap(rowsOf);
}

/** Of one session, in the order of its plan. */
export const rowsOf = (session: DoneSession): readonly MarkedRow[] =>
  session.rows.map((row) => {
    return { session, row: withPlannedLoads(row), key: `${session.session}/${row.row}`, day: session.day };
  });

/** A set ticked as it was planned was done with the load it was planned with. */
function withPlannedLoads(row: DoneRow): DoneRow {
  const sets = row.sets.map((set): DoneSet => {
    const load = set.asPlanned && set.load === undefined ? plannedLoad(set, row) : undefined;
    return load === undefined ? set : { ...set, load };
  });
  return { ...row, sets };
}

/** Of the exercise that was done; of another one it says nothing. */
export const plannedLoad = ({ exercise, planned }: DoneSet, row: DoneRow): PlanLoad | undefined =>
  (planned?.exercise ?? row.exercise) === exercise ? planned?.load : undefined;

/** None was said of what is planned with one, or cannot be done without: then it is not known, and never nothing. */
function isLoadUnsaid(set: DoneSet, row: DoneRow, { facts }: Exercise): boolean {
  if (set.load !== undefined) return false;
  return plannedLoad(set, row) !== undefined || (facts.kit.load.length > 0 && !facts.kit.unloaded);
}

/** Earliest first, by `session/row`. */
export function byRow(rows: readonly MarkedRow[]): ReadonlyMap<string, readonly MarkedRow[]> {
  const grouped = new Map<string, MarkedRow[]>();
  for (const one of rows) {
    const own = grouped.get(one.key);
    if (own === undefined) grouped.set(one.key, [one]);
    else own.push(one);
  }
  return grouped;
}

/** Sets of work that were done, whatever with; a test set stands in the place of one. */
export const workDone = ({ sets }: DoneRow): readonly DoneSet[] =>
  sets.filter(({ kind, done }) => (kind === 'work' || kind === 'test') && done !== 'left out');

/** As the exercise counts it; 0 where none was said, `null` for a band. */
const gramsOfSet = ({ load }: DoneSet): Grams | null =>
  load === undefined ? 0 : load.band === undefined ? load.grams : null;

/** 0 for the body alone; `null` for a band, and for a load that is not known. */
export const gramsKnown = (set: DoneSet, row: DoneRow, exercise: Exercise): Grams | null =>
  isLoadUnsaid(set, row, exercise) ? null : gramsOfSet(set);

/**
 * R of one set in grams, as the walk counts it: the external load and the part of the body; the constant 1 where part
 * of a body is lifted whose mass is not on file. `null` for a band or a load that was not said.
 */
export function resistedIn(set: DoneSet, row: DoneRow, exercise: Exercise, bodyMass: Grams | null): number | null {
  const grams = gramsKnown(set, row, exercise);
  return grams === null ? null : resistedWith(grams, exercise, bodyMass);
}

export function resistedWith(grams: Grams, exercise: Exercise, bodyMass: Grams | null): number {
  const share = exercise.facts.bodyShare?.share ?? null;
  if ((share ?? 0) > 0 && bodyMass === null) return 1;
  return Math.max(1, inAllHands(grams, exercise) + bodyPart(share, bodyMass));
}
