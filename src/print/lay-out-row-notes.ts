/** Under an exercise's columns: what the columns are too narrow for, each sentence once, led by the weeks it holds for. */
import type { Cell, ChoiceRow, SessionRow } from '../model/booklet.js';
import { type ChoiceLine, choiceTable } from './choice-table.js';
import { columnOf, hangingItem, rule, type Slug, withNext } from './lay-out-blocks.js';
import { drawable, layOutLines, type StyledRun } from './lay-out-lines.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Box, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { BASELINE, LINE, mm } from './sheet.js';
import { sayWeeks, type WeekNote, weekNotes } from './week-notes.js';

const gateOf = (cell: Cell): string => (cell.gate ? `${cell.gate.needs} ${cell.gate.otherwise}` : '');

type Said = (cell: Cell) => string;
const notesOf = (row: SessionRow, said: readonly Said[]): readonly WeekNote[] =>
  said.flatMap((text) => weekNotes(row.cells.map((cell) => ({ week: cell.week, text: text(cell) }))));

/** How every set is done, run on in one paragraph. */
const MANNER: readonly Said[] = [(cell) => cell.effort, (cell) => cell.tempo, (cell) => cell.how.join(' ')];
/** What must not be overlooked: each on a line of its own. */
const CONDITIONS: readonly Said[] = [(cell) => cell.trial ?? '', gateOf];

const ended = (text: string): string => (/[.!?:;…]$/.test(text) ? text : `${text}.`);

const mannerRuns = (notes: readonly WeekNote[], paragraph: Tag): readonly StyledRun[] =>
  weekRuns(
    notes.map((note) => ({ ...note, text: ended(note.text) })),
    paragraph,
  );

const LEAD_GAP = 8;

/** Weeks in a hanging column, the sentence beside them. */
function conditionSlugs(notes: readonly WeekNote[], td: Tag, setting: Setting): readonly Slug[] {
  const lead = (note: WeekNote): string => (note.always ? '' : sayWeeks(note.weeks));
  const widest = Math.max(0, ...notes.map((note) => setting.measure.width('label-strong', lead(note))));
  const hang = widest === 0 ? 0 : widest + LEAD_GAP;
  return notes.flatMap((note) => {
    const of = tag('P', td);
    return withNext(
      hangingItem(
        [{ style: 'label-strong', text: lead(note), tag: of }],
        [{ style: 'label', text: ended(note.text), tag: of }],
        hang,
        setting.measure,
        columnOf('table', setting.measure.sheet),
      ),
    );
  });
}

const NO_BREAK = '\u00a0';
const CHOICE_GAP = 6;
const MOST_ACROSS = 6;

/** As many side by side as stand on one line each, in rows of one length. */
function choicesAcross(rows: readonly ChoiceRow[], { measure }: Setting): number {
  const widest = Math.max(
    1,
    ...rows.flatMap(({ felt, use }) => [measure.width('label', felt), measure.width('figure', drawable(use))]),
  );
  const most = Math.max(1, Math.min(MOST_ACROSS, Math.floor(measure.sheet.tableWidth / (widest + CHOICE_GAP))));
  return Math.max(1, Math.ceil(rows.length / Math.ceil(Math.max(1, rows.length) / most)));
}

/** What a feeler set felt like, side by side, and what to use then below it. */
function choiceSlugs(rows: readonly ChoiceRow[], td: Tag, setting: Setting): readonly Slug[] {
  const list = tag('L', td);
  const across = choicesAcross(rows, setting);
  const width = setting.measure.sheet.tableWidth / across;
  const slugs: Slug[] = [];
  for (let from = 0; from < rows.length; from += across) {
    const boxes: Box[] = [];
    let lines = 0;
    rows.slice(from, from + across).forEach(({ felt, use }, i) => {
      const item = tag('LI', list);
      const set = (style: StyledRun['style'], text: string, of: Tag) =>
        layOutLines([{ style, text, tag: of }], width - CHOICE_GAP, setting.measure);
      const laid = [...set('label', felt, tag('Lbl', item)), ...set('figure', use, tag('LBody', item))];
      boxes.push(...laid.flatMap((line, n) => line.boxes.map((box) => moved(box, i * width, n * LINE))));
      lines = Math.max(lines, laid.length);
    });
    slugs.push({ lines, area: 'table', boxes, withNext: true });
  }
  return slugs;
}

const SHORT_LINE = mm(20);

/** What was left is written down here, behind its question. */
function noteSlugs(text: string, td: Tag, setting: Setting): readonly Slug[] {
  const lines = layOutLines(
    [{ style: 'label', text, tag: tag('P', td) }],
    setting.measure.sheet.tableWidth - SHORT_LINE,
    setting.measure,
  );
  return lines.map((line, i) => ({
    lines: 1,
    area: 'table',
    boxes: i < lines.length - 1 ? line.boxes : [...line.boxes, rule(line.width + 4, BASELINE + 2, SHORT_LINE - 4)],
    withNext: true,
  }));
}

const sameChoices = (cell: Cell): string => JSON.stringify(cell.choose?.rows ?? null);

/** A line for each thing it may have felt like, with what each week uses then. */
function tableSlugs(lines: readonly ChoiceLine[], td: Tag, setting: Setting): readonly Slug[] {
  const list = tag('L', td);
  const felt = lines.map(({ min, max }) => setting.sayLeft(min, max));
  const hang = Math.max(...felt.map((text) => setting.measure.width('label-strong', text))) + LEAD_GAP;
  return lines.flatMap(({ uses }, i) => {
    const item = tag('LI', list);
    const body = tag('LBody', item);
    const notes = weekNotes(uses.map(({ week, text }) => ({ week, text })));
    const led = notes.every(({ always }) => always) ? '' : `${setting.labels.week}${NO_BREAK}`;
    return withNext(
      hangingItem(
        [{ style: 'label-strong', text: felt[i] ?? '', tag: tag('Lbl', item) }],
        [{ style: 'label', text: led, tag: body }, ...weekRuns(notes, body)],
        hang,
        setting.measure,
        columnOf('table', setting.measure.sheet),
      ),
    );
  });
}

/** Their questions, where what is found is written down, and what it leads to. */
function askedSlugs(
  cells: readonly Cell[],
  row: SessionRow,
  answers: readonly Slug[],
  td: Tag,
  setting: Setting,
): readonly Slug[] {
  const questions = weekNotes(cells.map(({ week, choose }) => ({ week, text: choose?.intro ?? '' })));
  const numbered = questions.map((note) => ({ ...note, always: note.weeks.length === row.cells.length }));
  const notes = weekNotes(cells.map(({ week, choose }) => ({ week, text: choose?.note ?? '' })));
  return [
    ...conditionSlugs(numbered, td, setting),
    ...notes.flatMap(({ text }) => noteSlugs(text, td, setting)),
    ...answers,
  ];
}

/** Weeks whose choices are the same share one list of them; where lists differ, they are one table, if they can be. */
function chooseSlugs(row: SessionRow, td: Tag, setting: Setting): readonly Slug[] {
  const chosen = row.cells.filter(({ choose }) => choose !== undefined);
  const groups = new Map<string, Cell[]>();
  for (const cell of chosen) groups.set(sameChoices(cell), [...(groups.get(sameChoices(cell)) ?? []), cell]);
  const table =
    groups.size < 2 ? null : choiceTable(chosen.map(({ week, choose }) => ({ week, rows: choose?.rows ?? [] })));
  if (table !== null) return askedSlugs(chosen, row, tableSlugs(table, td, setting), td, setting);
  return [...groups.values()].flatMap((cells) =>
    askedSlugs(cells, row, choiceSlugs(cells[0]?.choose?.rows ?? [], td, setting), td, setting),
  );
}

const lineSlugs = (runs: readonly StyledRun[], setting: Setting): readonly Slug[] =>
  layOutLines(runs, setting.measure.sheet.tableWidth, setting.measure).map((line) => ({
    lines: line.lines,
    area: 'table',
    boxes: line.boxes,
    withNext: true,
  }));

/** What makes each load that is put together, once for all weeks: a lighter set before the work has its own pieces. */
function piecesRuns(row: SessionRow, paragraph: () => Tag): readonly StyledRun[] {
  const loads = row.cells.flatMap((cell) => cell.sets.flatMap((set) => (set.load ? [set.load] : [])));
  const made = new Map(
    loads.flatMap((load) =>
      load.pieces === '' ? [] : [[`${load.figure}${NO_BREAK}${load.unit}`, load.pieces] as const],
    ),
  );
  if (made.size === 0) return [];
  const of = paragraph();
  return [...made].flatMap(([load, pieces], i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'label' as const, text: `${NO_BREAK}${NO_BREAK} `, tag: of }] : []),
    { style: 'label-strong', text: `${load}${NO_BREAK}${NO_BREAK}`, tag: of },
    { style: 'label', text: ended(pieces), tag: of },
  ]);
}

/** What a test is, and a line for each number it finds. */
function testSlugs(row: SessionRow, td: Tag, setting: Setting): readonly Slug[] {
  const tested = row.cells.flatMap(({ week, test }) => (test ? [{ week, test }] : []));
  const says = weekNotes(tested.map(({ week, test }) => ({ week, text: test.says })));
  const numbered = says.map((note) => ({ ...note, always: note.weeks.length === row.cells.length }));
  const notes = tested.flatMap(({ test }) => test.notes);
  return [...conditionSlugs(numbered, td, setting), ...notes.flatMap((text) => noteSlugs(text, td, setting))];
}

/** `cell` makes the cell of the table they stand in; it is not called where nothing needs saying. */
export function layOutRowNotes(row: SessionRow, cell: () => Tag, setting: Setting): readonly Slug[] {
  const manner = notesOf(row, MANNER);
  const conditions = notesOf(row, CONDITIONS);
  const chooses = row.cells.some((one) => one.choose);
  const tests = row.cells.some((one) => one.test);
  const made = row.cells.some((one) => one.sets.some((set) => set.load !== undefined && set.load.pieces !== ''));
  if (manner.length + conditions.length === 0 && !chooses && !tests && !made) return [];
  const td = cell();
  return [
    ...(manner.length > 0 ? lineSlugs(mannerRuns(manner, tag('P', td)), setting) : []),
    ...lineSlugs(
      piecesRuns(row, () => tag('P', td)),
      setting,
    ),
    ...conditionSlugs(conditions, td, setting),
    ...testSlugs(row, td, setting),
    ...chooseSlugs(row, td, setting),
  ];
}
