/** Under an exercise's columns: what the columns are too narrow for, each sentence once, led by the weeks it holds for. */
import type { Cell, SessionRow } from '../model/booklet.js';
import { choiceTable } from './choice-table.js';
import type { Slug } from './lay-out-blocks.js';
import type { StyledRun } from './lay-out-lines.js';
import { ended, layOutRemarks, type Remark } from './lay-out-remarks.js';
import { weekRuns } from './lay-out-week-runs.js';
import type { Tag } from './page.js';
import type { Setting } from './setting.js';
import { type WeekNote, weekNotes } from './week-notes.js';

const gateOf = (cell: Cell): string => (cell.gate ? `${cell.gate.needs} ${cell.gate.otherwise}` : '');

type Said = (cell: Cell) => string;
const notesOf = (row: SessionRow, said: readonly Said[]): readonly WeekNote[] =>
  said.flatMap((text) => weekNotes(row.cells.map((cell) => ({ week: cell.week, text: text(cell) }))));

/** How every set is done, run on in one paragraph. */
const MANNER: readonly Said[] = [(cell) => cell.effort, (cell) => cell.tempo, (cell) => cell.how.join(' ')];
/** What must not be overlooked: each on a line of its own. */
const CONDITIONS: readonly Said[] = [(cell) => cell.trial ?? '', gateOf];

/** Led by their weeks, and by none where they hold for every week of the row. */
function numbered(said: readonly { readonly week: number; readonly text: string }[], row: SessionRow): Remark {
  const notes = weekNotes(said);
  return { kind: 'led', notes: notes.map((note) => ({ ...note, always: note.weeks.length === row.cells.length })) };
}

const asked = (texts: readonly string[]): readonly Remark[] => texts.map((text) => ({ kind: 'asked', text }));

function mannerOf(row: SessionRow): readonly Remark[] {
  const notes = notesOf(row, MANNER).map((note) => ({ ...note, text: ended(note.text) }));
  return notes.length === 0 ? [] : [{ kind: 'said', runs: (of) => weekRuns(notes, of) }];
}

const NO_BREAK = '\u00a0';

/** What makes each load that is put together, once for all weeks: a lighter set before the work has its own pieces. */
function piecesOf(row: SessionRow): readonly Remark[] {
  const loads = row.cells.flatMap((cell) => cell.sets.flatMap((set) => (set.load ? [set.load] : [])));
  const made = new Map(
    loads.flatMap((load) =>
      load.pieces === '' ? [] : [[`${load.figure}${NO_BREAK}${load.unit}`, load.pieces] as const],
    ),
  );
  if (made.size === 0) return [];
  const runs = (of: Tag): readonly StyledRun[] =>
    [...made].flatMap(([load, pieces], i): readonly StyledRun[] => [
      ...(i > 0 ? [{ style: 'label' as const, text: `${NO_BREAK}${NO_BREAK} `, tag: of }] : []),
      { style: 'label-strong', text: `${load}${NO_BREAK}${NO_BREAK}`, tag: of },
      { style: 'label', text: ended(pieces), tag: of },
    ]);
  return [{ kind: 'said', runs }];
}

/** What a test is, and a line for each number it finds. */
function testOf(row: SessionRow): readonly Remark[] {
  const tested = row.cells.flatMap(({ week, test }) => (test ? [{ week, text: test.says, notes: test.notes }] : []));
  return tested.length === 0 ? [] : [numbered(tested, row), ...asked(tested.flatMap(({ notes }) => notes))];
}

const sameChoices = (cell: Cell): string => JSON.stringify(cell.choose?.rows ?? null);

/** The questions of a feeler set, where what is found is written down, and what it leads to. */
const chosenIn = (cells: readonly Cell[], answers: Remark, row: SessionRow): readonly Remark[] => [
  numbered(
    cells.map(({ week, choose }) => ({ week, text: choose?.intro ?? '' })),
    row,
  ),
  ...asked(weekNotes(cells.map(({ week, choose }) => ({ week, text: choose?.note ?? '' }))).map(({ text }) => text)),
  answers,
];

/** Weeks whose choices are the same share one list of them; where lists differ, they are one table, if they can be. */
function choicesOf(row: SessionRow): readonly Remark[] {
  const chosen = row.cells.filter(({ choose }) => choose !== undefined);
  const groups = new Map<string, Cell[]>();
  for (const cell of chosen) groups.set(sameChoices(cell), [...(groups.get(sameChoices(cell)) ?? []), cell]);
  const lines =
    groups.size < 2 ? null : choiceTable(chosen.map(({ week, choose }) => ({ week, rows: choose?.rows ?? [] })));
  if (lines !== null) return chosenIn(chosen, { kind: 'table', lines }, row);
  return [...groups.values()].flatMap((cells) =>
    chosenIn(cells, { kind: 'choice', rows: cells[0]?.choose?.rows ?? [] }, row),
  );
}

/** `cell` makes the cell of the table they stand in; it is not called where nothing needs saying. `close` saves lines. */
export function layOutRowNotes(row: SessionRow, cell: () => Tag, close: boolean, setting: Setting): readonly Slug[] {
  const conditions = notesOf(row, CONDITIONS);
  const remarks: readonly Remark[] = [
    ...mannerOf(row),
    ...piecesOf(row),
    ...(conditions.length === 0 ? [] : [{ kind: 'led' as const, notes: conditions }]),
    ...testOf(row),
    ...choicesOf(row),
  ];
  return remarks.length === 0 ? [] : layOutRemarks(remarks, cell(), close, setting);
}
