/** A session on one opening: its weeks side by side, so that progress is seen; as roomy as the opening allows. */
import type { SessionPart } from '../model/booklet.js';
import { fitOpening, type Opening } from './fit-opening.js';
import {
  type Block,
  blankSlug,
  block,
  columnOf,
  linesOf,
  lowered,
  paragraph,
  rule,
  type Slug,
  title,
  together,
  withNext,
  writingField,
} from './lay-out-blocks.js';
import { layOutDrills } from './lay-out-drills.js';
import { layOutLines, readOn, type StyledRun, styledLine } from './lay-out-lines.js';
import { type Chapter, fillPages } from './lay-out-pages.js';
import {
  type LaidRow,
  layOutSessionRow,
  type Room,
  rowBlock,
  type WeekColumns,
  weekColumns,
} from './lay-out-session-row.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Box, emptyCell, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';
import { weekNotes } from './week-notes.js';

/** From roomy to close. */
const ROOMS: readonly Room[] = [
  { strip: 2, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: false },
  { strip: 0, air: 1, asidesInColumn: false },
  { strip: 0, air: 0, asidesInColumn: false },
];
/** How much white at the foot of the left page one step closer must spare. */
const STEP_COST = 6;
/** A shorter field is not worth ruling. */
const LEAST_NOTES = 5;
/**
 * For a session that needs more than one opening however close it is set: strips 10 mm high where they take no page,
 * and closer than the second only where what is done turn about then stands on one page.
 */
const LONG_ROOMS: readonly Room[] = [
  { strip: 2, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: false },
  { strip: 0, air: 1, asidesInColumn: false },
];
const LONG_BY_PAGES = 2;

/** White around the coach's line: half a line above and below it, or a whole one; `least` leaves none over the weeks. */
type HeadAir = 'least' | 'half' | 'whole';

/** Title; how long and how safe; the coach's line; warm-up. An empty line parts them from the weeks. */
function introduction(part: SessionPart, setting: Setting, target: string, air: HeadAir): readonly Slug[] {
  const { measure } = setting;
  const column = columnOf('table', measure.sheet);
  const line = tag('P');
  const intro: readonly StyledRun[] = [
    { style: 'label-strong', text: `${part.minutes} `, tag: line },
    { style: 'label', text: part.safety, tag: line },
  ];
  const coach = part.workOnThis ? paragraph(styledLine(part.workOnThis, 'text', tag('P')), measure, column) : [];
  const warmUp = layOutDrills(setting.labels['warm-up'], part.warmUp, setting);
  const notes = weekParagraph('', part.notes, part.weeks.length, setting);
  const short = weekParagraph(setting.labels['bad-day'], part.short, part.weeks.length, setting);
  const blank = blankSlug(1, 'table');
  const foot = air === 'least' ? [] : [blank];
  return withNext([
    ...title(part.title, measure, { tag: tag('H2'), area: 'table', target, level: 1 }),
    ...paragraph(intro, measure, column),
    ...notes,
    ...short,
    ...(coach.length === 0 ? [] : air === 'whole' ? [blank, ...coach] : coach.map(lowered)),
    ...(warmUp.length === 0 ? [] : [blank, ...warmUp]),
    ...(coach.length > 0 && warmUp.length === 0 && air !== 'whole' ? [blank] : []),
    ...foot,
  ]);
}

/** Sentences of single weeks, equal ones once, run on behind the word that says what they are. */
function weekParagraph(label: string, texts: SessionPart['short'], weeks: number, setting: Setting): readonly Slug[] {
  const notes = weekNotes(texts).map((note) => ({ ...note, always: note.weeks.length === weeks }));
  if (notes.length === 0) return [];
  const of = tag('P');
  const lead: readonly StyledRun[] = label === '' ? [] : [{ style: 'label-strong', text: `${label}: `, tag: of }];
  const week: readonly StyledRun[] = notes.every(({ always }) => always)
    ? []
    : [{ style: 'label', text: `${setting.labels.week} `, tag: of }];
  return together(
    paragraph([...lead, ...week, ...weekRuns(notes, of)], setting.measure, columnOf('table', setting.measure.sheet)),
  );
}

/** Week, date and, in an easier week, its name. Set again at the head of the second page, where it is not read again. */
function weekHeads(columns: WeekColumns, setting: Setting, table?: Tag): Slug {
  const tr = table ? tag('TR', table) : undefined;
  const corner: readonly Box[] = tr
    ? [emptyCell(tag('TH', tr, { scope: 'Column', spoken: setting.labels.exercise }))]
    : [];
  const laid = columns.weeks.map((head) => {
    const of = tr ? { tag: tag('TH', tr, { scope: 'Column' }) } : {};
    const set = (runs: readonly StyledRun[]) => readOn(layOutLines(runs, columns.width - 2, setting.measure));
    return [
      ...set([
        { style: 'label', text: `${setting.labels.week} `, ...of },
        { style: 'figure', text: `${head.week}`, ...of },
      ]),
      ...set([{ style: 'label', text: head.dateText, ...of }]),
      ...(head.easy ? set([{ style: 'note-italic', text: setting.labels['easy-week'], ...of }]) : []),
    ];
  });
  const boxes: readonly Box[] = laid.flatMap((lines, i) =>
    lines.flatMap((line, n) => line.boxes.map((box) => moved(box, i * columns.width, n * LINE))),
  );
  return {
    lines: Math.max(2, ...laid.map((lines) => lines.length)),
    area: 'table',
    boxes: [...corner, ...boxes],
    withNext: true,
  };
}

interface Setup {
  readonly room: Room;
  readonly rows: readonly LaidRow[];
  readonly head: Slug;
  readonly opening: Opening | undefined;
}

function setRows(part: SessionPart, room: Room, before: number, after: number, setting: Setting): Setup {
  const columns = weekColumns(part.weeks, setting.measure.sheet);
  const table = tag('Table');
  const head = weekHeads(columns, setting, table);
  const rows = part.rows.map((row, i) =>
    layOutSessionRow(row, part.rows[i - 1]?.group !== row.group, table, columns, room, setting),
  );
  const heights = rows.map((row) => ({ lines: room.air + linesOf(row.slugs), joined: row.grouped && !row.opens }));
  return {
    room,
    rows,
    head,
    opening: fitOpening(before + head.lines, head.lines, heights, after, setting.measure.sheet.linesOnPage),
  };
}

/** The roomiest setting whose opening is well filled; each step closer must be worth it. None if no opening holds it all. */
function bestSetup(
  part: SessionPart,
  linesBefore: (room: Room) => number,
  after: number,
  setting: Setting,
): Setup | undefined {
  let best: Setup | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [step, room] of ROOMS.entries()) {
    if (least <= step * STEP_COST) break;
    const setup = setRows(part, room, linesBefore(room), after, setting);
    const cost = setup.opening ? setup.opening.cost + step * STEP_COST : Number.POSITIVE_INFINITY;
    if (cost < least) {
      best = setup;
      least = cost;
    }
  }
  return best;
}

/** Those done turn about with the rows before them. */
const isJoined = ({ grouped, opens }: LaidRow): boolean => grouped && !opens;

/** How many circuits no page can hold. */
function partedCircuits({ rows, head, room }: Setup, linesOnPage: number): number {
  const runs: number[] = [];
  for (const row of rows) {
    const lines = linesOf(row.slugs);
    if (isJoined(row)) runs.push((runs.pop() ?? 0) + room.air + lines);
    else runs.push(row.grouped ? lines : 0);
  }
  return runs.filter((lines) => lines > linesOnPage - head.lines).length;
}

/** On as many pages as it takes; `pagesOf` fills them. */
function longSetup(part: SessionPart, pagesOf: (setup: Setup) => number, setting: Setting): Setup {
  const setups = LONG_ROOMS.map((room): Setup => ({ ...setRows(part, room, 0, 0, setting), opening: undefined }));
  const weighed = setups.map((setup, i) => ({
    setup,
    parted: partedCircuits(setup, setting.measure.sheet.linesOnPage),
    pages: i < LONG_BY_PAGES ? pagesOf(setup) : Number.POSITIVE_INFINITY,
  }));
  return weighed.reduce((best, one) =>
    one.parted < best.parted || (one.parted === best.parted && one.pages < best.pages) ? one : best,
  ).setup;
}

/** Where rows are set close, the empty lines a page has left go between its exercises first, then over the first. */
const leftAir =
  (rows: number, left: number) =>
  (row: number): 0 | 1 =>
    (row === 0 ? left >= rows : left >= row) ? 1 : 0;

/** The chapters of a session: its opening, and notes on the right-hand page where the left one holds it all. */
export function layOutSession(part: SessionPart, setting: Setting, target: string): readonly Chapter[] {
  const introOf = (air: HeadAir): readonly Slug[] => introduction(part, setting, target, air);
  const heads = { least: introOf('least'), half: introOf('half'), whole: introOf('whole') };
  const closest = (room: Room): readonly Slug[] => (room.air === 0 ? heads.least : heads.half);
  const coolDown = layOutDrills(setting.labels['cool-down'], part.coolDown, setting);
  const after = coolDown.length === 0 ? 0 : linesOf(coolDown) + 1;
  const ending: readonly Block[] =
    coolDown.length > 0 ? [{ ...block([ruledSlug(setting), ...coolDown], { whole: true }), apart: true as const }] : [];
  const carried = [weekHeads(weekColumns(part.weeks, setting.measure.sheet), setting)];
  const long = (setup: Setup): Chapter => ({
    start: 'even',
    running: part.title,
    carried,
    blocks: [
      block(withNext([...heads.half, setup.head])),
      ...setup.rows.map((row): Block => {
        const one = rowBlock(row, setup.room.air, setting.measure.sheet);
        return isJoined(row) ? { ...one, joined: true } : one;
      }),
      ...ending,
    ],
  });
  const best = bestSetup(part, (one) => linesOf(closest(one)), after, setting);
  if (best?.opening === undefined) {
    const pagesOf = (setup: Setup): number => {
      const chapter = long(setup);
      return fillPages([chapter], chapter, setting.measure.sheet.linesOnPage).length;
    };
    return [long(longSetup(part, pagesOf, setting))];
  }
  const { opening, rows, head, room } = best;
  const { breakAt } = opening;
  const onVerso = breakAt ?? rows.length;
  const versoLeft = setting.measure.sheet.linesOnPage - opening.versoLines;
  const rectoLeft = breakAt === undefined ? 0 : setting.measure.sheet.linesOnPage - opening.rectoLines;
  const intro = room.air === 1 && versoLeft >= linesOf(heads.whole) - linesOf(heads.half) ? heads.whole : closest(room);
  const airVerso = leftAir(onVerso, versoLeft);
  const airRecto = leftAir(rows.length - onVerso, rectoLeft);
  const airOver = (i: number): 0 | 1 => (room.air === 1 ? 1 : i < onVerso ? airVerso(i) : airRecto(i - onVerso));
  const notes = rectoLeft - (room.air === 1 ? 0 : Math.min(rectoLeft, rows.length - onVerso));
  const chapter: Chapter = {
    start: 'even',
    running: part.title,
    carried,
    blocks: [
      block(withNext([...intro, head])),
      ...rows.map((row, i): Block => {
        const one = rowBlock(row, airOver(i), setting.measure.sheet);
        return i === breakAt ? { ...one, breakBefore: true } : one;
      }),
      ...ending,
      ...(notes >= LEAST_NOTES ? [notesBlock(notes, setting)] : []),
    ],
  };
  if (breakAt !== undefined) return [chapter];
  return [
    chapter,
    { start: 'page', running: part.title, blocks: [notesBlock(setting.measure.sheet.linesOnPage, setting)] },
  ];
}

const ruledSlug = ({ measure }: Setting): Slug => ({
  lines: 1,
  area: 'table',
  boxes: [rule(0, LINE / 2, measure.sheet.tableWidth)],
  withNext: true,
});

/** A heading on the second of its lines, and a field to write in. */
function notesBlock(lines: number, setting: Setting): Block {
  const [heading] = paragraph(
    [{ style: 'label-strong', text: setting.labels.notes, tag: tag('P') }],
    setting.measure,
    columnOf('table', setting.measure.sheet),
  );
  const head: Slug = {
    lines: 2,
    area: 'table',
    boxes: [
      rule(0, LINE / 2, setting.measure.sheet.tableWidth),
      ...(heading?.boxes.map((box) => moved(box, 0, LINE)) ?? []),
    ],
    withNext: true,
  };
  return block([head, writingField(lines - head.lines, 'table', setting.measure.sheet)], { whole: true });
}
