/**
 * One exercise of a session: its name on a line of its own, its weeks below it, feet of the tally, a strip to
 * write in, and what the columns are too narrow to say.
 */
import type { Cell, SessionRow, WeekHead } from '../model/booklet.js';
import { type Block, block, rule, type Slug } from './lay-out-blocks.js';
import { drawable, layOutLines, readOn, type StyledRun } from './lay-out-lines.js';
import { layOutRowNotes } from './lay-out-row-notes.js';
import { layOutTallyRows } from './lay-out-tally-row.js';
import { type Box, emptyCell, type LineBox, moved, type SetLine, type Tag, type TextBox, tag } from './page.js';
import { exerciseTarget, pageNumber, type Setting } from './setting.js';
import { BASELINE, LINE, type Sheet } from './sheet.js';

/** How roomy the rows of a session are set; chosen for the whole session, so that an opening is even. */
export interface Room {
  /** Lines of the strip to write in. */
  readonly strip: 0 | 1 | 2;
  /** Empty lines above each exercise, for its rule to stand in; with none, only those the page has left. */
  readonly air: 0 | 1;
  /** A first set to try, and what to do otherwise, stand in the column too, not in the note alone. */
  readonly asidesInColumn: boolean;
  /** What stands in lists is run on, as much on a line as it holds. */
  readonly packed?: true;
}

/** White at the right of a column, so that neighbours never touch. */
const COLUMN_GAP = 5;
const NO_BREAK = '\u00a0';

export interface WeekColumns {
  readonly weeks: readonly WeekHead[];
  readonly width: number;
}
export const weekColumns = (weeks: readonly WeekHead[], sheet: Sheet): WeekColumns => ({
  weeks,
  width: sheet.tableWidth / Math.max(1, weeks.length),
});
const leftOfWeek = (columns: WeekColumns, week: number): number =>
  Math.max(
    0,
    columns.weeks.findIndex((head) => head.week === week),
  ) * columns.width;

const NAME_GAP = 8;

/** Name, how it is done, and where its page is. The page stands at the right edge of the first line. */
function nameSlugs(row: SessionRow, th: Tag, setting: Setting): readonly Slug[] {
  const { measure } = setting;
  const target = exerciseTarget(row.exercise);
  const known = setting.pageOf.size === 0 || setting.pageOf.has(target);
  const room = known ? measure.width('label', `${setting.labels.page}${NO_BREAK}00`) + NAME_GAP : 0;
  const nameLines = layOutLines(
    [{ style: 'exercise', text: row.name, tag: tag('P', th, setting.ownName) }],
    setting.measure.sheet.tableWidth - room,
    measure,
  );
  const how: StyledRun = {
    style: 'label',
    text: [row.sides, row.rest].filter((text) => text !== '').join(' '),
    tag: tag('P', th),
  };
  const lastLine = nameLines.at(-1)?.width ?? 0;
  const besideWidth = setting.measure.sheet.tableWidth - lastLine - NAME_GAP - (nameLines.length === 1 ? room : 0);
  const fits = measure.width('label', drawable(how.text)) <= besideWidth;
  const howLines = layOutLines([how], fits ? besideWidth : setting.measure.sheet.tableWidth, measure);
  const lines = fits
    ? nameLines.map((line, i) =>
        i === nameLines.length - 1
          ? [...line.boxes, ...(howLines[0]?.boxes.map((box) => moved(box, lastLine + NAME_GAP, 0)) ?? [])]
          : line.boxes,
      )
    : [...nameLines, ...howLines].map((line) => line.boxes);
  return lines.map((boxes, i) => ({
    lines: 1,
    area: 'table',
    boxes: i === 0 && known ? [...boxes, pageBox(target, th, setting)] : boxes,
    withNext: true,
  }));
}

function pageBox(target: string, th: Tag, setting: Setting): TextBox {
  const text = `${setting.labels.page}${NO_BREAK}${pageNumber(setting, target)}`;
  const width = setting.measure.width('label', text);
  return {
    kind: 'text',
    style: 'label',
    x: setting.measure.sheet.tableWidth - width,
    y: BASELINE,
    width,
    text,
    endsAtSpace: false,
    tag: tag('Link', tag('P', th)),
    to: target,
  };
}

/** What stands in one week's column, line under line. */
function columnLines(cell: Cell, td: Tag, width: number, asides: boolean, setting: Setting): readonly SetLine[] {
  const { measure } = setting;
  const set = (style: StyledRun['style'], text: string): readonly SetLine[] =>
    readOn(layOutLines([{ style, text, tag: td }], width - COLUMN_GAP, measure));
  const aside = (lead: string, stack: readonly string[]): readonly SetLine[] =>
    asides && stack.length > 0 ? [...set('note-italic', lead), ...figures(stack)] : [];
  const oneLineIfItFits = (stack: readonly string[]): readonly string[] => {
    const joined = drawable(stack.join(NO_BREAK));
    return measure.width('figure-plain', joined) <= width - COLUMN_GAP ? [joined] : stack;
  };
  const figures = (stack: readonly string[]): readonly SetLine[] =>
    stack.length === 0 ? [] : oneLineIfItFits(stack).flatMap((text) => set('figure-plain', text));
  // That it is a test stands in every column; with what, where there is room.
  const [test, ...tested] = cell.test?.stack ?? [];
  return [
    ...(cell.version === '' ? [] : set('note-italic', cell.version)),
    ...cell.stack.flatMap((text) => set('figure', text)),
    ...aside(setting.labels['first-set'], cell.trialStack ?? []),
    ...(test === undefined ? [] : set('note-italic', test)),
    ...figures(asides ? tested : []),
    ...aside(setting.labels.otherwise, cell.gate?.otherwiseStack ?? []),
  ];
}

/** What is read aloud replaces what stands there, so a version of its own has to be said too. */
const spokenCell = (cell: Cell): string =>
  cell.version === '' || cell.spoken.includes(cell.version) ? cell.spoken : `${cell.version}: ${cell.spoken}`;

/** Taller columns than this are parted line by line, so that even they can run over a page. */
const MOST_COLUMN_LINES = 12;

function columnsSlugs(
  row: SessionRow,
  tr: Tag,
  columns: WeekColumns,
  asides: boolean,
  setting: Setting,
): readonly Slug[] {
  const laid = columns.weeks.map((head) => {
    const cell = row.cells.find((one) => one.week === head.week);
    const td = tag('TD', tr, cell ? { spoken: spokenCell(cell) } : {});
    return {
      x: leftOfWeek(columns, head.week),
      lines: cell ? columnLines(cell, td, columns.width, asides, setting) : [],
      td,
    };
  });
  const height = Math.max(1, ...laid.map((one) => one.lines.length));
  const between = (from: number, to: number): Slug => ({
    lines: to - from,
    area: 'table',
    boxes: laid.flatMap(({ x, lines, td }): readonly Box[] => [
      ...(from === 0 && lines.length === 0 ? [emptyCell(td)] : []),
      ...lines.slice(from, to).flatMap((line, n) => line.boxes.map((box) => moved(box, x, n * LINE))),
    ]),
    withNext: true,
  });
  if (height <= MOST_COLUMN_LINES) return [between(0, height)];
  return Array.from({ length: height }, (_, line) => between(line, line + 1));
}

function feetSlug(row: SessionRow, columns: WeekColumns, setting: Setting): Slug {
  const cells = row.cells.map((cell) => ({ x: leftOfWeek(columns, cell.week), tally: cell.tally }));
  return layOutTallyRows(cells, columns.width - COLUMN_GAP, setting.measure);
}

/** A strip 20 mm wide for what was done instead, ruled at its foot. */
function stripSlug(row: SessionRow, columns: WeekColumns, lines: number): readonly Slug[] {
  if (lines === 0) return [];
  const boxes: readonly LineBox[] = row.cells.map((cell) =>
    rule(leftOfWeek(columns, cell.week), lines * LINE - 3, columns.width - COLUMN_GAP),
  );
  return [{ lines, area: 'table', boxes, withNext: true }];
}

/** A row that fills the table's width: under the columns, or over them. */
const wideCell = (table: Tag, columns: WeekColumns): Tag =>
  tag('TD', tag('TR', table), { columns: columns.weeks.length + 1 });

/** The line that says how a circuit goes stands over its first exercise, an empty line from its name where there is room. */
function groupSlugs(
  row: SessionRow,
  table: Tag,
  columns: WeekColumns,
  packed: boolean,
  setting: Setting,
): readonly Slug[] {
  const of = tag('P', wideCell(table, columns));
  const lines = layOutLines(
    [{ style: 'label-strong', text: row.group, tag: of }],
    setting.measure.sheet.tableWidth,
    setting.measure,
  );
  return lines.map((line, i): Slug => {
    const apart = i === lines.length - 1 && !packed;
    return { lines: apart ? 2 : 1, area: 'table', boxes: line.boxes, withNext: true };
  });
}

export interface LaidRow {
  readonly slugs: readonly Slug[];
  /** Done turn about with its neighbours. */
  readonly grouped: boolean;
  /** The first of its circuit, or of none. */
  readonly opens: boolean;
}

/** What is the same in several rooms is set once. */
export function once<Of, Set>(set: (of: Of) => Set): (of: Of) => Set {
  const known = new Map<Of, Set>();
  return (of) => {
    const before = known.get(of);
    if (before !== undefined) return before;
    const made = set(of);
    known.set(of, made);
    return made;
  };
}

/**
 * A row as roomy as it is asked for; of whatever is tried only one is to be drawn. Its page alone hangs on the setting it
 * is asked for in. `opens`: the first of its circuit.
 */
export function layOutSessionRow(
  row: SessionRow,
  opens: boolean,
  table: Tag,
  columns: WeekColumns,
  setting: Setting,
): (room: Room, setting: Setting) => LaidRow {
  const grouped = row.group !== '';
  const tr = tag('TR', table);
  const th = tag('TH', tr, { scope: 'Row' });
  const group = once((packed: boolean) => (opens && grouped ? groupSlugs(row, table, columns, packed, setting) : []));
  const name = once((known: Setting) => nameSlugs(row, th, known));
  const weeks = once((asides: boolean) => columnsSlugs(row, tr, columns, asides, setting));
  const feet = feetSlug(row, columns, setting);
  const strip = once((lines: number) => stripSlug(row, columns, lines));
  const notes = once((packed: boolean) => layOutRowNotes(row, () => wideCell(table, columns), packed, setting));
  return (room, known) => {
    const packed = room.packed === true;
    const slugs = [
      ...group(packed),
      ...name(known),
      ...weeks(room.asidesInColumn),
      feet,
      ...strip(room.strip),
      ...notes(packed),
    ];
    return { slugs, grouped, opens };
  };
}

const GROUP_BAR = -6;
/** Where the rule stands above an exercise: in the white over it, or midway between tails above and capitals below. */
const RULE_IN_WHITE = -5;
const RULE_IN_TIGHT = 0;

/** A laid row with `before` empty lines above it, its rule in them, and the bar of its circuit beside it. */
export function rowBlock(row: LaidRow, before: number, sheet: Sheet): Block {
  const last = row.slugs.length - 1;
  const bar = (from: number, to: number): LineBox => ({
    kind: 'line',
    x: GROUP_BAR,
    y: from,
    toX: GROUP_BAR,
    toY: to,
    thickness: 1,
  });
  const slugs = row.slugs.map(
    (slug, i): Slug => ({
      ...slug,
      boxes: [...slug.boxes, ...(row.grouped ? [bar(0, slug.lines * LINE)] : [])],
      withNext: i < last,
    }),
  );
  const joined = row.grouped && !row.opens;
  const over = (white: number): readonly LineBox[] => [
    rule(0, white > 0 ? RULE_IN_WHITE : RULE_IN_TIGHT, sheet.tableWidth),
    ...(joined && white > 0 ? [bar(-white * LINE, 0)] : []),
  ];
  return { ...block(slugs, { whole: true, before }), over };
}
