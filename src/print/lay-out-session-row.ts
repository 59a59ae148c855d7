/**
 * One exercise of a session: its name on a line of its own, six weeks below it, feet of the tally, a strip to
 * write in, and what the columns are too narrow to say.
 */
import type { Cell, SessionRow, WeekHead } from '../model/booklet.js';
import { type Block, block, rule, type Slug } from './lay-out-blocks.js';
import { layOutLines, type SetLine, type StyledRun } from './lay-out-lines.js';
import { layOutRowNotes } from './lay-out-row-notes.js';
import { layOutFeet, tallyWidth } from './lay-out-tally.js';
import { type Box, type LineBox, moved, type Tag, tag } from './page.js';
import { exerciseTarget, pageNumber, type Setting } from './setting.js';
import { BASELINE, LINE, TABLE_WIDTH } from './sheet.js';

/** How roomy the rows of a session are set; chosen for the whole session, so that an opening is even. */
export interface Room {
  /** Lines of the strip to write in. */
  readonly strip: 0 | 1 | 2;
  /** What to do otherwise stands in the column too, not in the note alone. */
  readonly otherwiseInColumn: boolean;
  readonly before: number;
}

/** White at the right of a column, so that neighbours never touch. */
const COLUMN_GAP = 5;
const TALLY_ROW = 1.5 * LINE;

export interface WeekColumns {
  readonly weeks: readonly WeekHead[];
  readonly width: number;
}
export const weekColumns = (weeks: readonly WeekHead[]): WeekColumns => ({
  weeks,
  width: TABLE_WIDTH / Math.max(1, weeks.length),
});
const leftOfWeek = (columns: WeekColumns, week: number): number =>
  Math.max(
    0,
    columns.weeks.findIndex((head) => head.week === week),
  ) * columns.width;

/** Name, how it is done, and where its page is. The page stands at the right edge of the first line. */
function nameSlugs(row: SessionRow, th: Tag, setting: Setting): readonly Slug[] {
  const { measure } = setting;
  const paragraphTag = tag('P', th);
  const target = exerciseTarget(row.exercise);
  const known = setting.pageOf.size === 0 || setting.pageOf.has(target);
  const reference = known ? `${setting.labels.page}\u00a0${pageNumber(setting, target)}` : '';
  const referenceWidth = measure.width('label', reference);
  const width = TABLE_WIDTH - (known ? measure.width('label', `${setting.labels.page}\u00a000`) + 12 : 0);
  const name: StyledRun = { style: 'exercise', text: row.name, tag: paragraphTag };
  const how = [row.sides, row.rest].filter((text) => text !== '').join(' ');
  const howTag = tag('P', th);
  const oneLine = layOutLines(
    [name, { style: 'label', text: '   ', tag: paragraphTag }, { style: 'label', text: how, tag: howTag }],
    width - NAME_GAP,
    measure,
  );
  const fits = how === '' || oneLine.length === 1;
  const nameLines = layOutLines([name], width, measure);
  const lines: readonly SetLine[] = fits
    ? nameLines
    : [...nameLines, ...layOutLines([{ style: 'label', text: how, tag: howTag }], TABLE_WIDTH, measure)];
  const beside: readonly Box[] =
    fits && how !== ''
      ? layOutLines([{ style: 'label', text: how, tag: howTag }], width, measure).flatMap((line) =>
          line.boxes.map((box) => moved(box, (nameLines[0]?.width ?? 0) + NAME_GAP, 0)),
        )
      : [];
  const referenceBox: readonly Box[] = known
    ? [
        {
          kind: 'text',
          style: 'label',
          x: TABLE_WIDTH - referenceWidth,
          y: BASELINE,
          width: referenceWidth,
          text: reference,
          endsAtSpace: false,
          tag: tag('Link', tag('P', th)),
          to: target,
        },
      ]
    : [];
  return lines.map(
    (line, i): Slug => ({
      lines: line.lines,
      area: 'table',
      boxes: [
        ...(i === 0 ? [rule(0, 0, TABLE_WIDTH)] : []),
        ...line.boxes,
        ...(i === 0 ? [...beside, ...referenceBox] : []),
      ],
      withNext: true,
    }),
  );
}
const NAME_GAP = 8;

/** What stands in one week's column, line under line. */
function columnLines(cell: Cell, td: Tag, width: number, room: Room, setting: Setting): readonly SetLine[] {
  const { measure } = setting;
  const set = (style: StyledRun['style'], text: string): readonly SetLine[] =>
    layOutLines([{ style, text, tag: td }], width - COLUMN_GAP, measure);
  const otherwise = room.otherwiseInColumn && cell.gate ? cell.gate.otherwiseStack : [];
  return [
    ...(cell.version === '' ? [] : set('note-italic', cell.version)),
    ...cell.stack.flatMap((text) => set('figure', text)),
    ...(otherwise.length > 0 ? set('note-italic', setting.labels.otherwise) : []),
    ...otherwise.flatMap((text) => set('figure-plain', text)),
  ];
}

function columnsSlug(row: SessionRow, tr: Tag, columns: WeekColumns, room: Room, setting: Setting): Slug {
  const laid = columns.weeks.map((head) => {
    const cell = row.cells.find((one) => one.week === head.week);
    const td = tag('TD', tr, cell ? { spoken: cell.spoken } : {});
    return {
      x: leftOfWeek(columns, head.week),
      lines: cell ? columnLines(cell, td, columns.width, room, setting) : [],
      td,
    };
  });
  return {
    lines: Math.max(1, ...laid.map((one) => one.lines.length)),
    area: 'table',
    boxes: laid.flatMap(({ x, lines }) => lines.flatMap((line, n) => line.boxes.map((box) => moved(box, x, n * LINE)))),
    withNext: true,
  };
}

interface FeetRow {
  readonly label: string;
  readonly strokes: number;
}

/** Feet that do not fit the column stand in a row more, in fives. */
function feetRows(tally: Cell['tally'], room: number): readonly FeetRow[] {
  return tally.flatMap(({ label, strokes }): readonly FeetRow[] => {
    if (tallyWidth(strokes) <= room || strokes <= 5) return [{ label, strokes }];
    const rows: FeetRow[] = [];
    for (let left = strokes; left > 0; left -= 5)
      rows.push({ label: left === strokes ? label : '', strokes: Math.min(5, left) });
    return rows;
  });
}

/** Each side has its row; its name stands once, in the first column that has one. */
function feetSlug(row: SessionRow, columns: WeekColumns, setting: Setting): Slug {
  const { measure } = setting;
  const labels = row.cells.flatMap((cell) => cell.tally.map(({ label }) => label));
  const indent = Math.max(0, ...labels.map((label) => (label === '' ? 0 : measure.width('label', label) + 4)));
  const room = columns.width - indent - COLUMN_GAP;
  const cells = row.cells.map((cell) => ({ x: leftOfWeek(columns, cell.week), rows: feetRows(cell.tally, room) }));
  const rows = Math.max(1, ...cells.map((cell) => cell.rows.length));
  const height = rows === 1 ? 2 * LINE : rows * TALLY_ROW;
  const lines = Math.ceil(height / LINE);
  const bottom = (n: number): number => (rows === 1 ? 2 * LINE : (n + 1) * TALLY_ROW + (lines * LINE - height)) - 3;
  const said = new Set<string>();
  const boxes = cells.flatMap(({ x, rows: own }) =>
    own.flatMap((one, n): readonly Box[] => {
      const first = one.label !== '' && !said.has(one.label);
      if (first) said.add(one.label);
      const label: readonly Box[] = first
        ? [
            {
              kind: 'text',
              style: 'label',
              x,
              y: bottom(n),
              width: measure.width('label', one.label),
              text: one.label,
              endsAtSpace: false,
            },
          ]
        : [];
      return [...label, ...layOutFeet(one.strokes, x + indent, bottom(n))];
    }),
  );
  return { lines, area: 'table', boxes, withNext: true };
}

/** A strip 20 mm wide for what was done instead, ruled at its foot. */
function stripSlug(row: SessionRow, columns: WeekColumns, lines: number): readonly Slug[] {
  if (lines === 0) return [];
  const boxes: readonly LineBox[] = row.cells.map((cell) =>
    rule(leftOfWeek(columns, cell.week), lines * LINE - 3, columns.width - COLUMN_GAP),
  );
  return [{ lines, area: 'table', boxes, withNext: true }];
}

/** The line that says how a circuit goes stands over its first exercise. */
function groupSlugs(row: SessionRow, opens: boolean, table: Tag, setting: Setting): readonly Slug[] {
  if (!opens) return [];
  const td = tag('TD', tag('TR', table), { columns: 1 });
  return layOutLines([{ style: 'label-strong', text: row.group, tag: tag('P', td) }], TABLE_WIDTH, setting.measure).map(
    (line): Slug => ({ lines: 1, area: 'table', boxes: line.boxes, withNext: true }),
  );
}

const GROUP_BAR = -6;
const barred = (slug: Slug): Slug => ({
  ...slug,
  boxes: [...slug.boxes, { kind: 'line', x: GROUP_BAR, y: 0, toX: GROUP_BAR, toY: slug.lines * LINE, thickness: 1 }],
});

/** `opens`: the first of its circuit. The block is kept whole. */
export function layOutSessionRow(
  row: SessionRow,
  opens: boolean,
  table: Tag,
  columns: WeekColumns,
  room: Room,
  setting: Setting,
): Block {
  const group = groupSlugs(row, opens && row.group !== '', table, setting);
  const tr = tag('TR', table);
  const th = tag('TH', tr, { scope: 'Row' });
  const slugs = [
    ...group,
    ...nameSlugs(row, th, setting),
    columnsSlug(row, tr, columns, room, setting),
    feetSlug(row, columns, setting),
    ...stripSlug(row, columns, room.strip),
    ...layOutRowNotes(row, table, setting),
  ];
  const last = slugs.length - 1;
  const closed = slugs.map((slug, i) => (i === last ? { ...slug, withNext: false } : slug));
  return block(row.group === '' ? closed : closed.map(barred), { whole: true, before: room.before });
}
