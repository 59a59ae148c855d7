/** Holds every mark of a log against the edition it was made in: nothing is filed that no booklet ever asked for. */
import { nearestOf } from '../content/nearest.js';
import { addDays, type Day, dayOfIso, isoOfDay } from '../model/day.js';
import type { Edition } from '../model/edition.js';
import { readSetKey } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import type { Place } from '../model/place.js';
import type { Problem, Scope } from '../model/problem.js';
import type { LogProblems, WhichMark } from '../model/problems-log.js';
import { type EditionPlaces, type PlannedPlace, placesOf } from '../session/planned-sessions.js';
import { problemOf } from './recognise-log.js';

export interface LogSetting {
  readonly editions: readonly Edition[];
  /** Ids of every exercise of the library. */
  readonly exercises: ReadonlySet<string>;
  readonly today: Day;
  readonly place: Place;
  readonly scope: Scope;
}

/** The first thing that does not fit; `null` where all does. */
export function checkLog({ device, events }: Log, setting: LogSetting): Problem | null {
  const isPaper = device === 'paper';
  const editions = new Map(setting.editions.map((edition) => [edition.n, placesOf(edition)]));
  for (const event of events) {
    const problem = checkEvent(event, editions, { ...setting, isPaper });
    if (problem !== null) return problem;
  }
  return null;
}

/** `paper`: of a mark from paper, the places of the edition it was pencilled in. */
export function whichMark(event: LogEvent, paper?: EditionPlaces): WhichMark {
  const key = event.kind === 'set' ? readSetKey(event.key) : null;
  const row = key?.row ?? ('row' in event ? (event.row ?? '') : '');
  const mark = { seq: event.seq, kind: event.kind, row };
  if (paper === undefined) return mark;
  const occurrence = key?.occurrence ?? ('occurrence' in event ? event.occurrence : 0);
  const place = paper.places.get(occurrence);
  const session = place === undefined ? '' : `${place.session.id} ${place.week}`;
  return { ...mark, paper: { session, side: key?.side ?? 'both', set: key?.ordinal ?? 0 } };
}

interface Checking extends LogSetting {
  readonly isPaper: boolean;
}

type What = LogProblems['log-no-such-set']['what'];

function checkEvent(event: LogEvent, editions: ReadonlyMap<number, EditionPlaces>, setting: Checking): Problem | null {
  const { isPaper, place, scope } = setting;
  const of = editions.get(event.edition);
  if (of === undefined) {
    const data = { edition: event.edition, known: [...editions.keys()] };
    return problemOf('log-no-such-edition', data, place, scope);
  }
  const mark = whichMark(event, isPaper ? of : undefined);
  const missing = (what: What, text: string, known: readonly string[] = []): Problem =>
    problemOf(
      'log-no-such-set',
      { mark, what, text, edition: event.edition, nearest: nearestOf(text, known) },
      place,
      scope,
    );
  return checkDay(event, mark, { ...setting, edition: of.edition }) ?? checkPlace(event, of, missing, setting);
}

function checkDay(
  event: LogEvent,
  mark: WhichMark,
  { edition: { n, issued }, today, place, scope }: LogSetting & { readonly edition: Edition },
): Problem | null {
  const day = dayOfIso(event.at.slice(0, 10));
  const first = dayOfIso(issued);
  const data = { mark, day: event.at.slice(0, 10) };
  // A day either side: a client may live beyond the line where the date changes.
  if (day === undefined || day > addDays(today, 1)) {
    return problemOf('log-from-the-future', { ...data, today: isoOfDay(today) }, place, scope);
  }
  if (first !== undefined && day < addDays(first, -1)) {
    return problemOf('log-before-edition', { ...data, edition: n, issued }, place, scope);
  }
  return null;
}

type Missing = (what: What, text: string, known?: readonly string[]) => Problem;

function checkPlace(
  event: LogEvent,
  { block, places }: EditionPlaces,
  missing: Missing,
  setting: LogSetting,
): Problem | null {
  if (event.kind === 'note' || event.kind === 'void') return null;
  const key = event.kind === 'set' ? readSetKey(event.key) : null;
  if (key !== null && key.block !== block) return missing('block', String(key.block));
  const occurrence = key?.occurrence ?? ('occurrence' in event ? event.occurrence : 0);
  const planned = places.get(occurrence);
  if (planned === undefined) return missing('session', String(occurrence));
  const row = key?.row ?? ('row' in event ? event.row : undefined);
  if (row !== undefined && !planned.rows.has(row)) return missing('row', row, [...planned.rows.keys()]);
  if (event.kind !== 'set') return null;
  // An extra set has a key of its own, in a row that is there.
  if (event.done !== 'extra' && !planned.sets.has(event.key)) return missing('set', event.key);
  const known = exercisesOf(planned, row);
  if (known.has(event.exercise) || setting.exercises.has(event.exercise)) return null;
  return missing('exercise', event.exercise, [...known, ...setting.exercises]);
}

/** What the edition itself names in a row: it holds even where the library has lost the exercise since. */
function exercisesOf({ rows }: PlannedPlace, row: string | undefined): ReadonlySet<string> {
  const item = rows.get(row ?? '')?.item;
  if (item === undefined) return new Set();
  const versions = [...item.easier, ...item.harder].map(({ exercise }) => exercise);
  const sets = item.sets.flatMap(({ exercise, otherwise = [], choose = [] }) => [
    exercise,
    ...otherwise.map((one) => one.exercise),
    ...choose.map((one) => one.exercise),
  ]);
  return new Set([item.exercise, ...versions, ...sets].flatMap((id) => (id === undefined ? [] : [id])));
}
