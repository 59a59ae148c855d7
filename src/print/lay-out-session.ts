/** A session on one opening: its weeks side by side, so that progress is seen; as roomy as the opening allows. */
import type { SessionPart } from '../model/booklet.js';
import { invariant } from '../model/result.js';
import { fitOpening, type Opening } from './fit-opening.js';
import {
  type Block,
  blankSlug,
  block,
  columnOf,
  linesOf,
  paragraph,
  rule,
  type Slug,
  withNext,
  writingField,
} from './lay-out-blocks.js';
import { layOutDrills, packDrills } from './lay-out-drills.js';
import { type Chapter, fillPages } from './lay-out-pages.js';
import { type HeadAir, introduction, weekHeads } from './lay-out-session-head.js';
import { type LaidRow, layOutSessionRow, once, type Room, rowBlock, weekColumns } from './lay-out-session-row.js';
import { type Box, moved, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, type Sheet } from './sheet.js';

/** From roomy to close; packed only where no other opening holds it all. */
const ROOMS: readonly Room[] = [
  { strip: 2, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: false },
  { strip: 0, air: 1, asidesInColumn: false },
  { strip: 0, air: 0, asidesInColumn: false },
  { strip: 1, air: 0, asidesInColumn: false, packed: true },
  { strip: 0, air: 0, asidesInColumn: false, packed: true },
];
/** How much white at the foot of the left page one step closer must spare. */
const STEP_COST = 6;
/** A shorter field is not worth ruling. */
const LEAST_NOTES = 5;
/** For a session that needs more than one opening however close it is set: closer only where that saves a leaf. */
const LONG_ROOMS: readonly Room[] = [
  { strip: 2, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: true },
  { strip: 1, air: 1, asidesInColumn: false },
  { strip: 1, air: 1, asidesInColumn: false, packed: true },
  { strip: 0, air: 1, asidesInColumn: false, packed: true },
];

interface Setup {
  readonly room: Room;
  readonly rows: readonly LaidRow[];
  readonly opening: Opening | undefined;
}

/** The rows of a session under the heads of their weeks, in one table; set once in each room that is tried. */
interface Rows {
  readonly head: Slug;
  readonly rowsIn: (room: Room) => readonly LaidRow[];
}

function setRows(part: SessionPart, setting: Setting): (setting: Setting) => Rows {
  const table = tag('Table');
  const columns = weekColumns(part.weeks, setting.measure.sheet);
  const head = weekHeads(columns, setting, table);
  const rows = part.rows.map((row, i) =>
    layOutSessionRow(row, part.rows[i - 1]?.group !== row.group, table, columns, setting),
  );
  return (known) => ({ head, rowsIn: once((room: Room) => rows.map((row) => row(room, known))) });
}

/** The roomiest setting whose opening is well filled; each step closer must be worth it. None if no opening holds it all. */
function bestSetup(
  { head, rowsIn }: Rows,
  linesBefore: (room: Room) => number,
  linesAfter: (room: Room) => number,
  linesOnPage: number,
): Setup | undefined {
  let best: Setup | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [step, room] of ROOMS.entries()) {
    if (least <= step * STEP_COST || (room.packed && best !== undefined)) break;
    const rows = rowsIn(room);
    const heights = rows.map((row) => ({ lines: room.air + linesOf(row.slugs), joined: isJoined(row) }));
    const opening = fitOpening(linesBefore(room) + head.lines, head.lines, heights, linesAfter(room), linesOnPage);
    const cost = opening ? opening.cost + step * STEP_COST : Number.POSITIVE_INFINITY;
    if (cost < least) {
      best = { room, rows, opening };
      least = cost;
    }
  }
  return best;
}

/** The rows of one page of the opening, how roomy they are set, and how many lines they leave. */
interface Side {
  readonly room: Room;
  readonly rows: readonly LaidRow[];
  readonly left: number;
}

/** The first that fits, of settings from roomy to close; the last one does. */
function sideOf(
  rooms: readonly Room[],
  [from, to]: readonly [number, number],
  rowsIn: (room: Room) => readonly LaidRow[],
  around: (room: Room) => number,
  linesOnPage: number,
): Side {
  let side: Side | undefined;
  for (const room of rooms) {
    const rows = rowsIn(room).slice(from, to);
    const lines = rows.reduce((sum, { slugs }) => sum + room.air + linesOf(slugs), 0);
    side = { room, rows, left: linesOnPage - around(room) - lines };
    if (side.left >= 0) break;
  }
  invariant(side !== undefined, 'there is a setting');
  return side;
}

/** Those done turn about with the rows before them. */
const isJoined = ({ grouped, opens }: LaidRow): boolean => grouped && !opens;

/** How many circuits no page can hold. */
function partedCircuits({ rows, room }: Setup, lines: number): number {
  const runs: number[] = [];
  for (const row of rows) {
    const own = linesOf(row.slugs);
    if (isJoined(row)) runs.push((runs.pop() ?? 0) + room.air + own);
    else runs.push(row.grouped ? own : 0);
  }
  return runs.filter((run) => run > lines).length;
}

/** On as few leaves as it takes, and no circuit parted that need not be; `pagesOf` fills them, `lines` stand on each. */
function longSetup({ rowsIn }: Rows, pagesOf: (setup: Setup) => number, lines: number): Setup {
  const setups = LONG_ROOMS.map((room): Setup => ({ room, rows: rowsIn(room), opening: undefined }));
  const weighed = setups.map((setup) => ({
    setup,
    parted: partedCircuits(setup, lines),
    leaves: Math.ceil(pagesOf(setup) / 2),
  }));
  return weighed.reduce((best, one) =>
    one.parted < best.parted || (one.parted === best.parted && one.leaves < best.leaves) ? one : best,
  ).setup;
}

/** Where rows are set close, the empty lines a page has left go between its exercises first, then over the first. */
const leftAir =
  (rows: number, left: number) =>
  (row: number): 0 | 1 =>
    (row === 0 ? left >= rows : left >= row) ? 1 : 0;

/**
 * A session to be laid out before the pages are known and once more when they are: what names no page is set once.
 * `target` is what leads to it.
 */
export function sessionWays(
  part: SessionPart,
  setting: Setting,
  target: string,
): (setting: Setting) => readonly Chapter[] {
  const rows = setRows(part, setting);
  return (known) => layOutSession(part, known, target, rows(known));
}

/** The chapters of a session: its opening, and notes on the right-hand page where the left one holds it all. */
function layOutSession(part: SessionPart, setting: Setting, target: string, laid: Rows): readonly Chapter[] {
  const introOf = once((air: HeadAir) => introduction(part, setting, target, air));
  const packedOf = once((air: HeadAir) => introduction(part, setting, target, air, packDrills));
  const closest = ({ air, strip, packed }: Room): readonly Slug[] =>
    packed ? packedOf(strip === 0 ? 'none' : 'least') : introOf(air === 0 ? 'least' : 'half');
  const ending = endings(part, setting);
  const carried = [weekHeads(weekColumns(part.weeks, setting.measure.sheet), setting)];
  const { head, rowsIn } = laid;
  const { linesOnPage } = setting.measure.sheet;
  const long = (setup: Setup): Chapter => ({
    start: 'even',
    running: part.title,
    carried,
    blocks: [
      ...longBegins(introOf('half'), head, setup, setting.measure.sheet),
      ...setup.rows.slice(1).map((row): Block => {
        const one = rowBlock(row, setup.room.air, setting.measure.sheet);
        return isJoined(row) ? { ...one, joined: true } : one;
      }),
      ...ending.roomy.blocks,
    ],
  });
  const endingOf = ({ packed, air }: Room): Ending => (packed && air === 0 ? ending.close : ending.roomy);
  const best = bestSetup(
    laid,
    (one) => linesOf(closest(one)),
    (one) => endingOf(one).lines,
    linesOnPage,
  );
  if (best?.opening === undefined) {
    // It begins on a left page: after another, which is not counted.
    const pagesOf = (setup: Setup): number =>
      fillPages([long(setup)], { start: 'page', running: '', blocks: [] }, linesOnPage).length - 1;
    return [long(longSetup(laid, pagesOf, linesOnPage - head.lines))];
  }
  const { opening } = best;
  const { breakAt = part.rows.length } = opening;
  const isWhole = breakAt === part.rows.length;
  // Where all has to be set as close as can be for the sake of one page, the other is as roomy as it may.
  const rooms = best.room.packed ? ROOMS : [best.room];
  const above = (room: Room): number => linesOf(closest(room)) + head.lines + (isWhole ? endingOf(room).lines : 0);
  const verso = sideOf(rooms, [0, breakAt], rowsIn, above, linesOnPage);
  const recto = sideOf(
    rooms,
    [breakAt, part.rows.length],
    rowsIn,
    (room) => head.lines + endingOf(room).lines,
    linesOnPage,
  );
  const isRoomy = verso.room.air === 1 && verso.left >= linesOf(introOf('whole')) - linesOf(introOf('half'));
  const intro = isRoomy ? introOf('whole') : closest(verso.room);
  const blocksOf = ({ room, rows, left }: Side): readonly Block[] => {
    const airOver = leftAir(rows.length, left);
    return rows.map((row, i) => rowBlock(row, room.air === 1 ? 1 : airOver(i), setting.measure.sheet));
  };
  const notes = isWhole ? 0 : recto.left - (recto.room.air === 1 ? 0 : Math.min(recto.left, recto.rows.length));
  const chapter: Chapter = {
    start: 'even',
    running: part.title,
    carried,
    blocks: [
      block(withNext([...intro, head])),
      ...blocksOf(verso),
      ...blocksOf(recto).map((one, i): Block => (i === 0 ? { ...one, breakBefore: true } : one)),
      ...endingOf((isWhole ? verso : recto).room).blocks,
      ...(notes >= LEAST_NOTES ? [notesBlock(notes, setting)] : []),
    ],
  };
  if (!isWhole) return [chapter];
  return [
    chapter,
    { start: 'page', running: part.title, blocks: [notesBlock(setting.measure.sheet.linesOnPage, setting)] },
  ];
}

/** The cool-down, and how many lines it takes. */
interface Ending {
  readonly lines: number;
  readonly blocks: readonly Block[];
}

/** Under a rule with white round it; where all is set close, under the rule alone. */
function endings(part: SessionPart, setting: Setting): { readonly roomy: Ending; readonly close: Ending } {
  const label = setting.labels['cool-down'];
  const ended = (slugs: readonly Slug[], over?: Block['over']): Ending => ({
    lines: linesOf(slugs),
    blocks: [{ ...block(slugs, { whole: true }), apart: true, ...(over === undefined ? {} : { over }) }],
  });
  const coolDown = layOutDrills(label, part.coolDown, setting);
  if (coolDown.length === 0) return { roomy: { lines: 0, blocks: [] }, close: { lines: 0, blocks: [] } };
  const over = (): readonly Box[] => [rule(0, 0, setting.measure.sheet.tableWidth)];
  return {
    roomy: ended([ruledSlug(setting), ...coolDown]),
    close: ended(packDrills(label, part.coolDown, setting), over),
  };
}

/** The heads of the weeks go with their first row, whichever page that comes to stand on. */
function longBegins(
  intro: readonly Slug[],
  head: Slug,
  { rows: [first], room: { air } }: Setup,
  sheet: Sheet,
): readonly Block[] {
  if (first === undefined) return [block(withNext([...intro, head]))];
  const { slugs, over } = rowBlock(first, air, sheet);
  const [top, ...others] = slugs;
  const ruled = top === undefined ? [] : [{ ...top, boxes: [...(over?.(air) ?? []), ...top.boxes] }];
  const white = air === 0 ? [] : withNext([blankSlug(air, 'table')]);
  return [
    block(withNext(intro)),
    { ...block([...withNext([head]), ...white, ...ruled, ...others], { whole: true }), apart: true },
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
