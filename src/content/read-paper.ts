/**
 * A table typed from a pencilled booklet → its lines, read but not yet held against the edition. Which client and which
 * edition it is of stands at its top.
 */
import { z } from 'zod';
import type { Day } from '../model/day.js';
import type { Side } from '../model/identity.js';
import type { PainReport } from '../model/log.js';
import type { Place } from '../model/place.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { LogProblems } from '../model/problems-log.js';
import { plainText } from '../model/prose.js';
import type { Cell } from '../prose/blocks.js';
import { type OpenFile, openFile, placeOf, readKeys } from './open-file.js';
import { readWhole } from './read-amounts.js';
import { readId } from './read-id.js';
import { type PaperSets, readHurt, readPaperSets } from './read-paper-cells.js';
import { readDate, readOneOf, readText } from './read-words.js';
import { inOrder, startReport } from './report.js';
import { leaf } from './schema-parts.js';
import { type NamedRow, readCell, rowsOf } from './table-rows.js';

const COLUMNS = ['Date', 'Session', 'Exercise', 'Side', 'Sets', 'Left', 'Hurt', 'Effort', 'Minutes', 'Note'] as const;
type Column = (typeof COLUMNS)[number];

/** What a cell says, and where. */
export interface Said<Value> {
  readonly value: Value;
  readonly place: Place;
}

export interface PaperLine {
  readonly place: Place;
  readonly day: Day;
  /** As written. */
  readonly session: Said<string>;
  /** As written; absent in a line about the session as a whole. */
  readonly exercise?: Said<string>;
  readonly side: Said<Side | 'both'>;
  readonly sets?: Said<readonly PaperSets[]>;
  /** Reps that were left, in halves. */
  readonly left?: Said<number>;
  readonly hurt: readonly PainReport[];
  /** 0–10 for the whole session. */
  readonly effort?: Said<number>;
  readonly minutes?: Said<number>;
  readonly note?: string;
}

export interface Paper {
  readonly client: Said<string>;
  readonly edition: Said<number>;
  /** The day it was typed: what is typed later counts. */
  readonly written: Day;
  readonly lines: readonly PaperLine[];
}

const FRONT = z.strictObject({
  client: leaf(readId, { description: 'The name of the client’s folder.', examples: ['torben-slade'] }),
  edition: leaf(readWhole('An edition', { least: 1, most: 9999 }), {
    description: 'The number on the booklet’s cover.',
    examples: ['1'],
  }),
  written: leaf(readDate, { description: 'The day it is typed.', examples: ['2027-01-20'] }),
});

/** Whether a text begins as a page with front matter does. */
export const looksLikePaper = (text: string): boolean => /^\ufeff?---[ \t]*\r?\n/.test(text);

export interface ReadPaper {
  /** `null` where anything could not be read: then there are problems. */
  readonly paper: Paper | null;
  readonly problems: readonly Problem[];
}

/** Reports codes of content, and `log-cell-unreadable` and `log-no-session`. */
export function readPaper(path: string, bytes: Uint8Array): ReadPaper {
  const problems: Problem[] = [];
  const file = openFile(
    path,
    bytes,
    startReport(FOLDER, problems, () => true),
  );
  const front = readKeys(file, FRONT);
  const lines = readLines(file, problems);
  if (problems.length > 0 || front === undefined) return { paper: null, problems: inOrder(problems) };
  return {
    paper: {
      client: { value: front.client, place: placeOf(file, 'client') },
      edition: { value: front.edition, place: placeOf(file, 'edition') },
      written: front.written,
      lines,
    },
    problems: [],
  };
}

function readLines(file: OpenFile, problems: Problem[]): readonly PaperLine[] {
  const lines: PaperLine[] = [];
  // Headings and words between the tables are the coach's own.
  for (const block of file.body.blocks) {
    if (block.kind !== 'table') continue;
    // A cell left empty says what the one above it says, within one table.
    let day: Day | undefined;
    let session: Said<string> | undefined;
    for (const row of rowsOf<Column>(file, block, { known: COLUMNS, needed: [] })) {
      day = readCell(file, row.cell('Date'), readDate) ?? day;
      session = wordsOf(row.cell('Session')) ?? session;
      for (const [column, value] of [['Date', day] as const, ['Session', session] as const]) {
        if (value === undefined && !row.cell(column)) add(problems, 'log-no-session', { column }, row.placeOf(column));
      }
      const line = readLine(file, row, problems);
      if (day !== undefined && session !== undefined) lines.push({ ...line, day, session });
    }
  }
  return lines;
}

const wordsOf = (cell: Cell | undefined): Said<string> | undefined =>
  cell && { value: plainText(cell.line).replace(/\s+/g, ' ').trim(), place: cell.place };

const readEffort = readWhole('How hard it was', { least: 0, most: 10 });
const readMinutes = readWhole('How long it took', { least: 0, most: 600 });
const readSide = readOneOf(['left', 'right', 'both']);

function readLine(file: OpenFile, row: NamedRow<Column>, problems: Problem[]): Omit<PaperLine, 'day' | 'session'> {
  const own = <Value>(
    column: 'Sets' | 'Left' | 'Hurt',
    reader: (text: string) => Value | null,
  ): Said<Value> | undefined => {
    const cell = row.cell(column);
    if (!cell) return undefined;
    const value = reader(cell.raw);
    if (value !== null) return { value, place: cell.place };
    add(problems, 'log-cell-unreadable', { column, text: cell.raw }, cell.place);
    return undefined;
  };
  const said = <Value>(column: Column, value: Value | undefined): Said<Value> | undefined =>
    value === undefined ? undefined : { value, place: row.placeOf(column) };
  const exercise = wordsOf(row.cell('Exercise'));
  const sets = own('Sets', readPaperSets);
  const left = own('Left', readLeft);
  const hurt = own('Hurt', readHurt)?.value ?? [];
  const effort = said('Effort', readCell(file, row.cell('Effort'), readEffort));
  const minutes = said('Minutes', readCell(file, row.cell('Minutes'), readMinutes));
  const note = readCell(file, row.cell('Note'), readText(600));
  const side = readCell(file, row.cell('Side'), readSide) ?? 'both';
  // Sets and what was left are of an exercise; what hurt may be of the session.
  if (exercise === undefined && (sets ?? left) !== undefined) {
    file.report.add({ code: 'empty-cell', data: { column: 'Exercise' } }, row.placeOf('Exercise'));
  }
  return {
    place: row.place,
    ...(exercise ? { exercise } : {}),
    side: { value: side, place: row.placeOf('Side') },
    ...(sets ? { sets } : {}),
    ...(left ? { left } : {}),
    hurt,
    ...(effort ? { effort } : {}),
    ...(minutes ? { minutes } : {}),
    ...(note === undefined ? {} : { note }),
  };
}

/** Whole or half, to 20. */
function readLeft(text: string): number | null {
  const figure = /^(\d{1,2}(?:[.,][05])?)\s*(?:left|in reserve|reps?)?$/i.exec(text.trim())?.[1];
  const value = Number((figure ?? '').replace(',', '.'));
  return figure === undefined || value > 20 ? null : value;
}

type PaperCode = 'log-cell-unreadable' | 'log-no-session' | 'log-which-session' | 'log-said-twice';

export function add<Code extends PaperCode>(into: Problem[], code: Code, data: LogProblems[Code], place: Place): void {
  into.push({ code, severity: 'error', scope: FOLDER, place, data } as Problem);
}
