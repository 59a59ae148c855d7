/** The calendar: a line for each week, its sessions and their dates beside each other. */
import type { CalendarPart } from '../model/booklet.js';
import { type Block, block, columnOf, HAIRLINE, paragraph, rule, type Slug, title } from './lay-out-blocks.js';
import { layOutLines, type StyledRun, styledLine } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { type Box, emptyCell, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, mm } from './sheet.js';

const WEEK_COLUMN = mm(34);
const CELL_GAP = 6;

type Week = CalendarPart['weeks'][number];

/** Columns can be headed by their session's name if each column holds one session alone. */
function columnNames(weeks: readonly Week[]): readonly string[] | undefined {
  const first = weeks.find(({ sessions }) => sessions.length > 0)?.sessions.map((session) => session.name) ?? [];
  const same = weeks.every((week) => week.sessions.every((session, i) => session.name === first[i]));
  return same && first.length > 0 ? first : undefined;
}

interface RowCell {
  readonly x: number;
  readonly width: number;
  readonly runs: readonly StyledRun[];
  /** The tag of a cell without words. */
  readonly empty?: Tag;
}

function row(cells: readonly RowCell[], setting: Setting): Slug {
  const laid = cells.map((cell) => layOutLines(cell.runs, cell.width, setting.measure));
  const lines = Math.max(1, ...laid.map((one) => one.length));
  const boxes: Box[] = laid.flatMap((one, i): Box[] => {
    const cell = cells[i];
    if (cell?.empty) return [emptyCell(cell.empty)];
    return one.flatMap((line, n) => line.boxes.map((box) => moved(box, cell?.x ?? 0, n * LINE)));
  });
  return { lines, area: 'text', boxes, withNext: true };
}

function weekRow(week: Week, table: Tag, columns: number, named: boolean, setting: Setting): Slug {
  const tr = tag('TR', table);
  const th = tag('TH', tr, { scope: 'Row' });
  const width = (setting.measure.sheet.textWidth - WEEK_COLUMN) / Math.max(1, columns);
  const head: readonly StyledRun[] = [
    { style: 'figure', text: week.label, tag: th },
    ...(week.easy ? [{ style: 'label' as const, text: ` ${setting.labels['easy-week']}`, tag: th }] : []),
  ];
  const cells = week.sessions.map((session, i) => {
    const td = tag('TD', tr);
    const name: readonly StyledRun[] = named ? [] : [{ style: 'text', text: `${session.name} `, tag: td }];
    const date: StyledRun = { style: 'figure-plain', text: session.dateText, tag: td };
    return { x: WEEK_COLUMN + i * width, width: width - CELL_GAP, runs: [...name, date, ...testRuns(session, td)] };
  });
  const missing = Array.from({ length: columns - cells.length }, (_, i): RowCell => {
    const td = tag('TD', tr);
    // In place of the first session of a week without any.
    return week.empty !== '' && i === 0
      ? {
          x: WEEK_COLUMN,
          width: setting.measure.sheet.textWidth - WEEK_COLUMN,
          runs: [{ style: 'text', text: week.empty, tag: td }],
        }
      : { x: 0, width, runs: [], empty: td };
  });
  const slug = row([{ x: 0, width: WEEK_COLUMN - CELL_GAP, runs: head }, ...cells, ...missing], setting);
  return {
    ...slug,
    boxes: [rule(0, 0, setting.measure.sheet.textWidth), ...slug.boxes.map((box) => moved(box, 0, LINE / 2))],
    lines: slug.lines + 1,
  };
}

/** After the date, or after the name that stands behind it. */
const testRuns = ({ test }: Week['sessions'][number], of: Tag): readonly StyledRun[] =>
  test === undefined ? [] : [{ style: 'note-italic', text: `\u00a0 ${test}`, tag: of }];

/** More sessions a week than this stand under one another: side by side their columns would be too narrow. */
const MOST_COLUMNS = 3;

/** A week with many sessions: its dates and names as a list beside it. */
function weekList(week: Week, table: Tag, setting: Setting): readonly Slug[] {
  const tr = tag('TR', table);
  const th = tag('TH', tr, { scope: 'Row' });
  const td = tag('TD', tr);
  const head = `${week.label}${week.easy ? `, ${setting.labels['easy-week']}` : ''}`;
  const empty = paragraph(
    week.empty === '' ? [] : [{ style: 'text', text: week.empty, tag: tag('P', td) }],
    setting.measure,
    columnOf('text', setting.measure.sheet, WEEK_COLUMN),
  );
  const sessions = week.sessions.flatMap((session) => {
    const of = tag('P', td);
    return paragraph(
      [
        { style: 'figure-plain', text: `${session.dateText}\u00a0 `, tag: of },
        { style: 'text', text: session.name, tag: of },
        ...testRuns(session, of),
      ],
      setting.measure,
      columnOf('text', setting.measure.sheet, WEEK_COLUMN),
    );
  });
  const items = [...empty, ...sessions];
  const label = layOutLines([{ style: 'figure', text: head, tag: th }], WEEK_COLUMN - CELL_GAP, setting.measure);
  const rows = Array.from(
    { length: Math.max(items.length, label.length) },
    (_, i): Slug => ({
      lines: 1,
      area: 'text',
      boxes: [
        ...(i === 0 ? [rule(0, -2, setting.measure.sheet.textWidth)] : []),
        ...(label[i]?.boxes ?? []),
        ...(items[i]?.boxes ?? (i === 0 ? [emptyCell(td)] : [])),
      ],
      withNext: true,
    }),
  );
  return rows.map((slug, i) => ({ ...slug, withNext: i < rows.length - 1 }));
}

/** What holds of all the weeks, above them. */
const notesBlocks = (part: CalendarPart, setting: Setting): readonly Block[] =>
  part.notes.map((line) => block(paragraph(styledLine(line, 'text', tag('P')), setting.measure), { before: 1 }));

export function layOutCalendar(part: CalendarPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const table = tag('Table');
  const columns = Math.max(1, ...part.weeks.map((week) => week.sessions.length));
  if (columns > MOST_COLUMNS) {
    const head = block(title(part.title, measure, { tag: tag('H2'), target, level: 1 }));
    const weeks = part.weeks.map((week) => block(weekList(week, table, setting), { whole: true, before: 1 }));
    return { start: 'flow', running: part.title, blocks: [head, ...notesBlocks(part, setting), ...weeks] };
  }
  const names = columnNames(part.weeks);
  const { textWidth } = measure.sheet;
  const width = (textWidth - WEEK_COLUMN) / columns;
  const tr = tag('TR', table);
  const heads = names?.map((text, i) => ({
    x: WEEK_COLUMN + i * width,
    width: width - CELL_GAP,
    runs: [{ style: 'label-strong' as const, text, tag: tag('TH', tr, { scope: 'Column' }) }],
  }));
  const corner = {
    x: 0,
    width: WEEK_COLUMN - CELL_GAP,
    runs: [],
    empty: tag('TH', tr, { scope: 'Column', spoken: setting.labels.week }),
  };
  const slugs = [
    ...(heads ? [row([corner, ...heads], setting)] : []),
    ...part.weeks.map((week) => weekRow(week, table, columns, heads !== undefined, setting)),
  ];
  const closing: Slug = { lines: 1, area: 'text', boxes: [rule(0, 0, textWidth, HAIRLINE)], withNext: false };
  const blocks: readonly Block[] = [
    block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
    ...notesBlocks(part, setting),
    block([...slugs, closing], { whole: true, before: 1 }),
  ];
  return { start: 'flow', running: part.title, blocks };
}
