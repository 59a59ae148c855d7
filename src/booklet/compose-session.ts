/** One session with its weeks side by side. */
import type { SessionPart, SessionRow, WeekHead, WeekText } from '../model/booklet.js';
import { type SessionId, sessionId } from '../model/identity.js';
import type { Group } from '../model/plan.js';
import { sayDate } from '../words/say-date.js';
import { composeRow } from './compose-row.js';
import { composeShort } from './compose-short.js';
import { byRow, composeCoolDown, composeWarmUp } from './compose-warm-up.js';
import { findingsIn } from './findings.js';
import { bookletLine } from './own-words.js';
import { type Column, nameOf, type Standing, type Strip, type Subject, standingsOf, WORK_GROUPS } from './subject.js';

export function composeSession(subject: Subject, strip: Strip): SessionPart {
  const { booklet } = subject.speech.words;
  const standings = standingsOf(strip, WORK_GROUPS);
  const minutes = strip.columns.map(({ session }) => session.minutes);
  const { workOnThis } = subject.client;
  return {
    kind: 'session',
    id: stripId(strip),
    title: stripTitle(subject, strip),
    minutes: booklet.minutes(Math.min(...minutes), Math.max(...minutes)),
    safety: booklet.sessionSafety(subject.who),
    notes: notesOf(subject, strip),
    short: composeShort(subject, strip),
    ...(workOnThis === undefined ? {} : { workOnThis: bookletLine({ foreign: undefined }, workOnThis) }),
    warmUp: composeWarmUp(subject, strip),
    coolDown: composeCoolDown(subject, strip),
    weeks: strip.columns.map((column) => weekHead(subject, column)),
    rows: inOrder(strip, standings).flatMap((rows): readonly SessionRow[] => {
      const row = composeRow(subject, rows, groupOf(subject, standings, rows));
      return row === undefined ? [] : [row];
    }),
  };
}

/** The second time in a week has an id of its own. A full stop cannot stand in an author's id. */
export function stripId(strip: Strip): SessionId {
  const id = strip.columns[0]?.session.id ?? '';
  return sessionId(strip.time === 1 ? id : `${id}.${strip.time}`);
}

export const stripTitle = (subject: Subject, strip: Strip): string =>
  titled(subject, strip, strip.columns[0]?.session.name ?? '');

/** `Session A`, without its name. */
export const stripLabel = (subject: Subject, strip: Strip): string => titled(subject, strip, '');

function titled({ speech }: Subject, strip: Strip, name: string): string {
  const { booklet } = speech.words;
  const title = booklet.sessionTitle(strip.columns[0]?.session.id ?? '', name);
  return strip.time === 1 ? title : booklet.again(title);
}

function weekHead({ speech }: Subject, { week, session }: Column): WeekHead {
  return {
    week: week.number,
    date: session.date,
    dateText: sayDate(session.date, speech),
    easy: week.deload,
    minutes: session.minutes,
  };
}

/**
 * Rows in the order they are trained. A row that a week leaves out keeps the place it has in the other weeks: after
 * the row before it there.
 */
function inOrder(strip: Strip, standings: readonly Standing[]): readonly (readonly Standing[])[] {
  const order: string[] = [];
  for (const column of untestedFirst(strip.columns)) {
    let before = -1;
    for (const { item } of standings.filter((standing) => standing.column === column)) {
      const known = order.indexOf(item.row);
      if (known < 0) order.splice(before + 1, 0, item.row);
      before = known < 0 ? before + 1 : known;
    }
  }
  const rows = new Map(byRow(standings).map((row) => [row[0]?.item.row ?? '', row]));
  return order.flatMap((id) => {
    const row = rows.get(id);
    return row === undefined ? [] : [row];
  });
}

/** What the plan tells the client of this session, week by week. */
function notesOf(subject: Subject, strip: Strip): readonly WeekText[] {
  const id = strip.columns[0]?.session.id;
  const weeks = strip.columns.map(({ week }) => week.number);
  return id === undefined ? [] : findingsIn(subject, { session: id }).filter(({ week }) => weeks.includes(week));
}

/** A day of tests may have its own order: the others decide first. */
function untestedFirst(columns: readonly Column[]): readonly Column[] {
  const isTested = ({ session }: Column): boolean => session.groups.some(({ kind }) => kind === 'test');
  return [...columns.filter((column) => !isTested(column)), ...columns.filter(isTested)];
}

/** How a circuit is done, or a clock leads; empty for a row done set by set. */
function groupOf(subject: Subject, standings: readonly Standing[], row: readonly Standing[]): string {
  const { signal, workAndPause } = subject.speech.words.sets;
  const { everySeconds, workSeconds, pauseSeconds, items } = row.find(({ group }) => isClocked(group))?.group ?? {};
  return [
    turnsOf(subject, standings, row),
    ...(everySeconds === undefined ? [] : [signal(everySeconds)]),
    ...(workSeconds === undefined ? [] : [workAndPause(workSeconds, pauseSeconds ?? 0, (items ?? []).length > 1)]),
  ]
    .filter((said) => said !== '')
    .join(' ');
}

const isClocked = ({ everySeconds, workSeconds }: Group): boolean =>
  everySeconds !== undefined || workSeconds !== undefined;

function turnsOf(subject: Subject, standings: readonly Standing[], row: readonly Standing[]): string {
  const circuits = row.filter(({ group }) => group.kind === 'circuit');
  const first = circuits[0];
  if (first === undefined) return '';
  const ids = [...new Set(circuits.flatMap(({ group }) => group.items.map((item) => item.row)))];
  const names = ids.flatMap((id) => {
    const other = standings.find(({ item }) => item.row === id);
    return other === undefined ? [] : [nameOf(subject, other.item.exercise)];
  });
  return subject.speech.words.sets.turnAbout(roundsByWeek(subject, circuits), names);
}

function roundsByWeek(
  { speech }: Subject,
  circuits: readonly { readonly column: Column; readonly group: Group }[],
): readonly { readonly weeks: string; readonly rounds: number }[] {
  const weeks = new Map<number, number[]>();
  for (const { column, group } of circuits)
    weeks.set(group.rounds, [...(weeks.get(group.rounds) ?? []), column.week.number]);
  return [...weeks].map(([rounds, of]) => ({ rounds, weeks: weeks.size === 1 ? '' : speech.words.sets.weekList(of) }));
}
