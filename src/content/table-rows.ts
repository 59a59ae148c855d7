/** A table's rows by the names of its columns, which may stand in any order. */
import type { Place } from '../model/place.js';
import { plainText } from '../model/prose.js';
import type { Block, Cell } from '../prose/blocks.js';
import { idIn, resolveTarget } from './link-target.js';
import { nearestOf } from './nearest.js';
import { type OpenFile, readAt } from './open-file.js';
import type { Reader } from './read-value.js';

type Table = Extract<Block, { kind: 'table' }>;

export interface NamedRow<Column extends string> {
  readonly place: Place;
  /** The cell under a column; `undefined` where it is empty or the column is absent. */
  cell(column: Column): Cell | undefined;
  /** Where a cell stands or should stand. */
  placeOf(column: Column): Place;
}

export interface Columns<Column extends string> {
  readonly known: readonly Column[];
  readonly needed: readonly Column[];
}

/** Complains of columns unknown, missing or twice, of rows with cells to spare, and of needed cells left empty. */
export function rowsOf<Column extends string>(
  file: OpenFile,
  table: Table,
  columns: Columns<Column>,
): readonly NamedRow<Column>[] {
  const at = new Map<Column, number>();
  const misspelt = new Set<string>();
  table.head.forEach((cell, index) => {
    const name = plainText(cell.line);
    const column = columns.known.find((one) => one.toLowerCase() === name.trim().toLowerCase());
    if (column === undefined) {
      const nearest = nearestOf(name, columns.known);
      misspelt.add(nearest);
      file.report.add({ code: 'unknown-column', data: { column: name, nearest, known: columns.known } }, cell.place);
    } else if (at.has(column)) file.report.add({ code: 'column-twice', data: { column } }, cell.place);
    else at.set(column, index);
  });
  for (const column of columns.needed) {
    if (!at.has(column) && !misspelt.has(column))
      file.report.add({ code: 'missing-column', data: { column } }, table.place);
  }
  return table.rows.map((row) => {
    const spare = row.cells[table.head.length];
    if (spare) {
      const data = { cells: row.cells.length, columns: table.head.length };
      file.report.add({ code: 'too-many-cells', data }, spare.place);
    }
    const cell = (column: Column): Cell | undefined => {
      const found = row.cells[at.get(column) ?? -1];
      return found && found.raw.trim() !== '' ? found : undefined;
    };
    const placeOf = (column: Column): Place => row.cells[at.get(column) ?? -1]?.place ?? row.place;
    for (const column of columns.needed) {
      if (at.has(column) && !cell(column)) file.report.add({ code: 'empty-cell', data: { column } }, placeOf(column));
    }
    return { place: row.place, cell, placeOf };
  });
}

/** A cell's value; `undefined` where it is empty or cannot be read, and then it has been complained of. */
export function readCell<Value>(file: OpenFile, cell: Cell | undefined, reader: Reader<Value>): Value | undefined {
  return cell && readAt(file, cell.raw, cell.place, reader);
}

/** The id of the exercise a cell links to. */
export function readExerciseLink(file: OpenFile, cell: Cell | undefined): string | undefined {
  if (!cell) return undefined;
  const [link] = cell.links;
  if (!link) {
    file.report.add({ code: 'not-a-link', data: { text: plainText(cell.line), to: 'exercise' } }, cell.place);
    return undefined;
  }
  const target = resolveTarget(file.path, link.target);
  const id = target.kind === 'file' ? idIn('exercises', target.path) : undefined;
  if (id === undefined) {
    file.report.add({ code: 'link-elsewhere', data: { target: link.target, to: 'exercise' } }, link.place);
  }
  return id;
}
