/**
 * The order of the leaves of a web booklet and their addresses in the page. A leaf is what stands on the screen at
 * once: a cover, a week, the opening of a session, one exercise within it. It only orders what the booklet says.
 */
import type {
  Booklet,
  BookletLabel,
  CalendarPart,
  Cell,
  CoverPart,
  ExercisePart,
  HowToPart,
  Part,
  PartnerPart,
  RecordPart,
  SafetyPart,
  SessionPart,
  SessionRow,
  WeekHead,
} from '../../src/model/booklet.js';
import { compareIds, type ExerciseId } from '../../src/model/identity.js';
import type { Drawings } from '../../src/model/picture.js';
import type { Catalogue } from '../../src/words/catalogue.js';
import type { DrawingWords } from '../../src/words/drawing-words.js';
import type { PageWords } from '../../src/words/page-words.js';
import type { PlacedPhotograph } from '../photograph.js';

/** One session on one day. */
export interface Day {
  readonly id: string;
  readonly session: SessionPart;
  readonly head: WeekHead;
  readonly turns: readonly Turn[];
}

/** One exercise in one session on one day. */
export interface Turn {
  readonly id: string;
  readonly row: SessionRow;
  readonly cell: Cell;
}

export interface WeekOfDays {
  readonly id: string;
  readonly week: number;
  readonly easy: boolean;
  readonly days: readonly Day[];
}

interface Named {
  readonly id: string;
  readonly title: string;
}
export type Leaf = Named &
  (
    | { readonly kind: 'cover'; readonly part: CoverPart }
    | { readonly kind: 'how-to'; readonly part: HowToPart }
    | { readonly kind: 'safety'; readonly part: SafetyPart }
    | { readonly kind: 'calendar'; readonly part: CalendarPart }
    | { readonly kind: 'week'; readonly week: WeekOfDays }
    | { readonly kind: 'session'; readonly day: Day }
    | { readonly kind: 'turn'; readonly day: Day; readonly turn: Turn; readonly place: number }
    | { readonly kind: 'cool-down'; readonly day: Day }
    | { readonly kind: 'exercise'; readonly part: ExercisePart }
    | { readonly kind: 'partner'; readonly part: PartnerPart }
    | { readonly kind: 'record'; readonly part: RecordPart }
  );

/** What every page of one booklet needs to know of the whole. */
export interface Book {
  readonly booklet: Booklet;
  readonly labels: Readonly<Record<BookletLabel, string>>;
  readonly words: PageWords;
  readonly weeks: readonly WeekOfDays[];
  /** In the order they are turned: week by week. */
  readonly leaves: readonly Leaf[];
  /** In the order they stand in the page. */
  readonly inPage: readonly Leaf[];
  readonly exercises: ReadonlyMap<ExerciseId, ExercisePart>;
  /** Of no exercise that a photograph stands for. */
  readonly drawings: Drawings;
  readonly photographs: ReadonlyMap<ExerciseId, PlacedPhotograph>;
  readonly drawingWords: DrawingWords;
}

export const exerciseLeafId = (id: ExerciseId): string => `exercise-${id}`;
export const weekLeafId = (week: number): string => `week-${week}`;

function daysOf(session: SessionPart): readonly Day[] {
  const seen = new Map<number, number>();
  return session.weeks.map((head) => {
    const nth = seen.get(head.week) ?? 0;
    seen.set(head.week, nth + 1);
    const id = `w${head.week}-${session.id}${nth === 0 ? '' : `-${nth + 1}`}`;
    const turns = session.rows.flatMap((row): readonly Turn[] => {
      const cell = row.cells.filter(({ week }) => week === head.week)[nth];
      return cell ? [{ id: `${id}--${row.row}`, row, cell }] : [];
    });
    return { id, session, head, turns };
  });
}

/** Every day of the block by week; within a week by date, then by the session's id. */
function weeksOf(booklet: Booklet): readonly WeekOfDays[] {
  const days = booklet.parts.flatMap((part) => (part.kind === 'session' ? daysOf(part) : []));
  const numbers = [...new Set(days.map(({ head }) => head.week))].sort((a, b) => a - b);
  return numbers.map((week) => {
    const own = days.filter(({ head }) => head.week === week);
    own.sort((a, b) => compareIds(a.head.date, b.head.date) || compareIds(a.session.id, b.session.id));
    return { id: weekLeafId(week), week, easy: own.some(({ head }) => head.easy), days: own };
  });
}

function leavesOfDay(day: Day, coolDown: string): readonly Leaf[] {
  return [
    { kind: 'session', id: day.id, title: day.session.title, day },
    ...day.turns.map((turn, i): Leaf => {
      const title = turn.cell.version === '' ? turn.row.name : turn.cell.version;
      return { kind: 'turn', id: turn.id, title, day, turn, place: i + 1 };
    }),
    ...(day.session.coolDown.length === 0
      ? []
      : [{ kind: 'cool-down' as const, id: `${day.id}-cool-down`, title: coolDown, day }]),
  ];
}

/** The leaves of one part; `weekLeaves` are those of all sessions together, which stand where the first session does. */
function leavesOfPart(part: Part, weekLeaves: readonly Leaf[], first: SessionPart | undefined): readonly Leaf[] {
  switch (part.kind) {
    case 'cover':
      return [{ kind: part.kind, id: 'cover', title: part.title, part }];
    case 'how-to':
      return [{ kind: part.kind, id: 'how-to', title: part.title, part }];
    case 'safety':
      return [{ kind: part.kind, id: 'safety', title: part.title, part }];
    case 'calendar':
      return [{ kind: part.kind, id: 'calendar', title: part.title, part }];
    case 'session':
      return part === first ? weekLeaves : [];
    case 'exercise':
      return [{ kind: part.kind, id: exerciseLeafId(part.id), title: part.title, part }];
    case 'partner':
      return [{ kind: part.kind, id: 'partner', title: part.title, part }];
    case 'record':
      return [{ kind: part.kind, id: 'record', title: part.title, part }];
  }
}

function leavesOf(booklet: Booklet, weeks: readonly WeekOfDays[]): readonly Leaf[] {
  const weekLeaves = weeks.flatMap((week): readonly Leaf[] => [
    { kind: 'week', id: week.id, title: `${booklet.labels.week} ${week.week}`, week },
    ...week.days.flatMap((day) => leavesOfDay(day, booklet.labels['cool-down'])),
  ]);
  const first = booklet.parts.find((part) => part.kind === 'session');
  return booklet.parts.flatMap((part) => leavesOfPart(part, weekLeaves, first));
}

const dayOf = (leaf: Leaf): Day | undefined => ('day' in leaf ? leaf.day : undefined);

/**
 * What is alike stands together: a host packs what it sends by what stood within the last 32 KB (DEFLATE, RFC 1951), and a whole
 * week of many sessions is longer than that. First each week at a glance, with the openings and the ends of its sessions; then, as
 * on paper, the exercises of one session in all its weeks, session by session.
 */
function besideTheirLike(leaves: readonly Leaf[]): readonly Leaf[] {
  const inWeeks = leaves.filter((leaf) => leaf.kind === 'week' || dayOf(leaf) !== undefined);
  const sessions = besideTheirPages([...new Set(inWeeks.flatMap((leaf) => dayOf(leaf)?.session ?? []))]);
  const sorted = [
    ...inWeeks.filter(({ kind }) => kind !== 'turn'),
    ...sessions.flatMap((own) => inWeeks.filter((leaf) => leaf.kind === 'turn' && leaf.day.session === own)),
  ];
  const first = leaves.findIndex((leaf) => inWeeks.includes(leaf));
  const rest = partnerBesideWatched(leaves.filter((leaf) => !inWeeks.includes(leaf)));
  return first < 0 ? rest : [...rest.slice(0, first), ...sorted, ...rest.slice(first)];
}

/**
 * The pages of exercises that follow begin with those of the first session: so it comes last. Of two sessions the second is as much
 * like the first as the pages are, and they stay as they are.
 */
function besideTheirPages(sessions: readonly SessionPart[]): readonly SessionPart[] {
  const [first, ...others] = sessions;
  return first === undefined || others.length < 2 ? sessions : [...others, first];
}

/**
 * What the partner is to watch and say stands on the pages of the same exercises, nearly all of which come first. Among them it stands a
 * quarter of the way in: near the days of the first session as well, and no page far from it.
 */
function partnerBesideWatched(leaves: readonly Leaf[]): readonly Leaf[] {
  const partner = leaves.find((leaf) => leaf.kind === 'partner');
  if (partner?.kind !== 'partner') return leaves;
  const others = leaves.filter((leaf) => leaf !== partner);
  const pages = others.findIndex(({ kind }) => kind === 'exercise');
  if (pages < 0) return leaves;
  const after = pages + Math.floor(partner.part.watched.length / 4);
  return [...others.slice(0, after), partner, ...others.slice(after)];
}

export function bookOf(
  booklet: Booklet,
  { page: words, drawing: drawingWords }: Pick<Catalogue, 'page' | 'drawing'>,
  drawings: Drawings = new Map(),
  photographs: Book['photographs'] = new Map(),
): Book {
  const weeks = weeksOf(booklet);
  const pages = booklet.parts.flatMap((part) => (part.kind === 'exercise' ? [part] : []));
  const leaves = leavesOf(booklet, weeks);
  return {
    booklet,
    drawings,
    photographs,
    drawingWords,
    labels: booklet.labels,
    words,
    weeks,
    leaves,
    inPage: besideTheirLike(leaves),
    exercises: new Map(pages.map((page) => [page.id, page])),
  };
}
