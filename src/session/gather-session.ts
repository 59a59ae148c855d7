/** One session as it was done, from its marks in order and the editions they were made in. */
import { type Day, day, dayOfIso } from '../model/day.js';
import type { DoneRow, DoneSession, DoneSet } from '../model/history.js';
import { compareIds, type SetKeyParts } from '../model/identity.js';
import type { PainReport } from '../model/log.js';
import { invariant } from '../model/result.js';
import type { PlacedMark, SetEvent } from './place-marks.js';
import type { PlannedPlace, PlannedRow } from './planned-sessions.js';

/** The local day of a moment, as the device told it. */
export function localDay(at: string): Day {
  const of = dayOfIso(at.slice(0, 10));
  return of ?? day(0);
}

/**
 * `null` where nothing was marked: to open a session, or to say how one feels before it, is not to have done anything
 * of it. `marks` are all of one block and occurrence, in order.
 */
export function gatherSession(marks: readonly PlacedMark[]): DoneSession | null {
  const first = marks.find(({ event }) => event.kind !== 'opened');
  if (first === undefined) return null;
  const { place } = first;
  const { session } = place;
  const opened = marks.flatMap(({ event }) => (event.kind === 'opened' ? [event] : []));
  const closed = marks.flatMap(({ event }) => (event.kind === 'closed' ? [event] : []));
  const firstSet = marks.find(({ event }) => event.kind === 'set');
  const latest = <T>(values: readonly (T | undefined)[]): T | null =>
    values.findLast((one) => one !== undefined) ?? null;
  const planned = dayOfIso(session.date);
  invariant(planned !== undefined, 'a plan holds days');
  return {
    block: place.block,
    occurrence: session.occurrence,
    session: session.id,
    name: session.name,
    week: place.week,
    easy: place.easy,
    edition: place.edition,
    planned,
    day: localDay((firstSet ?? first).event.at),
    today: latest(opened.map(({ today }) => today)),
    closed: closed.length > 0,
    effort: latest(closed.map(({ effort }) => effort)),
    minutes: latest(closed.map(({ minutes }) => minutes)),
    minutesPlanned: session.minutes,
    rows: rowsOf(place, marks),
    pain: painIn(marks, undefined),
  };
}

const painIn = (marks: readonly PlacedMark[], row: string | undefined): readonly PainReport[] =>
  marks.flatMap(({ event }) => (event.kind === 'pain' && event.row === row ? [event.report] : []));

/** Rows of the plan, then what a later edition put in and was marked; drills only where something of them was. */
function rowsOf(place: PlannedPlace, marks: readonly PlacedMark[]): readonly DoneRow[] {
  const marked = new Map<string, PlannedRow>();
  for (const { event, key, place: own } of marks) {
    const row = key?.row ?? ('row' in event ? event.row : undefined);
    const planned = row === undefined ? undefined : own.rows.get(row);
    if (row !== undefined && planned !== undefined) marked.set(row, planned);
  }
  const rows = new Map([...place.rows].filter(([row, { group }]) => isWork(group.kind) || marked.has(row)));
  for (const [row, planned] of marked) if (!rows.has(row)) rows.set(row, planned);
  return [...rows].map(
    ([row, { item, group }]): DoneRow => ({
      row: item.row,
      exercise: item.exercise,
      way: item.way,
      sides: item.sides,
      tempo: item.tempo,
      asked: item.asked,
      inCircuit: group.kind === 'circuit',
      ...(item.rung === undefined ? {} : { rung: item.rung.number }),
      sets: setsOf(row, place, marks),
      reserve: reserveOf(row, marks),
      pain: painIn(marks, row),
    }),
  );
}

const isWork = (kind: PlannedRow['group']['kind']): boolean =>
  kind === 'straight' || kind === 'circuit' || kind === 'test';

interface SetMark {
  readonly event: SetEvent;
  readonly key: SetKeyParts;
  readonly place: PlannedPlace;
}

/** The last word of each set; in the plan's order, and those it does not have after them, by kind, side and number. */
function setsOf(row: string, { sets }: PlannedPlace, marks: readonly PlacedMark[]): readonly DoneSet[] {
  const last = new Map<string, SetMark>();
  for (const { event, key, place } of marks) {
    if (event.kind === 'set' && key !== null && key.row === row) last.set(event.key, { event, key, place });
  }
  const order = [...sets.keys()];
  const rankOf = ({ event }: SetMark): number => {
    const index = order.indexOf(event.key);
    return index === -1 ? order.length : index;
  };
  return [...last.values()]
    .sort((a, b) => rankOf(a) - rankOf(b) || a.key.ordinal - b.key.ordinal || compareIds(a.event.key, b.event.key))
    .map(setOf);
}

function setOf({ event, key, place }: SetMark): DoneSet {
  const { exercise, tempo, done, reps, seconds, metres, load, asPlanned } = event;
  const planned = place.sets.get(event.key);
  return {
    key: event.key,
    kind: key.kind,
    side: key.side,
    exercise,
    tempo,
    done,
    ...(reps === undefined ? {} : { reps }),
    ...(seconds === undefined ? {} : { seconds }),
    ...(metres === undefined ? {} : { metres }),
    ...(load === undefined ? {} : { load }),
    asPlanned,
    ...(planned === undefined ? {} : { planned }),
  };
}

/** The latest word of each side, in the order first said. */
function reserveOf(row: string, marks: readonly PlacedMark[]): DoneRow['reserve'] {
  const said = new Map<DoneRow['reserve'][number]['side'], number>();
  for (const { event } of marks) {
    if (event.kind === 'reserve' && event.row === row) said.set(event.side, Math.round(10 * event.reps));
  }
  return [...said].map(([side, reserve]) => ({ side, reserve }));
}
