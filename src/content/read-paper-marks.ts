/**
 * The lines of a table from paper, held against the edition they were pencilled in → marks. Their ids follow from what
 * they say it of and the day it was typed, so that the same table gives the same marks however often it is received; a
 * note’s from its words and its day alone, so that a table typed again does not say it twice.
 */
import { v5 } from 'uuid';
import { addDays, type Day, isoOfDay } from '../model/day.js';
import type { Edition } from '../model/edition.js';
import { type RowId, readSetKey, setKey } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import type { Place } from '../model/place.js';
import type { Group, Item, PlanSession, PlanSet } from '../model/plan.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { nearestOf } from './nearest.js';
import { figuresOf, withPairs } from './paper-figures.js';
import { logOf } from './read-log.js';
import { add, type Paper, type PaperLine, type ReadPaper } from './read-paper.js';
import { type PaperSets, readPaperSession } from './read-paper-cells.js';
import { inOrder } from './report.js';
import { sameName } from './sections.js';

/** Under which the ids of marks from paper are made; a random UUID, never to be changed. */
const PAPER_IDS = '0d6c4b3e-6a55-4c1f-9a3e-5b7d8c2f1a90';
const PAPER_DEVICE = 'paper';

export interface PaperContext {
  readonly edition: Edition;
  /** Exercises by what they are called, or by id. */
  readonly names: ReadonlyMap<string, string>;
}

interface Planned {
  readonly week: number;
  readonly session: PlanSession;
}

interface Row {
  readonly item: Item;
  readonly group: Group;
}

/** The log, or what does not fit: codes of content, `log-which-session`, `log-cell-unreadable`, `log-said-twice`. */
export function readPaperMarks(
  paper: Paper,
  context: PaperContext,
): { readonly log: Log | null } & Pick<ReadPaper, 'problems'> {
  const problems: Problem[] = [];
  const { edition } = context;
  const marks = new Map<string, LogEvent>();
  const seq = Math.max(1, paper.written);
  const mark = (of: string, day: Day, what: object, place: Place, says: string): void => {
    // A note is no figure that a later table could correct: the same words of the same day are the same note for ever.
    const isNote = 'kind' in what && what.kind === 'note';
    const written = isNote ? [] : [isoOfDay(paper.written)];
    const id = v5([edition.bookletId, ...written, edition.n, of].join(' '), PAPER_IDS);
    if (marks.has(of)) add(problems, 'log-said-twice', { what: says }, place);
    // Nobody pencils the hour: noon of the day, in no particular place.
    const at = `${isoOfDay(day)}T12:00:00+00:00`;
    marks.set(of, { id, seq: isNote ? Math.max(1, day) : seq, edition: edition.n, at, ...what } as LogEvent);
  };
  for (const line of paper.lines) {
    const planned = sessionOf(line, edition, problems);
    if (planned === undefined) continue;
    const row = line.exercise && rowOf(line.exercise.value, planned.session, context);
    if (line.exercise && row === undefined) {
      problems.push(unknownRow(line.exercise.value, line.exercise.place, planned.session, context));
      continue;
    }
    const { occurrence } = planned.session;
    if (row !== undefined) markRow({ line, row, occurrence, context, problems, mark });
    markSession(line, occurrence, row?.item.row, mark);
  }
  if (problems.length > 0) return { log: null, problems: inOrder(problems) };
  const log = logOf({ schema: 1, bookletId: edition.bookletId, device: PAPER_DEVICE, events: [...marks.values()] });
  // Every cell was read within the bounds of a log.
  return 'why' in log ? { log: null, problems: [unreadable(log.why, paper)] } : { log, problems: [] };
}

const unreadable = (why: string, { client }: Paper): Problem => ({
  code: 'log-unreadable',
  severity: 'error',
  scope: FOLDER,
  place: client.place,
  data: { form: 'none', why },
});

/** What is of the session, or of the client, and stands in any of its lines. */
function markSession(
  { hurt, effort, minutes, note, day, place }: PaperLine,
  occurrence: number,
  row: RowId | undefined,
  mark: Mark,
): void {
  const within = row === undefined ? {} : { row };
  hurt.forEach((report) => {
    const of = `pain ${occurrence} ${row ?? ''} ${report.where} ${report.side ?? ''} ${report.alarm ?? ''}`;
    mark(of, day, { kind: 'pain', occurrence, ...within, report }, place, `${report.where} of session ${occurrence}`);
  });
  if (effort !== undefined || minutes !== undefined) {
    const said = {
      ...(effort === undefined ? {} : { effort: effort.value }),
      ...(minutes === undefined ? {} : { minutes: minutes.value }),
    };
    const at = (effort ?? minutes)?.place ?? place;
    mark(
      `closed ${occurrence}`,
      day,
      { kind: 'closed', occurrence, ...said },
      at,
      'how hard the session was, or how long',
    );
  }
  if (note !== undefined) mark(`note ${occurrence} ${day} ${note}`, day, { kind: 'note', text: note }, place, note);
}

type Mark = (of: string, day: Day, what: object, place: Place, says: string) => void;

const planned = ({ plan }: Edition): readonly Planned[] =>
  plan.weeks.flatMap(({ number, sessions }) => sessions.map((session) => ({ week: number, session })));

/** The one session that is meant; where a letter stands twice in a week, the one planned nearest to the day. */
function sessionOf({ session, day }: PaperLine, edition: Edition, problems: Problem[]): Planned | undefined {
  const said = readPaperSession(session.value);
  if (said === null) {
    add(problems, 'log-cell-unreadable', { column: 'Session', text: session.value }, session.place);
    return undefined;
  }
  const all = planned(edition);
  const alike = all.filter(({ session: { id } }) => id.toLowerCase() === said.id.toLowerCase());
  const found = said.week === null ? alike : alike.filter(({ week }) => week === said.week);
  const several = said.week === null && found.length > 1;
  if (found.length === 0 || several) {
    const offered = (alike.length > 0 ? alike : all).map(({ session: { id }, week }) => `${id} ${week}`);
    add(problems, 'log-which-session', { text: session.value, known: [...new Set(offered)] }, session.place);
    return undefined;
  }
  const away = ({ session: { date } }: Planned): number => Math.abs(Date.parse(date) / 86_400_000 - addDays(day, 0));
  return [...found].sort((a, b) => away(a) - away(b) || a.session.occurrence - b.session.occurrence)[0];
}

const rowsIn = (session: PlanSession): readonly Row[] =>
  session.groups.flatMap((group) => group.items.map((item) => ({ item, group })));

/** `Goblet squat as chair squat`: the row, and what was done in its place. */
const splitAs = (text: string): readonly [string, string | undefined] => {
  const [row = '', ...rest] = text.split(/\s+as\s+/i);
  return [row, rest.length === 0 ? undefined : rest.join(' as ')];
};

/** By the row's own name first, then by the exercise planned in it, where only one row has it. */
function rowOf(text: string, session: PlanSession, { names }: PaperContext): Row | undefined {
  const name = sameName(splitAs(text)[0]);
  const rows = rowsIn(session);
  const own = rows.find(({ item }) => sameName(item.row) === name);
  if (own !== undefined) return own;
  const alike = rows.filter(({ item }) =>
    [item.exercise, names.get(item.exercise) ?? ''].some((one) => sameName(one) === name),
  );
  // What is warmed up with is pencilled less than what is trained.
  const trained = alike.filter(({ group }) => group.kind !== 'warm-up' && group.kind !== 'cool-down');
  const meant = trained.length > 0 ? trained : alike;
  return meant.length === 1 ? meant[0] : undefined;
}

function unknownRow(text: string, place: Place, session: PlanSession, { names }: PaperContext): Problem {
  const known = rowsIn(session).flatMap(({ item }) => [names.get(item.exercise) ?? item.exercise, item.row]);
  const id = splitAs(text)[0];
  return { code: 'unknown-row', severity: 'error', scope: FOLDER, place, data: { id, nearest: nearestOf(id, known) } };
}

interface RowMarking {
  readonly line: PaperLine;
  readonly row: Row;
  readonly occurrence: number;
  readonly context: PaperContext;
  readonly problems: Problem[];
  readonly mark: Mark;
}

function markRow(marking: RowMarking): void {
  const { line, row, occurrence, problems, mark } = marking;
  const { item } = row;
  const main = item.sets.filter(({ kind }) => kind !== 'warm-up');
  const sets = main.length > 0 ? main : item.sets;
  const sides = [...new Set(sets.map((set) => readSetKey(set.key)?.side ?? 'both'))];
  const wanted = sides.filter((side) => line.side.value === 'both' || side === line.side.value);
  if (wanted.length === 0) {
    const data = { text: line.side.value, known: sides, nearest: '' };
    problems.push({ code: 'not-one-of', severity: 'error', scope: FOLDER, place: line.side.place, data });
    return;
  }
  if (line.sets !== undefined) {
    for (const side of wanted)
      markSets(
        marking,
        sets.filter((set) => (readSetKey(set.key)?.side ?? 'both') === side),
      );
  }
  if (line.left !== undefined) {
    const side = line.side.value;
    const what = { kind: 'reserve', occurrence, row: item.row, side, reps: line.left.value };
    mark(`reserve ${occurrence} ${item.row} ${side}`, line.day, what, line.left.place, `what was left of ${item.row}`);
  }
}

function markSets(marking: RowMarking, sets: readonly PlanSet[]): void {
  const { line, row, context, problems, mark } = marking;
  const place = line.sets?.place ?? line.place;
  const exercise = exerciseOf(marking);
  if (exercise === undefined) return;
  const did = (line.sets?.value ?? []).flatMap((said): readonly PaperSets[] => {
    const meant = withPairs(said, row.item);
    const count = meant.count === 'all' ? sets.length : meant.count;
    return Array.from({ length: count }, () => meant);
  });
  let next = 0;
  let beyond = 0;
  for (const said of did) {
    const set = said.did === 'extra' ? undefined : sets[next];
    next += said.did === 'extra' ? 0 : 1;
    // More sets than there were, and none of them counted: then the figure was meant for something else.
    if (set === undefined && said.did !== 'extra' && said.figure === undefined) {
      add(problems, 'log-cell-unreadable', { column: 'Sets', text: `${said.count} ${said.did}` }, place);
      return;
    }
    const last = sets.at(-1);
    const parts = readSetKey((set ?? last)?.key ?? '');
    if (parts === null) return;
    if (set === undefined) beyond += 1;
    const key = set?.key ?? setKey({ ...parts, ordinal: parts.ordinal + beyond });
    const figures = figuresOf(said, set, row.item, { load: (set ?? last)?.load, other: exercise.own !== null });
    if (figures === null) {
      add(problems, 'log-cell-unreadable', { column: 'Sets', text: said.load ?? '' }, place);
      return;
    }
    const what = {
      kind: 'set',
      key,
      exercise: exercise.own ?? set?.exercise ?? row.item.exercise,
      tempo: row.item.tempo,
      done: set === undefined ? 'extra' : exercise.easier && said.did === 'done' ? 'easier' : said.did,
      ...figures,
      asPlanned: said.did === 'done' && said.figure === undefined && set !== undefined && exercise.own === null,
    };
    mark(`set ${key}`, line.day, what, place, `${context.names.get(row.item.exercise) ?? row.item.row}, ${parts.side}`);
  }
}

/** What was done in the row's place, where another exercise is written; `undefined` where that one is not known. */
function exerciseOf({
  line,
  row: { item },
  context,
  problems,
}: RowMarking): { readonly own: string | null; readonly easier: boolean } | undefined {
  const written = splitAs(line.exercise?.value ?? '')[1];
  if (written === undefined) return { own: null, easier: false };
  const name = sameName(written);
  const found = [...context.names].find(([id, called]) => sameName(id) === name || sameName(called) === name)?.[0];
  if (found === undefined) {
    const known = [...context.names].flat();
    const data = { id: written, nearest: nearestOf(written, known) };
    problems.push({
      code: 'unknown-exercise',
      severity: 'error',
      scope: FOLDER,
      place: line.exercise?.place ?? line.place,
      data,
    });
    return undefined;
  }
  return { own: found, easier: item.easier.some(({ exercise }) => exercise === found) };
}
