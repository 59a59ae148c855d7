/** The block a client is in the middle of: what was done of it, and on which day it began. SESSIONS.md is the definition. */
import { type Client, placeOfFact } from '../../../model/client.js';
import { type Day, dayOfIso, isoOfDay } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { DoneSession, History, PlannedBlock } from '../../../model/history.js';
import type { Item } from '../../../model/plan.js';
import { ofClient, type Problem, type ProblemTable } from '../../../model/problem.js';
import type { Programme } from '../../../model/programme.js';
import { invariant } from '../../../model/result.js';
import { orderOf } from '../../sessions/queue-sessions.js';

export interface Begun {
  readonly planned: PlannedBlock;
  /** At least one; in order of occurrence. */
  readonly done: readonly DoneSession[];
  /** The day its first week begins on, in every edition from the first session on. */
  readonly first: Day;
}

/** `null` where nothing was done yet of the client's block: then it is planned as if it had never been issued. */
export function begunBlock({ blocks, sessions }: History, { blocksBefore }: Client): Begun | null {
  const block = blocksBefore + 1;
  const planned = blocks.find((one) => one.block === block);
  const done = sessions.filter((one) => one.block === block).sort((a, b) => a.occurrence - b.occurrence);
  const begins = planned?.plan.weeks[0]?.begins;
  if (planned === undefined || begins === undefined || done.length === 0) return null;
  const first = dayOfIso(begins);
  invariant(first !== undefined, 'a plan holds days');
  return { planned, done, first };
}

/** Rows that the latest plan cut for time, by `session/row`: with other minutes than then it is decided anew. */
export function cutIn({ planned: { plan } }: Begun, { minutes }: Client): ReadonlySet<string> {
  if (plan.inputs.minutesCap !== minutes) return new Set();
  const sessions = plan.weeks.flatMap((week) => week.sessions);
  return new Set(
    sessions.flatMap(({ id, trimmed }) => trimmed.flatMap(({ row, what }) => (what === 'row' ? [`${id}/${row}`] : []))),
  );
}

/** Sets that the sessions done asked for, by `occurrence/row`: an easy week is held against them. */
export function workedIn({ planned, done }: Begun): ReadonlyMap<string, number> {
  const places = new Set(done.map(({ occurrence }) => occurrence));
  const sessions = planned.queue.map(({ session }) => session).filter(({ occurrence }) => places.has(occurrence));
  return new Map(
    sessions.flatMap(({ occurrence, groups }) =>
      groups.flatMap(({ items }) =>
        items.map((item): readonly [string, number] => [`${occurrence}/${item.row}`, item.asked.sets]),
      ),
    ),
  );
}

type Changed = ProblemTable['block-begun'];

/**
 * What a begun block rests on stays as it was: its programme, its start and days, the number of its weeks and the order
 * of its sessions. Reports `block-begun` for the first of them that does not.
 */
export function checkBegun(begun: Begun, client: Client, programme: Programme): readonly Problem[] {
  const { plan, queue } = begun.planned;
  const changed = (what: Changed['what'], was: string, now: string): readonly Problem[] => {
    if (was === now) return [];
    const place = what === 'weeks' || what === 'sessions' ? programme.place : placeOfFact(client, what);
    const data = { what, was, now, block: begun.planned.block, done: begun.done.length };
    return [{ code: 'block-begun', severity: 'error', scope: ofClient(client.id), place, data }];
  };
  const order = orderOf(programme, new Set(client.days).size);
  const sessions = queue.map(({ session }) => session.id);
  const found = [
    ...changed('programme', plan.programme, client.programme),
    ...changed('starts', plan.starts, isoOfDay(client.starts)),
    ...changed('days', sayDays(plan.inputs.days), sayDays(client.days)),
    ...changed('weeks', String(plan.weeks.length), String(programme.curve.length)),
    ...changed(
      'sessions',
      sessions.join(' '),
      order === null ? '' : queue.map(({ session }) => order[(session.occurrence - 1) % order.length]).join(' '),
    ),
  ];
  return found.slice(0, 1);
}

/** ISO weekdays in order of the week: `1 4`. */
const sayDays = (days: readonly number[]): string => [...new Set(days)].sort((a, b) => a - b).join(' ');

/**
 * The booklet still shows what was done, with the pages of its exercises. Reports `exercise-not-found` for each that the
 * library no longer has, under its own or a former id.
 */
export function checkDone(
  { done, planned }: Begun,
  client: Client,
  exercises: ReadonlyMap<string, Exercise>,
): readonly Problem[] {
  const places = new Set(done.map(({ occurrence }) => occurrence));
  const items = planned.queue
    .filter(({ session }) => places.has(session.occurrence))
    .flatMap(({ session }) => session.groups.flatMap((group) => group.items));
  const missing = new Map<string, Problem>();
  for (const item of items) {
    for (const exercise of namedIn(item)) {
      if (exercises.has(exercise) || missing.has(exercise)) continue;
      const data = { exercise, row: item.row };
      const scope = ofClient(client.id);
      missing.set(exercise, { code: 'exercise-not-found', severity: 'error', scope, place: client.place, data });
    }
  }
  return [...missing.values()];
}

/** A way of doing an exercise stands on its page. */
function namedIn(item: Item): readonly string[] {
  const bySets = [item.sets, ...item.easier.map(({ sets }) => sets), ...item.harder.map(({ sets }) => sets)].flat();
  const named = bySets.flatMap(({ exercise, gate, otherwise = [], choose = [] }) => [
    exercise,
    gate?.needs.exercise,
    ...[...otherwise, ...choose].map((one) => one.exercise),
  ]);
  const beside = [...item.easier, ...item.harder].map(({ exercise }) => exercise);
  return [item.exercise, ...named, ...beside].flatMap((id) => (id === undefined ? [] : [id.split('#')[0] ?? id]));
}
