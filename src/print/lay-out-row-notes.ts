/** Under an exercise's columns: what the columns are too narrow for, each sentence once, led by the weeks it holds for. */
import type { Cell, ChoiceRow, SessionRow } from '../model/booklet.js';
import type { Slug } from './lay-out-blocks.js';
import { layOutLines, type StyledRun } from './lay-out-lines.js';
import { type Box, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, TABLE_WIDTH } from './sheet.js';
import { sayWeeks, type WeekNote, weekNotes } from './week-notes.js';

const piecesOf = (cell: Cell): string =>
  [...new Set(cell.sets.map((set) => set.load?.pieces ?? ''))].filter((text) => text !== '').join('; ');
const gateOf = (cell: Cell): string => (cell.gate ? `${cell.gate.needs} ${cell.gate.otherwise}` : '');

function notesOf(row: SessionRow): readonly WeekNote[] {
  const said = (text: (cell: Cell) => string): readonly WeekNote[] =>
    weekNotes(row.cells.map((cell) => ({ week: cell.week, text: text(cell) })));
  return [
    ...said((cell) => cell.effort),
    ...said((cell) => cell.tempo),
    ...said(piecesOf),
    ...said((cell) => cell.trial ?? ''),
    ...said(gateOf),
  ];
}

const NOTE_SPACE = '   ';

function noteRuns(notes: readonly WeekNote[], paragraph: Tag): readonly StyledRun[] {
  return notes.flatMap((note, i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'label' as const, text: NOTE_SPACE, tag: paragraph }] : []),
    ...(note.always
      ? []
      : [{ style: 'label-strong' as const, text: `${sayWeeks(note.weeks)}\u00a0\u00a0`, tag: paragraph }]),
    { style: 'label', text: note.text, tag: paragraph },
  ]);
}

/** What a feeler set felt like, side by side, and what to use then below it. */
function choiceSlugs(rows: readonly ChoiceRow[], td: Tag, setting: Setting): readonly Slug[] {
  const list = tag('L', td);
  const across = Math.min(4, rows.length);
  const width = TABLE_WIDTH / Math.max(1, across);
  const slugs: Slug[] = [];
  for (let from = 0; from < rows.length; from += across) {
    const boxes: Box[] = [];
    let lines = 0;
    rows.slice(from, from + across).forEach(({ felt, use }, i) => {
      const item = tag('LI', list);
      const set = (style: StyledRun['style'], text: string, of: Tag) =>
        layOutLines([{ style, text, tag: of }], width - 6, setting.measure);
      const laid = [...set('label', felt, tag('Lbl', item)), ...set('figure', use, tag('LBody', item))];
      boxes.push(...laid.flatMap((line, n) => line.boxes.map((box) => moved(box, i * width, n * LINE))));
      lines = Math.max(lines, laid.length);
    });
    slugs.push({ lines, area: 'table', boxes, withNext: true });
  }
  return slugs;
}

const sameChoice = (cell: Cell): string => JSON.stringify(cell.choose ?? null);

function chooseSlugs(row: SessionRow, td: Tag, setting: Setting): readonly Slug[] {
  const groups = new Map<string, Cell[]>();
  for (const cell of row.cells) {
    if (cell.choose) groups.set(sameChoice(cell), [...(groups.get(sameChoice(cell)) ?? []), cell]);
  }
  return [...groups.values()].flatMap((cells): readonly Slug[] => {
    const choose = cells[0]?.choose;
    if (!choose) return [];
    const note = {
      text: choose.intro,
      weeks: cells.map((cell) => cell.week),
      always: cells.length === row.cells.length,
    };
    return [...lineSlugs(noteRuns([note], tag('P', td)), setting), ...choiceSlugs(choose.rows, td, setting)];
  });
}

const lineSlugs = (runs: readonly StyledRun[], setting: Setting): readonly Slug[] =>
  layOutLines(runs, TABLE_WIDTH, setting.measure).map((line) => ({
    lines: line.lines,
    area: 'table',
    boxes: line.boxes,
    withNext: true,
  }));

export function layOutRowNotes(row: SessionRow, table: Tag, setting: Setting): readonly Slug[] {
  const notes = notesOf(row);
  const chooses = row.cells.some((cell) => cell.choose);
  if (notes.length === 0 && !chooses) return [];
  const td = tag('TD', tag('TR', table), { columns: 1 });
  return [
    ...(notes.length > 0 ? lineSlugs(noteRuns(notes, tag('P', td)), setting) : []),
    ...chooseSlugs(row, td, setting),
  ];
}
