/** The block's weeks and sessions: what was done of what was planned, and the load of each week. */
import { addDays, type Day, isoOfDay, weekdayOf } from '../../model/day.js';
import type { DoneSession, History } from '../../model/history.js';
import type { SessionReviewed, WeekDone, WeekLoad } from '../../model/review.js';
import { REVIEW_LOAD } from '../rules/review-load.js';
import { type Asking, lastAskedOf } from './asked-days.js';
import { type BlockDays, isDone, type Reviewing } from './reviewing.js';
import { loadOfDays } from './week-load.js';

/** Of one block, each seven days from the day it began. What is done after its last day counts in its last week. */
export function weeksDone(reviewing: Asking, block: BlockDays): readonly WeekDone[] {
  const { client, history, today } = reviewing;
  const { inputs } = block.planned.plan;
  const stop = lastAskedOf(reviewing, block);
  const done = history.sessions.filter((session) => session.block === block.planned.block && isDone(session));
  return Array.from({ length: block.weeks }, (_, index): WeekDone => {
    const begins = addDays(block.first, 7 * index);
    const ends = addDays(begins, 6);
    const isLast = index === block.weeks - 1;
    const own = done.filter(({ day }) => (day >= begins || index === 0) && (day <= ends || isLast));
    const trainingDays = sevenDays(begins).filter((day) => day <= stop && inputs.days.includes(weekdayOf(day)));
    const planned = trainingDays.filter((day) => !client.breaks.some(({ from, until }) => day >= from && day <= until));
    return {
      week: index + 1,
      begins: isoOfDay(begins),
      ends: isoOfDay(ends),
      trainingDays: trainingDays.length,
      planned: planned.length,
      done: own.length,
      over: ends < today,
    };
  });
}

const sevenDays = (begins: Day): readonly Day[] => Array.from({ length: 7 }, (_, index) => addDays(begins, index));

/** In the order of the queue, done or not. */
export function sessionsReviewed({ sessions }: History, { planned }: BlockDays): readonly SessionReviewed[] {
  return planned.queue.map(({ session, week }): SessionReviewed => {
    const done = sessions.find(({ block, occurrence }) => block === planned.block && occurrence === session.occurrence);
    return {
      session: session.id,
      name: session.name,
      occurrence: session.occurrence,
      week: done?.week ?? week,
      planned: done === undefined ? session.date : isoOfDay(done.planned),
      done: done !== undefined && isDone(done) ? isoOfDay(done.day) : null,
      today: done?.today ?? null,
      effort: done?.effort ?? null,
      minutes: done?.minutes ?? null,
      minutesPlanned: done?.minutesPlanned ?? session.minutes,
    };
  });
}

/** Weeks that have begun. */
export function weekLoads({ history, rules, today }: Reviewing, block: BlockDays): readonly WeekLoad[] {
  const length = rules.valueOf(REVIEW_LOAD);
  const weeks: WeekLoad[] = [];
  for (let week = 1; week <= block.weeks; week += 1) {
    const begins = addDays(block.first, 7 * (week - 1));
    if (begins > today) break;
    const days = Array.from({ length }, (_, index) => addDays(begins, index));
    const loads = days.map((day) => loadOfDay(history.sessions.filter((one) => one.day === day && isDone(one))));
    const at = { week, begins: isoOfDay(begins) };
    const load = loadOfDays(loads);
    const isoOf = (index: number): string => isoOfDay(addDays(begins, index));
    if (addDays(begins, length - 1) >= today) {
      const unsaid = loads.flatMap((one, index) => (one === null ? [isoOf(index)] : []));
      weeks.push({
        ...at,
        kind: 'running',
        total: loads.reduce<number>((sum, one) => sum + (one ?? 0), 0),
        days: unsaid,
      });
    } else {
      weeks.push(
        load.kind === 'not known' ? { ...at, kind: 'not known', days: load.days.map(isoOf) } : { ...at, ...load },
      );
    }
  }
  return weeks;
}

/** `null` where effort or minutes of one of the day's sessions were not said. */
function loadOfDay(sessions: readonly DoneSession[]): number | null {
  let sum = 0;
  for (const { effort, minutes } of sessions) {
    if (effort === null || minutes === null) return null;
    sum += effort * minutes;
  }
  return sum;
}
