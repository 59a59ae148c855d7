/** A week's sheet says all that decides what is done: each dose, each gate, each way out. One sheet a week. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Booklet, Cell } from '../../src/model/booklet.js';
import { cardSheet } from '../../src/print/card-sheet.js';
import { layOutWeekSheets } from '../../src/print/lay-out-week-sheet.js';
import { type Faces, loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Page } from '../../src/print/page.js';
import { A4, LETTER, type PaperSize } from '../../src/print/sheet.js';
import { speechOf } from '../../src/words/speech.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { demoBooklet } from '../studio/demo-booklet.js';
import { overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

let faces: Faces;
beforeAll(async () => {
  faces = await loadFaces();
});

const sheetsOf = (booklet: Booklet, paper: PaperSize = A4): readonly Page[] =>
  layOutWeekSheets({
    booklet,
    speech: speechOf(booklet.language),
    measure: measureWith(faces, cardSheet(paper, 'book', 2)),
  });

const lettersOf = (text: string): string => text.normalize('NFKC').replaceAll(/[^\p{L}\p{N}]+/gu, '');

interface Expected {
  readonly week: number;
  readonly name: string;
  readonly cell: Cell;
}

/** Of each week that has sessions, its rows in the order of its days. */
function expectedOf(booklet: Booklet): readonly (readonly Expected[])[] {
  const sessions = partsOf(booklet, 'session');
  const [calendar] = partsOf(booklet, 'calendar');
  const weeks = (calendar?.weeks ?? []).map(({ week }) => {
    const dated = sessions.flatMap((session) => {
      const head = session.weeks.find((one) => one.week === week);
      return head ? [{ date: head.date, rows: session.rows }] : [];
    });
    dated.sort((a, b) => a.date.localeCompare(b.date));
    return dated.flatMap(({ rows }) =>
      rows.flatMap(({ name, cells }) =>
        cells.filter((cell) => cell.week === week).map((cell) => ({ week, name, cell })),
      ),
    );
  });
  return weeks.filter((rows) => rows.length > 0);
}

/** What must stand in a row's own words. */
const asked = ({ name, cell }: Expected): readonly string[] => [
  name,
  cell.version,
  cell.stack.join(' '),
  cell.trial ?? '',
  cell.gate?.needs ?? '',
  cell.gate?.otherwise ?? '',
  cell.test?.says ?? '',
  ...(cell.choose?.rows.flatMap(({ felt, use }) => [felt, use]) ?? []),
];

function unsaid(booklet: Booklet, pages: readonly Page[]): readonly string[] {
  return expectedOf(booklet).flatMap((rows, i) => {
    const said = taggedTexts(pages.slice(i, i + 1)).filter(({ role }) => role === 'LBody');
    if (said.length !== rows.length) return [`sheet ${i + 1} has ${said.length} rows of ${rows.length}`];
    return rows.flatMap((row, n) => {
      const text = lettersOf(said[n]?.text ?? '');
      return asked(row)
        .filter((one) => !text.includes(lettersOf(one)))
        .map((one) => `week ${row.week}, ${row.name}: ${one}`);
    });
  });
}

describe.each([
  ['the fixture', async () => fixtureBooklet],
  ['a client of the demo', () => demoBooklet('rowan-ashby')],
] as const)('%s', (_, give) => {
  let booklet: Booklet;
  beforeAll(async () => {
    booklet = await give();
  });

  test('every dose, gate and way out stands on the sheet of its week', () => {
    const rows = expectedOf(booklet).flat();
    expect(rows.filter(({ cell }) => cell.gate !== undefined).length).toBeGreaterThan(0);
    expect(unsaid(booklet, sheetsOf(booklet))).toEqual([]);
  });

  test.each([
    ['A4', A4],
    ['Letter', LETTER],
  ] as const)('one sheet a week on %s, nothing over anything else', (_paper, paper) => {
    const pages = sheetsOf(booklet, paper);
    expect(pages.length).toBe(expectedOf(booklet).length);
    expect(pages.flatMap((page) => overlaps(page, cardSheet(paper, 'book', 2)))).toEqual([]);
  });

  test('what is not on a sheet is missed', () => {
    const [part] = partsOf(booklet, 'session');
    const other = {
      ...booklet,
      parts: booklet.parts.map((one) =>
        one === part && part
          ? {
              ...part,
              rows: part.rows.map((row) => ({
                ...row,
                cells: row.cells.map(
                  ({ gate, ...cell }): Cell => ({
                    ...cell,
                    ...(gate ? { gate: { ...gate, otherwise: 'Something quite different.' } } : {}),
                  }),
                ),
              })),
            }
          : one,
      ),
    };
    const changed = partsOf(other, 'session').some(({ rows }) =>
      rows.some(({ cells }) => cells.some(({ gate }) => gate?.otherwise.startsWith('Something quite'))),
    );
    expect(unsaid(other, sheetsOf(booklet)).length > 0).toBe(changed);
  });
});
