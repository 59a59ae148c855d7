/** A client's table of what was seen on the floor: one line may say several things, each an observation of its own. */
import type { Observation } from '../model/client.js';
import { exerciseId } from '../model/identity.js';
import type { OpenFile } from './open-file.js';
import { readSeen, type SeenPart } from './read-seen.js';
import { readDate, readOneOf, readText } from './read-words.js';
import { type Section, tableOf } from './sections.js';
import { type NamedRow, readCell, readExerciseLink, rowsOf } from './table-rows.js';

const COLUMNS = ['Date', 'Exercise', 'Side', 'Seen'] as const;
type Row = NamedRow<(typeof COLUMNS)[number]>;

const readSide = readOneOf(['left', 'right', 'both']);

/**
 * Whatever can be read, in the order written. Reports `observation-needs-exercise`, `observation-needs-side`,
 * `observation-pain` and `observation-unread`.
 */
export function readObservations(file: OpenFile, section: Section | undefined): readonly Observation[] {
  const table = tableOf(file, section);
  if (!table) return [];
  return rowsOf<(typeof COLUMNS)[number]>(file, table, { known: COLUMNS, needed: ['Date', 'Seen'] }).flatMap(
    (row): readonly Observation[] => {
      const date = readCell(file, row.cell('Date'), readDate);
      const exercise = readExerciseLink(file, row.cell('Exercise'));
      const side = row.cell('Side') ? readCell(file, row.cell('Side'), readSide) : 'both';
      const whole = readCell(file, row.cell('Seen'), readText());
      const parts = whole === undefined ? undefined : readCell(file, row.cell('Seen'), readSeen);
      // An exercise or a side that cannot be read is not the same as none.
      if (date === undefined || parts === undefined || side === undefined) return [];
      if (row.cell('Exercise') && exercise === undefined) return [];
      const head = { date, ...(exercise === undefined ? {} : { exercise: exerciseId(exercise) }), place: row.place };
      return parts.flatMap((part): readonly Observation[] => {
        const own = sideOf(file, row, part, side);
        if (own === null || !hasExercise(file, row, part)) return [];
        if (part.unread) {
          const data = { text: part.seen, nearest: part.unread.nearest };
          file.report.add({ code: 'observation-unread', data }, row.placeOf('Seen'));
        }
        return [{ ...head, side: own, seen: part.seen, means: part.means }];
      });
    },
  );
}

/** As the words have it, or else the column; `null` where one is wanted and not said, or the two differ. */
function sideOf(
  file: OpenFile,
  row: Row,
  { seen, means, side }: SeenPart,
  column: Observation['side'],
): Observation['side'] | null {
  const own = side ?? column;
  const apart = side !== undefined && column !== 'both' && column !== side;
  const wanted = means.kind === 'phrase' && means.phrase === 'shorter on one side' && own === 'both';
  if (!apart && !wanted) return own;
  file.report.add({ code: 'observation-needs-side', data: { seen, apart } }, row.placeOf('Seen'));
  return null;
}

/** Pain in a part of the body is of whatever asks that part; a phrase, and pain elsewhere, are of one exercise. */
function hasExercise(file: OpenFile, row: Row, { seen, means }: SeenPart): boolean {
  const wanted = means.kind === 'phrase' || (means.kind === 'pain' && means.where === 'elsewhere');
  if (!wanted || row.cell('Exercise')) return true;
  file.report.add({ code: 'observation-needs-exercise', data: { seen } }, row.placeOf('Exercise'));
  return false;
}
