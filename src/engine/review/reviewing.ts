/** What a review is made from, and the block it is about. */
import { addDays, type Day, day, dayOfIso } from '../../model/day.js';
import type { DoneSession, DoneSet, History, PlannedBlock } from '../../model/history.js';
import { compareIds } from '../../model/identity.js';
import type { Programme } from '../../model/programme.js';
import type { ReasonInput } from '../../model/reason.js';
import type { Remembering } from '../history/recall.js';

/** Words that an edit writes on a page; the engine has none of its own. */
export interface EditWords {
  /** Who stands by a caution that marks led to: the coach who writes it. */
  readonly by: string;
  /** A line for the next session, of exercises by their names. */
  readonly testAgain: (names: readonly string[]) => string;
}

export interface Reviewing extends Remembering {
  /** Those a next block may be chosen from. */
  readonly programmes: readonly Programme[];
  readonly words: EditWords;
}

/** The block under way with its days. */
export interface BlockDays {
  readonly planned: PlannedBlock;
  readonly first: Day;
  readonly last: Day;
  readonly weeks: number;
}

/** Up to today, in one order, whatever order they came in. */
export function inOrder(history: History, today: Day): History {
  const sessions = history.sessions
    .filter(({ day }) => day <= today)
    .sort(
      (a, b) => a.day - b.day || a.block - b.block || a.occurrence - b.occurrence || compareIds(textOf(a), textOf(b)),
    );
  return { ...history, blocks: [...history.blocks].sort((a, b) => a.block - b.block), sessions };
}

const textOf = (session: DoneSession): string => JSON.stringify(session);

/** The latest block that has begun, else the first one there is; `null` where none was issued, or none has a week. */
export function blockUnderWay({ blocks }: History, today: Day): BlockDays | null {
  const dated = blocks.flatMap((planned) => daysOf(planned) ?? []);
  return dated.findLast(({ first }) => first <= today) ?? dated[0] ?? null;
}

export function daysOf(planned: PlannedBlock): BlockDays | null {
  const { weeks } = planned.plan;
  const first = weeks[0] === undefined ? undefined : dayOfIso(weeks[0].begins);
  if (first === undefined) return null;
  return { planned, first, last: addDays(first, 7 * weeks.length - 1), weeks: weeks.length };
}

/** Something of it was done, or the client said that it was over; not where all that is marked of it was left out. */
export const isDone = (session: DoneSession): boolean =>
  session.rows.some(({ sets }) => sets.some(wasDone)) || (session.closed && !isLetBe(session));

/** Over with nothing done, and said so: what hurt waits for the coach, and nobody missed it. */
export function isLetBe({ closed, rows }: DoneSession): boolean {
  const sets = rows.flatMap((row) => row.sets);
  return closed && sets.length > 0 && !sets.some(wasDone);
}

export const wasDone = ({ done }: DoneSet): boolean => done !== 'left out';

/** Sessions of the block under way; where nothing was issued, all of them. */
export const sessionsOf = ({ sessions }: History, block: BlockDays | null): readonly DoneSession[] =>
  block === null ? sessions : sessions.filter((session) => session.block === block.planned.block);

export const dayIn = (iso: string, otherwise: Day): Day => dayOfIso(iso) ?? otherwise;

export const word = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });
export const count = (name: string, value: number, unit = ''): ReasonInput => ({ name, value, unit });
export const later = (a: Day, b: Day): Day => day(Math.max(a, b));
