/** What a programme says of its own sessions and rows, and of clients it expects something for. */
import type { Place } from '../model/place.js';
import { likelyExercise } from './check-links.js';
import { nearestOf } from './nearest.js';
import { placeOfEntry } from './open-file.js';
import type { ReadProgramme } from './read-programme.js';
import type { FolderCheck, ReadThings } from './read-things.js';

const each =
  (check: (read: ReadProgramme, things: ReadThings) => void) =>
  (things: ReadThings): void => {
    for (const read of things.programmes) check(read, things);
  };

interface RowNames {
  /** Whether a row goes by this id, or would if its link were put right: that is told where the link stands. */
  has(id: string): boolean;
  nearest(id: string): string;
}

/** A row without an id of its own goes by its exercise's, and so by nothing while its link leads nowhere. */
function namesOfRows(sessions: ReadProgramme['sessions'], things: ReadThings): RowNames {
  const sound: string[] = [];
  const astray: string[] = [];
  for (const { id, target } of sessions.flatMap(({ blocks }) => blocks.flatMap(({ rows }) => rows))) {
    const led = target.kind !== 'exercise' || things.exercises.some((exercise) => exercise.id === target.id);
    if (led || (target.kind === 'exercise' && String(target.id) !== String(id))) sound.push(id);
    else astray.push(id, likelyExercise(things, id));
  }
  return {
    has: (id) => sound.includes(id) || astray.includes(id) || (astray.length > 0 && nearestOf(id, astray) !== ''),
    nearest: (id) => nearestOf(id, sound),
  };
}

const checkSessionIds = each(({ sessions, file }) => {
  const seen = new Set<string>();
  for (const { id, place } of sessions) {
    if (seen.has(id.toLowerCase())) file.report.add({ code: 'id-twice', data: { id, what: 'session' } }, place);
    seen.add(id.toLowerCase());
  }
});

const checkRowIds = each(({ sessions, file }) => {
  for (const { blocks } of sessions) {
    const seen = new Set<string>();
    for (const { id, place } of blocks.flatMap(({ rows }) => rows)) {
      if (seen.has(id)) file.report.add({ code: 'id-twice', data: { id, what: 'row' } }, place);
      seen.add(id);
    }
  }
});

const checkRotations = each(({ programme, sessions, file, wholeBody }) => {
  if (!programme || !wholeBody) return;
  const known = sessions.map(({ id }) => id);
  for (const { days, order } of programme.rotations) {
    order.forEach((id, index) => {
      if (known.includes(id)) return;
      file.report.add(
        { code: 'unknown-session', data: { id, known } },
        placeOfEntry(file, ['rotation', String(days)], index),
      );
    });
  }
});

const checkCuts = each(({ programme, sessions, file, wholeBody }, things) => {
  if (!programme || !wholeBody) return;
  const rows = namesOfRows(sessions, things);
  for (const [key, ids] of [
    ['never cut', programme.neverCut],
    ['cut first', programme.cutFirst],
    ['tests', programme.tests],
  ] as const) {
    ids.forEach((id, index) => {
      if (rows.has(id)) return;
      file.report.add(
        { code: 'unknown-row', data: { id, nearest: rows.nearest(id) } },
        placeOfEntry(file, [key], index),
      );
    });
  }
});

const checkCutAndKept = each(({ programme, file }) => {
  programme?.cutFirst.forEach((row, index) => {
    if (!programme.neverCut.includes(row)) return;
    file.report.add({ code: 'cut-and-kept', data: { row } }, placeOfEntry(file, ['cut first'], index));
  });
});

/** Tenths of good reps that nobody who trains alone is planned below: the engine's own figure for its rule. */
export const FLOOR_ALONE = { rule: 'floor-alone', tenths: 20 } as const;

const checkReserves = each(({ programme, sessions, file }, { overrides }) => {
  const floor = overrides.find(({ rule }) => rule === FLOOR_ALONE.rule)?.value ?? FLOOR_ALONE.tenths;
  const hold = (tenths: number, place: Place): void => {
    if (tenths >= floor) return;
    file.report.add({ code: 'reserve-below-floor', data: { reserve: tenths / 10, floor: floor / 10 } }, place);
  };
  programme?.curve.forEach(({ reserve }, week) => {
    hold(reserve, placeOfEntry(file, ['curve', 'reserve'], week));
  });
  for (const { effort, place } of sessions.flatMap(({ blocks }) => blocks.flatMap(({ rows }) => rows))) {
    if (effort?.kind === 'reserve') hold(effort.tenths, place);
  }
});

const checkExpectations = each(({ sessions, expectations, file, wholeBody }, things) => {
  for (const { client, session, row, place } of expectations) {
    const ids = things.clients.map(({ id }) => id);
    if (!ids.some((id) => id === client)) {
      file.report.add({ code: 'expect-nobody', data: { id: client, nearest: nearestOf(client, ids) } }, place);
    }
    const found = sessions.find(({ id }) => id === session);
    const rows = namesOfRows(found ? [found] : [], things);
    if (!wholeBody || rows.has(row)) continue;
    if (!found) {
      file.report.add({ code: 'unknown-session', data: { id: session, known: sessions.map(({ id }) => id) } }, place);
    } else file.report.add({ code: 'unknown-row', data: { id: row, nearest: rows.nearest(row) } }, place);
  }
});

export const programmeChecks: readonly FolderCheck[] = [
  { name: 'sessions by one name', codes: ['id-twice'], check: checkSessionIds },
  { name: 'rows by one id', codes: ['id-twice'], check: checkRowIds },
  { name: 'rotations name sessions', codes: ['unknown-session'], check: checkRotations },
  { name: 'cuts and tests name rows', codes: ['unknown-row'], check: checkCuts },
  { name: 'cut and kept', codes: ['cut-and-kept'], check: checkCutAndKept },
  { name: 'reserves and the floor', codes: ['reserve-below-floor'], check: checkReserves },
  { name: 'expectations', codes: ['expect-nobody', 'unknown-session', 'unknown-row'], check: checkExpectations },
];
