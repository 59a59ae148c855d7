/**
 * What is otherwise in a client's new plan than in the one before it, row by row and from which session on. Within a
 * block the same place of the queue is held against itself, and what is done already is left out; the next block's
 * first sessions are held against the last of the block before.
 */
import type { Change, MovedSession, PlanChange } from '../model/change.js';
import { compareIds } from '../model/identity.js';
import type { Plan, PlanSession } from '../model/plan.js';
import { compareBlocks } from './compare-plans-blocks.js';
import { newFinding } from './compare-plans-reasons.js';
import { compareRows } from './compare-plans-rows.js';

const sessionsOf = ({ weeks }: Plan): readonly PlanSession[] => weeks.flatMap(({ sessions }) => sessions);

/** Of the block as a whole first, then row by row in the order of the new plan; empty where the work is the same. */
export function compareEditions(before: Plan, after: Plan): readonly Change[] {
  const [last, next] = [before.block, after.block];
  if (last !== next) {
    const goesOn = (after.inputs.recalls ?? []).some((recall) => recall.last !== undefined);
    return [
      { what: 'block', before: last, after: next, goesOn },
      ...programmeChange(before, after),
      ...compareBlocks(before, after),
    ];
  }
  return [
    ...programmeChange(before, after),
    ...stopChange(before, after),
    ...sessionsChange(before, after),
    ...datesChange(before, after),
    ...compareRows(before, after),
  ];
}

function programmeChange(before: Plan, after: Plan): readonly PlanChange[] {
  return before.programme === after.programme
    ? []
    : [{ what: 'programme', before: before.programme, after: after.programme }];
}

function stopChange(before: Plan, after: Plan): readonly PlanChange[] {
  const [then, now] = [before.stops?.after ?? null, after.stops?.after ?? null];
  return then === now ? [] : [{ what: 'stops', before: then, after: now }];
}

const ABOUT_DATES = ['break-', 'queue-slides', 'start-moved', 'missed-session', 'sessions-lost'];

function sessionsChange(before: Plan, after: Plan): readonly PlanChange[] {
  const [then, now] = [sessionsOf(before).length, sessionsOf(after).length];
  if (then === now) return [];
  return [{ what: 'sessions', before: then, after: now, ...newFinding(before, after, ABOUT_DATES) }];
}

/** Days of sessions still to come. */
function datesChange(before: Plan, after: Plan): readonly PlanChange[] {
  const done = new Set((after.inputs.done ?? []).map(({ occurrence }) => occurrence));
  const then = new Map(sessionsOf(before).map((session) => [session.occurrence, session]));
  const moved = sessionsOf(after).flatMap((session): readonly MovedSession[] => {
    const old = then.get(session.occurrence);
    if (old === undefined || done.has(session.occurrence) || old.date === session.date) return [];
    return [{ occurrence: session.occurrence, session: session.id, before: old.date, after: session.date }];
  });
  if (moved.length === 0) return [];
  const inOrder = [...moved].sort((a, b) => a.occurrence - b.occurrence || compareIds(a.session, b.session));
  return [{ what: 'dates', moved: inOrder, ...newFinding(before, after, ABOUT_DATES) }];
}
