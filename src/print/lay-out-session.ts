/** A session on one opening: six weeks side by side, so that progress is seen; as roomy as the opening allows. */
import type { SessionPart } from '../model/booklet.js';
import {
  type Block,
  block,
  columnOf,
  linesOf,
  paragraph,
  rule,
  type Slug,
  title,
  together,
  withNext,
  writingField,
} from './lay-out-blocks.js';
import { layOutLines, type StyledRun, styledLine } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutSessionRow, type Room, type WeekColumns, weekColumns } from './lay-out-session-row.js';
import { type Box, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, LINES_ON_PAGE, TABLE_WIDTH } from './sheet.js';

const TABLE = columnOf('table');

/** From roomy to close. The last is used too where even it does not fit one opening. */
const ROOMS: readonly Room[] = [
  { strip: 2, otherwiseInColumn: true, before: 1 },
  { strip: 2, otherwiseInColumn: true, before: 0 },
  { strip: 1, otherwiseInColumn: true, before: 0 },
  { strip: 1, otherwiseInColumn: false, before: 0 },
  { strip: 0, otherwiseInColumn: false, before: 0 },
];

function introduction(part: SessionPart, setting: Setting, target: string): readonly Slug[] {
  const { measure } = setting;
  const line = tag('P');
  const intro: readonly StyledRun[] = [
    { style: 'label-strong', text: `${part.minutes} `, tag: line },
    { style: 'label', text: part.safety, tag: line },
  ];
  return withNext([
    ...title(part.title, measure, { tag: tag('H2'), area: 'table', target, level: 1 }),
    ...paragraph(intro, measure, TABLE),
    ...(part.workOnThis ? paragraph(styledLine(part.workOnThis, 'text', tag('P')), measure, TABLE) : []),
    ...led(setting.labels['warm-up'], part.warmUp, setting),
  ]);
}

/** Lines run on behind the word that says what they are. */
function led(label: string, lines: SessionPart['warmUp'], setting: Setting): readonly Slug[] {
  if (lines.length === 0) return [];
  const of = tag('P');
  const runs: readonly StyledRun[] = [
    { style: 'label-strong', text: `${label}   `, tag: of },
    ...lines.flatMap((line, i) => [
      ...(i > 0 ? [{ style: 'note' as const, text: ' ', tag: of }] : []),
      ...styledLine(line, 'note', of),
    ]),
  ];
  return together(paragraph(runs, setting.measure, TABLE));
}

/** Week, date and, in an easier week, its name. Set again at the head of the second page, where it is not read again. */
function weekHeads(columns: WeekColumns, setting: Setting, table?: Tag): Slug {
  const tr = table ? tag('TR', table) : undefined;
  if (tr) tag('TH', tr, { scope: 'Column' });
  const laid = columns.weeks.map((head) => {
    const of = tr ? { tag: tag('TH', tr, { scope: 'Column' }) } : {};
    const set = (runs: readonly StyledRun[]) => layOutLines(runs, columns.width - 2, setting.measure);
    return [
      ...set([{ style: 'figure', text: `${head.week}`, ...of }]),
      ...set([{ style: 'label', text: head.dateText, ...of }]),
      ...(head.easy ? set([{ style: 'note-italic', text: setting.labels['easy-week'], ...of }]) : []),
    ];
  });
  const boxes: Box[] = laid.flatMap((lines, i) =>
    lines.flatMap((line, n) => line.boxes.map((box) => moved(box, i * columns.width, n * LINE))),
  );
  return { lines: Math.max(2, ...laid.map((lines) => lines.length)), area: 'table', boxes, withNext: true };
}

/** Rows of one circuit are kept on one page if any break allows it. */
interface Opening {
  /** The row that begins the second page; absent if all stand on the first. */
  readonly breakAt?: number;
  readonly versoLines: number;
  readonly rectoLines: number;
}

function fitOpening(
  before: number,
  head: number,
  rows: readonly Block[],
  after: number,
  mayBreak: (at: number) => boolean,
): Opening | undefined {
  const height = (from: number, to: number): number =>
    rows.slice(from, to).reduce((sum, row, i) => sum + linesOf(row.slugs) + (i > 0 ? row.before : 0), 0);
  const all = before + height(0, rows.length) + after;
  if (all <= LINES_ON_PAGE) return { versoLines: all, rectoLines: 0 };
  let best: Opening | undefined;
  for (let at = 1; at < rows.length; at += 1) {
    const versoLines = before + height(0, at);
    const rectoLines = head + height(at, rows.length) + after;
    const fits = versoLines <= LINES_ON_PAGE && rectoLines <= LINES_ON_PAGE && mayBreak(at);
    const fuller = (one: Opening): number => Math.max(one.versoLines, one.rectoLines);
    if (fits && (!best || Math.max(versoLines, rectoLines) < fuller(best)))
      best = { breakAt: at, versoLines, rectoLines };
  }
  return best;
}

interface Setup {
  readonly rows: readonly Block[];
  readonly opening: Opening | undefined;
  readonly head: Slug;
}

function setRows(
  part: SessionPart,
  room: Room,
  before: number,
  after: number,
  splits: boolean,
  setting: Setting,
): Setup & { readonly table: Tag } {
  const columns = weekColumns(part.weeks);
  const table = tag('Table');
  const head = weekHeads(columns, setting, table);
  const rows = part.rows.map((row, i) =>
    layOutSessionRow(row, part.rows[i - 1]?.group !== row.group, table, columns, room, setting),
  );
  const mayBreak = (at: number): boolean =>
    splits || part.rows[at]?.group === '' || part.rows[at]?.group !== part.rows[at - 1]?.group;
  return { rows, head, table, opening: fitOpening(before + head.lines, head.lines, rows, after, mayBreak) };
}

const LEAST_NOTES = 5;

/** The chapters of a session: its opening, and notes on the right-hand page where the left one holds it all. */
export function layOutSession(part: SessionPart, setting: Setting, target: string): readonly Chapter[] {
  const intro = introduction(part, setting, target);
  const coolDown = led(setting.labels['cool-down'], part.coolDown, setting);
  const after = coolDown.length === 0 ? 0 : linesOf(coolDown) + 1;
  const set = (room: Room, splits: boolean) => setRows(part, room, linesOf(intro), after, splits, setting);
  const tries = [false, true].flatMap((splits) => ROOMS.map((room) => ({ room, splits })));
  let chosen = set({ strip: 1, otherwiseInColumn: true, before: 0 }, true);
  for (const { room, splits } of tries) {
    const one = set(room, splits);
    if (!one.opening) continue;
    chosen = one;
    break;
  }
  const { opening, rows, head } = chosen;
  const carried = weekHeads(weekColumns(part.weeks), setting);
  const left = LINES_ON_PAGE - (opening?.rectoLines ?? LINES_ON_PAGE);
  const closing: readonly Block[] = [
    ...(coolDown.length > 0 ? [block([ruledSlug(), ...coolDown], { whole: true })] : []),
    ...(opening?.breakAt !== undefined && left >= LEAST_NOTES ? [notesBlock(left, setting)] : []),
  ];
  const chapter: Chapter = {
    start: 'even',
    running: part.title,
    carried: [carried],
    blocks: [
      block(intro),
      block([{ ...head, withNext: true }]),
      ...rows.map((row, i) => (i === opening?.breakAt ? { ...row, breakBefore: true as const } : row)),
      ...closing,
    ],
  };
  const alone = opening !== undefined && opening.breakAt === undefined;
  return alone
    ? [chapter, { start: 'page', running: part.title, blocks: [notesBlock(LINES_ON_PAGE, setting)] }]
    : [chapter];
}

const ruledSlug = (): Slug => ({ lines: 1, area: 'table', boxes: [rule(0, 0, TABLE_WIDTH)], withNext: true });

function notesBlock(lines: number, setting: Setting): Block {
  const heading = paragraph(
    [{ style: 'label-strong', text: setting.labels.notes, tag: tag('P') }],
    setting.measure,
    TABLE,
  );
  const [first] = heading;
  const head: Slug = {
    lines: 1,
    area: 'table',
    boxes: [rule(0, 0, TABLE_WIDTH), ...(first?.boxes ?? [])],
    withNext: true,
  };
  return block([head, writingField(lines - 1, 'table')], { whole: true });
}
