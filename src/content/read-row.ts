/** One line of a programme's table → a row. */
import type { BellRole, Effort } from '../model/dose.js';
import { PATTERNS, PLANES } from '../model/exercise.js';
import { exerciseId, type RowId, rowId } from '../model/identity.js';
import type { Row, RowTarget, TempoStep } from '../model/programme.js';
import { isId } from '../model/slug.js';
import { type OpenFile, readAt } from './open-file.js';
import { readSeconds, within } from './read-amounts.js';
import { readCircuitDose, readDose } from './read-dose.js';
import { readId } from './read-id.js';
import { asTyped, good, mapRead, type Reader, readPart, refuse } from './read-value.js';
import { readListOf, readOneOf, readYesNo } from './read-words.js';
import { type NamedRow, readCell, readExerciseLink } from './table-rows.js';

export const ROW_COLUMNS = [
  'Id',
  'Exercise',
  'Sets and reps',
  'Effort',
  'Bell',
  'Rest',
  'Tempo',
  'Trials',
  'Optional',
] as const;
export const ROW_COLUMNS_NEEDED = ['Exercise', 'Sets and reps', 'Rest'] as const;
export type RowColumn = (typeof ROW_COLUMNS)[number];

const ALL_TEMPI: readonly TempoStep[] = ['normal', 'slow lowering', 'slow with a pause'];

/** `reserve 3`, `3 in reserve`, `RPE 8.5`, `70 %`; `in sentences` or `in phrases` where breath is the measure. */
export const readEffort: Reader<Effort> = (text) => {
  const word = asTyped(text).trim().toLowerCase();
  const figure = '(\\d{1,3}(?:[.,]\\d)?)';
  const match =
    new RegExp(`^(reserve|rir|leave|rpe)\\s*${figure}$`).exec(word) ??
    new RegExp(`^(leave\\s+)?${figure}\\s*(?:(?:reps?\\s+)?in\\s+reserve|in the tank)$`).exec(word);
  const talk = /^(?:talk(?:ing)?\s+)?in\s+(?:whole\s+|full\s+|short\s+)?(sentences|phrases)$/.exec(word)?.[1];
  if (talk !== undefined) return good({ kind: 'talk', level: talk === 'sentences' ? 'sentences' : 'phrases' });
  const percent = /^(\d{1,3})\s*%(?:\s*(?:of\s*)?1\s?rm)?$/.exec(word);
  if (percent?.[1]) {
    return mapRead(
      within('A share of the one-rep maximum', Number(percent[1]), percent[1], { least: 10, most: 100 }, text),
      (share): Effort => ({ kind: 'percent', percent: share }),
    );
  }
  if (!match?.[2]) return refuse({ code: 'effort-unreadable', data: { text: text.trim() } }, text);
  const value = Number(match[2].replace(',', '.'));
  const rpe = match[1] === 'rpe';
  const bounds = rpe ? { least: 1, most: 10 } : { least: 0, most: 10 };
  const read = within(rpe ? 'RPE' : 'Reps in reserve', value, match[2], bounds, text);
  return mapRead(read, (amount): Effort => ({ kind: rpe ? 'rpe' : 'reserve', tenths: Math.round(amount * 10) }));
};

/** `slower allowed` (as an empty cell), `normal only`, or the tempi in order, the first being where the row starts. */
export const readTempi: Reader<readonly TempoStep[]> = (text) => {
  const word = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (word === 'slower allowed' || word === 'any') return good(ALL_TEMPI);
  if (word === 'normal only') return good(['normal']);
  return readListOf(readOneOf(ALL_TEMPI))(text);
};

/** `any squat`, `any push (horizontal)`. */
export const readPattern: Reader<RowTarget> = (text) => {
  const match = /^any\s+([a-z]+)(?:\s*\(\s*([a-z]+)\s*\))?$/i.exec(text.trim());
  if (!match?.[1]) return refuse({ code: 'pattern-unreadable', data: { text: text.trim() } }, text);
  const at = (word: string) => ({ text: word, start: text.indexOf(word) });
  const pattern = readPart(at(match[1]), readOneOf(PATTERNS));
  if (!pattern.ok) return pattern;
  if (match[2] === undefined) return good({ kind: 'pattern', pattern: pattern.value });
  return mapRead(readPart(at(match[2]), readOneOf(PLANES)), (plane) => ({
    kind: 'pattern',
    pattern: pattern.value,
    plane,
  }));
};

const readBell = readOneOf<BellRole>(['main', 'lighter', 'next up']);

/** `rounds` where the row stands in a circuit. `undefined` where something needed could not be read. */
export function readRow(file: OpenFile, row: NamedRow<RowColumn>, rounds: number | undefined): Row | undefined {
  const target = readTarget(file, row);
  const dose = readCell(file, row.cell('Sets and reps'), rounds === undefined ? readDose : readCircuitDose(rounds));
  const effort = readCell(file, row.cell('Effort'), readEffort);
  const bell = readCell(file, row.cell('Bell'), readBell);
  const rest = readCell(file, row.cell('Rest'), readSeconds);
  const tempi = readCell(file, row.cell('Tempo'), readTempi);
  const trials = readCell(file, row.cell('Trials'), readYesNo);
  const optional = readCell(file, row.cell('Optional'), readYesNo);
  const id = rowIdOf(file, row, target);
  if (!target || !dose || rest === undefined || id === undefined) return undefined;
  return {
    id,
    target,
    dose,
    ...(effort ? { effort } : {}),
    ...(bell ? { bell } : {}),
    restSeconds: rest,
    tempi: tempi ?? ALL_TEMPI,
    trials: trials ?? true,
    optional: optional ?? false,
    place: row.place,
  };
}

function readTarget(file: OpenFile, row: NamedRow<RowColumn>): RowTarget | undefined {
  const cell = row.cell('Exercise');
  if (!cell) return undefined;
  if (cell.links.length === 0 && /^any\b/i.test(cell.raw)) return readAt(file, cell.raw, cell.place, readPattern);
  const id = readExerciseLink(file, cell);
  return id === undefined ? undefined : { kind: 'exercise', id: exerciseId(id) };
}

/** The row's own id, else its exercise's, else its pattern's. */
function rowIdOf(file: OpenFile, row: NamedRow<RowColumn>, target: RowTarget | undefined): RowId | undefined {
  const own = row.cell('Id');
  if (own) {
    const id = readAt(file, own.raw, own.place, readId);
    return id === undefined ? undefined : rowId(id);
  }
  const id = target?.kind === 'exercise' ? target.id : target?.pattern;
  return id !== undefined && isId(id) ? rowId(id) : undefined;
}
