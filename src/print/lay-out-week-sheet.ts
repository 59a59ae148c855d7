/**
 * A week on one sheet, to hang up: its sessions with what is done in them, a foot for each set, and strips to write in.
 * What it says of a set is the booklet's own; what it leaves out is on the page it names.
 */
import type { Booklet, CalendarPart, Cell, CoverPart, Part, SessionPart, SessionRow } from '../model/booklet.js';
import type { Speech } from '../words/speech.js';
import { acrossColumns, layOutCard } from './card-sheet.js';
import { layOutCode, type WebAddress } from './code.js';
import { type Block, block, linesOf, rule, type Slug, slugsOf, together, withNext } from './lay-out-blocks.js';
import { drawable, layOutLines, layOutParagraph, type StyledRun, taggedRuns } from './lay-out-lines.js';
import { packed } from './lay-out-packed.js';
import { tallyWidth } from './lay-out-tally.js';
import { layOutTallyRows } from './lay-out-tally-row.js';
import type { Measure } from './measure.js';
import { type Box, moved, type Page, type Tag, tag } from './page.js';
import { LINE, mm } from './sheet.js';

export interface WeekSheets {
  readonly booklet: Booklet;
  readonly speech: Speech;
  readonly measure: Measure;
  readonly address?: WebAddress;
}

const COLUMNS = 2;
const NO_BREAK = '\u00a0';
const GAP = 8;
/** As long as a week's strip in the booklet. */
const LEAST_STRIP = mm(20);

/** From roomy to close: what may be left to the booklet. Loads, gates and what to do otherwise never are. */
interface Room {
  readonly warmUp: boolean;
  readonly rest: boolean;
  /** Empty lines above an exercise, for its rule to stand in. */
  readonly air: 0 | 1;
  /** Sides beside each other, and how a set is done beside its feet, over the strip. */
  readonly beside: boolean;
}
const ROOMS: readonly Room[] = [
  { warmUp: true, rest: true, air: 1, beside: false },
  { warmUp: true, rest: true, air: 0, beside: false },
  { warmUp: true, rest: true, air: 0, beside: true },
  { warmUp: false, rest: true, air: 0, beside: true },
  { warmUp: false, rest: false, air: 0, beside: true },
];

const isKind =
  <Kind extends Part['kind']>(kind: Kind) =>
  (part: Part): part is Extract<Part, { readonly kind: Kind }> =>
    part.kind === kind;

/** A page for each week that has sessions; a second one only where a week's work does not fit on one. */
export function layOutWeekSheets(sheets: WeekSheets): readonly Page[] {
  const { booklet } = sheets;
  const cover = booklet.parts.find(isKind('cover'));
  const calendar = booklet.parts.find(isKind('calendar'));
  const sessions = booklet.parts.filter(isKind('session'));
  if (cover === undefined || calendar === undefined) return [];
  const pages = calendar.weeks.flatMap((week) => weekPages(week, cover, sessions, sheets));
  return pages.map((page, i) => ({ ...page, number: i + 1 }));
}

type Week = CalendarPart['weeks'][number];

function weekPages(
  week: Week,
  cover: CoverPart,
  sessions: readonly SessionPart[],
  sheets: WeekSheets,
): readonly Page[] {
  const done = sessions
    .filter(({ weeks }) => weeks.some((head) => head.week === week.week))
    .sort((a, b) => dateIn(a, week.week).localeCompare(dateIn(b, week.week)));
  if (done.length === 0) return [];
  const above = headSlugs(week, cover, sheets);
  const below = footSlugs(done, sheets);
  // The later half of them in the second column; one after the other only where they would not stand on a page so.
  const half = Math.ceil(done.length / COLUMNS);
  let best: readonly Page[] | undefined;
  for (const room of ROOMS) {
    const laid = done.map((session, i) => sessionBlocks(session, week.week, i > 0, room, sheets));
    for (const parted of [true, false]) {
      const blocks = laid.flatMap((one, i) =>
        parted && i === half ? one.map((part, n) => (n === 0 ? { ...part, breakBefore: true as const } : part)) : one,
      );
      const pages = layOutCard({ above, blocks, below, notes: sheets.booklet.labels.notes }, COLUMNS, sheets.measure);
      if (best === undefined || pages.length < best.length) best = pages;
      if (best.length === 1) return best;
    }
  }
  return best ?? [];
}

const dateIn = ({ weeks }: SessionPart, week: number): string => weeks.find((head) => head.week === week)?.date ?? '';

/** The week, and whose it is. */
function headSlugs(week: Week, cover: CoverPart, { booklet, measure }: WeekSheets): readonly Slug[] {
  const width = acrossColumns(measure.sheet);
  const heading = tag('H1');
  const [titled] = slugsOf(layOutLines([{ style: 'title', text: week.label, tag: heading }], width, measure), 'text');
  const whose = [cover.client, ...(week.easy ? [booklet.labels['easy-week']] : []), cover.edition].filter(
    (text) => text !== '',
  );
  const line = layOutLines([{ style: 'label', text: whose.join(', '), tag: tag('P') }], width, measure);
  const beside = line.flatMap(({ boxes, width: long }) => boxes.map((box) => moved(box, width - long, LINE / 2)));
  if (titled === undefined) return [];
  return [
    { ...titled, boxes: [...titled.boxes, ...beside], bookmark: { title: week.label, level: 1 } },
    { lines: 1, area: 'text', boxes: [rule(0, LINE / 2, width, 1)], withNext: true },
  ];
}

/** What is said at every session, the key of the marks, and the code that leaves out the key. */
function footSlugs(
  sessions: readonly SessionPart[],
  { booklet, speech, measure, address }: WeekSheets,
): readonly Slug[] {
  const width = acrossColumns(measure.sheet);
  const figure = tag('Figure', undefined, { alt: speech.words.paper.codeWithoutKey });
  const code = address === undefined ? undefined : layOutCode(address.open, figure, measure.sheet);
  const room = code === undefined ? width : width - code.size - GAP;
  const safety = [...new Set(sessions.map((session) => session.safety))];
  const key = booklet.parts.filter(isKind('how-to')).flatMap((part) => part.key.map(({ text }) => text));
  const said = [
    ...safety.flatMap((text) => paragraphOf([{ style: 'text-strong', text }], room, measure)),
    ...paragraphOf([{ style: 'label', text: key.join(' ') }], room, measure),
    ...(code === undefined
      ? []
      : paragraphOf([{ style: 'label', text: `${speech.words.paper.codeWithoutKey}.` }], room, measure)),
  ];
  const edge: Slug = { lines: 1, area: 'text', boxes: [rule(0, LINE / 2, width, 1)], withNext: true };
  if (code === undefined) return [edge, ...said];
  const lines = Math.max(Math.ceil(code.size / LINE), linesOf(said));
  const boxes: Box[] = code.boxes.map((box) => moved(box, width - code.size + code.quiet, 0));
  let at = 0;
  for (const slug of said) {
    boxes.push(...slug.boxes.map((box) => moved(box, 0, at * LINE)));
    at += slug.lines;
  }
  return [edge, { lines, area: 'text', boxes, withNext: false }];
}

const paragraphOf = (
  runs: readonly StyledRun[],
  width: number,
  measure: Measure,
  of: Tag = tag('P'),
): readonly Slug[] => together(slugsOf(layOutParagraph(taggedRuns(runs, of), width, measure), 'text'));

function sessionBlocks(
  session: SessionPart,
  week: number,
  apart: boolean,
  room: Room,
  sheets: WeekSheets,
): readonly Block[] {
  const { booklet, speech, measure } = sheets;
  const { textWidth } = measure.sheet;
  const head = session.weeks.find((one) => one.week === week);
  const minutes = head === undefined ? '' : speech.words.booklet.minutes(head.minutes, head.minutes);
  const warmUp = session.warmUp.map(({ name, text }) => (name === '' ? text : `${name}, ${text}.`)).join(' ');
  const of = (texts: SessionPart['short']): string => texts.find((one) => one.week === week)?.text ?? '';
  const note = of(session.notes);
  const titled = withNext([
    ...paragraphOf([{ style: 'exercise', text: session.title }], textWidth, measure, tag('H2')),
    ...paragraphOf(
      [
        { style: 'label-strong', text: `${head?.dateText ?? ''}. ` },
        { style: 'label', text: minutes },
      ],
      textWidth,
      measure,
    ),
    ...(note === '' ? [] : paragraphOf([{ style: 'label', text: note }], textWidth, measure)),
    ...(room.warmUp && warmUp !== ''
      ? paragraphOf(
          [
            { style: 'label-strong', text: `${booklet.labels['warm-up']}: ` },
            { style: 'label', text: warmUp },
          ],
          textWidth,
          measure,
        )
      : []),
  ]);
  const list = tag('L');
  const rows = session.rows.flatMap((row, i): readonly Block[] => {
    const cell = row.cells.find((one) => one.week === week);
    if (cell === undefined) return [];
    const opens = row.group !== '' && session.rows[i - 1]?.group !== row.group;
    return [rowBlock(row, cell, opens, list, room, sheets)];
  });
  const [first, ...others] = rows;
  const begun = block([...titled, ...(first?.slugs ?? [])], { whole: true, before: apart ? 1 : 0 });
  return [begun, ...others];
}

/** Name and dose on a line if both fit; what else is to be known; feet, and a strip to write in. */
function rowBlock(row: SessionRow, cell: Cell, opens: boolean, list: Tag, room: Room, sheets: WeekSheets): Block {
  const { booklet, measure } = sheets;
  const { textWidth } = measure.sheet;
  const body = tag('LBody', tag('LI', list));
  const lang = booklet.exerciseLanguage;
  const name = cell.version === '' ? row.name : `${row.name}: ${cell.version}`;
  const group = opens ? paragraphOf([{ style: 'label-strong', text: row.group }], textWidth, measure) : [];
  // Where rows stand close, the strip of the one before is rule enough.
  const white: Slug = { lines: 1, area: 'text', boxes: [rule(0, LINE - 1, textWidth)], withNext: true };
  const how = howDone(row, cell, room, sheets);
  const feet = room.beside ? feetBeside(cell, how, body, measure) : undefined;
  return block(
    together([
      ...(room.air === 1 ? [white] : []),
      ...group,
      ...nameAndDose(name, lang, cell, body, measure),
      ...(feet === undefined ? saidIn('', how, body, measure) : []),
      ...conditions(cell, body, sheets),
      feet ?? feetAndStrip(cell, measure),
    ]),
    { whole: true },
  );
}

function nameAndDose(
  name: string,
  lang: string | undefined,
  { stack }: Cell,
  body: Tag,
  measure: Measure,
): readonly Slug[] {
  const { textWidth } = measure.sheet;
  const named = taggedRuns([{ style: 'exercise', text: name, ...(lang === undefined ? {} : { lang }) }], body);
  const dose: StyledRun = { style: 'figure', text: runOn(stack), tag: body };
  const doseWidth = measure.width('figure', drawable(dose.text));
  const lines = layOutLines(named, textWidth, measure);
  const last = lines.at(-1);
  if (last !== undefined && last.width + GAP + doseWidth <= textWidth) {
    const beside = layOutLines([dose], doseWidth + 1, measure).flatMap(({ boxes }) => boxes);
    return slugsOf(lines, 'text').map((slug, i) =>
      i < lines.length - 1
        ? slug
        : { ...slug, boxes: [...slug.boxes, ...beside.map((box) => moved(box, textWidth - doseWidth, 0))] },
    );
  }
  return [...slugsOf(lines, 'text'), ...slugsOf(layOutLines([dose], textWidth, measure), 'text')];
}

const saidIn = (lead: string, text: string, body: Tag, measure: Measure): readonly Slug[] =>
  text === ''
    ? []
    : paragraphOf(
        [...(lead === '' ? [] : [{ style: 'label-strong' as const, text: `${lead}: ` }]), { style: 'label', text }],
        measure.sheet.textWidth,
        measure,
        body,
      );

/** How many sets, and how. */
function howDone(row: SessionRow, cell: Cell, room: Room, { speech }: WeekSheets): string {
  const sets = Math.max(0, ...cell.tally.map(({ strokes }) => strokes));
  const counted = sets === 0 ? '' : `${speech.words.paper.sets(sets, cell.tally.length > 1)}.`;
  const said = room.rest ? [row.sides, cell.effort, cell.tempo, row.rest] : [cell.effort, cell.tempo];
  return [counted, ...said, ...cell.how].filter((text) => text !== '').join(' ');
}

/** What decides between two loads. */
function conditions(cell: Cell, body: Tag, { booklet, measure }: WeekSheets): readonly Slug[] {
  const line = (lead: string, text: string | undefined): readonly Slug[] => saidIn(lead, text ?? '', body, measure);
  return [
    ...choices(cell, body, measure),
    ...line('', cell.trial),
    ...line(booklet.labels.needs, cell.gate?.needs),
    ...line(booklet.labels.otherwise, cell.gate?.otherwise),
    ...line('', cell.test?.says),
  ];
}

/** What a set felt like, and what it is then done with: as many answers on a line as stand on it whole. */
function choices({ choose }: Cell, body: Tag, measure: Measure): readonly Slug[] {
  if (choose === undefined) return [];
  const answers = choose.rows.map(({ felt, use }) => ({
    runs: taggedRuns(
      [
        { style: 'label', text: `${felt}:${NO_BREAK} ` },
        { style: 'label-strong', text: `${use}.` },
      ],
      body,
    ),
  }));
  return [
    ...paragraphOf([{ style: 'label', text: choose.intro }], measure.sheet.textWidth, measure, body),
    ...packed(answers, measure).map((slug): Slug => ({ ...slug, area: 'text' })),
  ];
}

/** Lines that stand over each other in a column, in one: `16 kg`, `×8` as `16 kg × 8`. */
const runOn = (stack: readonly string[]): string => stack.join(' ').replace(/×(?=\d)/gu, '× ');

function feetAndStrip(cell: Cell, measure: Measure): Slug {
  const { textWidth } = measure.sheet;
  const labelled = cell.tally.map(({ label }) => (label === '' ? 0 : measure.width('label', label) + GAP));
  const widest = Math.max(
    0,
    ...cell.tally.map(({ strokes }, i) => (labelled[i] ?? 0) + tallyWidth(Math.min(strokes, 10))),
  );
  const feetWidth = Math.min(widest + GAP, textWidth - LEAST_STRIP);
  const feet = layOutTallyRows([{ x: 0, tally: cell.tally }], feetWidth, measure);
  const strip = rule(feetWidth + GAP, feet.lines * LINE - 4, textWidth - feetWidth - GAP);
  return { ...feet, area: 'text', boxes: [...feet.boxes, strip], withNext: false };
}

/** All in the height of one row of feet; undefined where it is not wide enough for that. */
function feetBeside(cell: Cell, how: string, body: Tag, measure: Measure): Slug | undefined {
  const { textWidth } = measure.sheet;
  const sides = cell.tally.map(({ label, strokes }) => {
    const named = label === '' ? 0 : measure.width('label', label) + GAP;
    return named + tallyWidth(Math.min(strokes, 10)) + GAP;
  });
  const width = Math.max(0, ...sides);
  const left = width * sides.length + GAP;
  const lines = layOutLines([{ style: 'label', text: how, tag: body }], textWidth - left, measure);
  if (textWidth - left < LEAST_STRIP || lines.length > 1) return undefined;
  const columns = cell.tally.map((side, i) => ({ x: i * width, tally: [side] }));
  const feet = layOutTallyRows(columns, width, measure);
  const said = lines.flatMap(({ boxes }) => boxes.map((box) => moved(box, left, (feet.lines - 2) * LINE)));
  const strip = rule(left, feet.lines * LINE - 2, textWidth - left);
  return { ...feet, area: 'text', boxes: [...said, ...feet.boxes, strip], withNext: false };
}
