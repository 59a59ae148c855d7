/** Weeks without a mark although sessions were planned, and rows that are left out again and again. */
import type { Break } from '../../../model/client.js';
import { addDays, type Day, dayOfIso } from '../../../model/day.js';
import type { ExerciseId } from '../../../model/identity.js';
import { DONE_GAP } from '../../rules/done-gap.js';
import { DONE_QUIET } from '../../rules/done-quiet.js';
import type { Remembering } from '../recall.js';
import { byRow, type MarkedRow } from './marked-rows.js';

/**
 * Between two marks, and from the last one to the day of planning. None where the coach wrote a break over some of those
 * days, or nothing was planned in them.
 */
export function markedGaps({ client, history, rules, today }: Remembering): readonly Break[] {
  const marked = [...history.sessions.map(({ day }) => day), ...history.notes.map(({ day }) => day)];
  const days = [...new Set([...marked, ...(history.lastMark === null ? [] : [history.lastMark])])]
    .filter((day) => day <= today)
    .sort((a, b) => a - b);
  const planned = history.blocks.flatMap(({ queue }) =>
    queue.flatMap(({ session }): readonly Day[] => {
      const day = dayOfIso(session.date);
      return day === undefined ? [] : [day];
    }),
  );
  return days.flatMap((day, index): readonly Break[] => {
    const from = addDays(day, 1);
    const until = addDays(days[index + 1] ?? today, -1);
    if (until - from + 1 < rules.valueOf(DONE_GAP)) return [];
    if (!planned.some((one) => one >= from && one <= until)) return [];
    if (client.breaks.some((one) => one.from <= until && one.until >= from)) return [];
    return [{ from, until, cause: 'away', place: client.place }];
  });
}

export interface Quiet {
  readonly exercise: ExerciseId;
  readonly key: string;
  readonly sessions: number;
}

/** Rows of which nothing was done in their last so many sessions, each of which was otherwise done. */
export function quietRows({ rules }: Remembering, rows: readonly MarkedRow[]): readonly Quiet[] {
  const least = rules.valueOf(DONE_QUIET);
  return [...byRow(rows)].flatMap(([key, own]): readonly Quiet[] => {
    const done = own.filter(({ session }) => session.rows.some((row) => isDone(row)));
    const last = done.findLastIndex(({ row }) => isDone(row));
    const sessions = done.length - 1 - last;
    const exercise = done.at(-1)?.row.exercise;
    return exercise === undefined || sessions < least ? [] : [{ exercise, key, sessions }];
  });
}

const isDone = ({ sets }: MarkedRow['row']): boolean => sets.some(({ done }) => done !== 'left out');
