/** What a programme says of its own sessions and rows, and of clients it expects something for. */
import { nearestOf } from './nearest.js';
import { placeOfEntry } from './open-file.js';
import type { ReadProgramme } from './read-programme.js';
import type { FolderCheck, ReadThings } from './read-things.js';

const each =
  (check: (read: ReadProgramme, things: ReadThings) => void) =>
  (things: ReadThings): void => {
    for (const read of things.programmes) check(read, things);
  };

const rowsIn = ({ sessions }: ReadProgramme): readonly string[] =>
  sessions.flatMap(({ blocks }) => blocks.flatMap(({ rows }) => rows.map(({ id }) => id)));

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

const checkCuts = each((read) => {
  const { programme, file, wholeBody } = read;
  if (!programme || !wholeBody) return;
  const known = rowsIn(read);
  for (const [key, ids] of [
    ['never cut', programme.neverCut],
    ['cut first', programme.cutFirst],
  ] as const) {
    ids.forEach((id, index) => {
      if (known.includes(id)) return;
      file.report.add(
        { code: 'unknown-row', data: { id, nearest: nearestOf(id, known) } },
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

const checkExpectations = each(({ sessions, expectations, file, wholeBody }, { clients }) => {
  for (const { client, session, row, place } of expectations) {
    const ids = clients.map(({ id }) => id);
    if (!ids.some((id) => id === client)) {
      file.report.add({ code: 'expect-nobody', data: { id: client, nearest: nearestOf(client, ids) } }, place);
    }
    const found = sessions.find(({ id }) => id === session);
    const rows = found?.blocks.flatMap((block) => block.rows.map(({ id }) => id)) ?? [];
    if (!wholeBody || rows.includes(row)) continue;
    if (!found) {
      file.report.add({ code: 'unknown-session', data: { id: session, known: sessions.map(({ id }) => id) } }, place);
    } else file.report.add({ code: 'unknown-row', data: { id: row, nearest: nearestOf(row, rows) } }, place);
  }
});

export const programmeChecks: readonly FolderCheck[] = [
  { name: 'sessions by one name', codes: ['id-twice'], check: checkSessionIds },
  { name: 'rows by one id', codes: ['id-twice'], check: checkRowIds },
  { name: 'rotations name sessions', codes: ['unknown-session'], check: checkRotations },
  { name: 'cuts name rows', codes: ['unknown-row'], check: checkCuts },
  { name: 'cut and kept', codes: ['cut-and-kept'], check: checkCutAndKept },
  { name: 'expectations', codes: ['expect-nobody', 'unknown-session', 'unknown-row'], check: checkExpectations },
];
