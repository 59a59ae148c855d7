/** The weeks of the plan: sessions, groups and items, in the programme's order. */
import { isoOfDay } from '../../model/day.js';
import type { Group, PlanSession, Week } from '../../model/plan.js';
import type { BlockContext } from '../block-context.js';
import { planItem } from '../items/plan-item.js';
import type { Versions } from '../rows/fit-rows.js';
import type { WalkedRow } from '../rows/walked-row.js';
import { minutesAround } from './count-seconds.js';
import type { PlannedSession } from './plan-sets.js';
import type { Queue } from './queue-sessions.js';

export function composeWeeks(
  context: BlockContext,
  queue: Queue,
  sessions: readonly PlannedSession[],
  rows: readonly WalkedRow[],
  versions: Versions,
): readonly Week[] {
  return queue.begins.map((begins, index): Week => {
    const number = index + 1;
    const own = sessions.filter(({ queued }) => queued.week === number);
    return {
      number,
      begins: isoOfDay(begins),
      deload: context.programme.curve[index]?.easy ?? false,
      sessions: own.map((session) => composeSession(context, session, rows, versions)),
    };
  });
}

function composeSession(
  context: BlockContext,
  session: PlannedSession,
  rows: readonly WalkedRow[],
  versions: Versions,
): PlanSession {
  const { queued, minutes, trimmed } = session;
  const { warmUp, coolDown } = minutesAround(context);
  const work = queued.template.blocks.flatMap((block): readonly Group[] => {
    const timed = session.rows.filter(({ fitted, sets }) => fitted.block === block && sets > 0);
    const items = timed.flatMap(({ fitted, warmUp: lighter }) => {
      const walked = rows.find((row) => row.fitted === fitted);
      if (walked === undefined) return [];
      return [planItem(context, walked, walked.sessions.indexOf(session), lighter, versions)];
    });
    const rounds = block.kind === 'circuit' ? Math.max(...timed.map(({ sets }) => sets)) : 1;
    return items.length === 0 ? [] : [{ kind: block.kind, name: block.name, rounds, items }];
  });
  const before: Group = { kind: 'warm-up', name: '', rounds: 1, minutes: warmUp, items: [] };
  const after: Group = { kind: 'cool-down', name: '', rounds: 1, minutes: coolDown, items: [] };
  return {
    id: queued.template.id,
    name: queued.template.name,
    date: isoOfDay(queued.date),
    occurrence: queued.occurrence,
    minutes,
    trimmed,
    groups: [before, ...work, ...(coolDown > 0 ? [after] : [])],
    short: { minutes: 0, sets: [] },
  };
}
