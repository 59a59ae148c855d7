/** Whatever an author writes: nothing leaves the page, nothing covers anything else, nothing is lost. */
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Booklet, Cell, SessionPart, SessionRow } from '../../src/model/booklet.js';
import { clientId, rowId } from '../../src/model/identity.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import { runs } from '../deep.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { gridFaults, strandedHeads } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});

const word = fc.constantFrom(
  'squat',
  'Bell',
  'half-kneeling',
  'Przysiad',
  'thật chậm',
  'στήθος',
  'Donaudampfschifffahrtsgesellschaft',
  '16\u00a0kg',
  '2 × 12.5 kg',
  '×',
  'a',
  'lb',
);
const words = (most: number) => fc.array(word, { minLength: 1, maxLength: most }).map((all) => all.join(' '));

const cellWith = (cell: Cell): fc.Arbitrary<Cell> =>
  fc
    .record({
      version: fc.oneof(fc.constant(''), words(4)),
      stack: fc.array(words(3), { minLength: 1, maxLength: 3 }),
      strokes: fc.integer({ min: 1, max: 12 }),
      sides: fc.constantFrom(['Left', 'Right'], [''], ['Linke Seite zuerst', 'Rechte Seite']),
      trial: fc.oneof(fc.constant(''), words(12)),
      gate: fc.oneof(fc.constant(''), words(20)),
      effort: words(6),
    })
    .map(({ version, stack, strokes, sides, trial, gate, effort }): Cell => {
      const { trial: _trial, gate: _gate, ...plain } = cell;
      return {
        ...plain,
        version,
        stack,
        effort,
        tally: sides.map((label) => ({ label, strokes })),
        ...(trial === '' ? {} : { trial }),
        ...(gate === '' ? {} : { gate: { needs: gate, otherwise: gate, otherwiseStack: stack } }),
      };
    });

const rowWith = (row: SessionRow, at: number): fc.Arbitrary<SessionRow> =>
  fc
    .record({
      name: words(14),
      rest: words(6),
      group: fc.constantFrom('', '', 'Turn about, 2 rounds.'),
      kept: fc.integer({ min: 1, max: 6 }),
      cells: fc.tuple(...row.cells.map(cellWith)),
    })
    .map(({ name, rest, group, kept, cells }) => ({
      ...row,
      row: rowId(`row-${at}`),
      name: `${name} ${at}`,
      rest,
      group,
      cells: cells.slice(0, kept),
    }));

const [session] = partsOf(fixtureBooklet, 'session');
const source: SessionPart | undefined = session;

const anyBooklet: fc.Arbitrary<Booklet> = fc.integer({ min: 1, max: 9 }).chain((count) => {
  const rows = source ? Array.from({ length: count }, (_, i) => source.rows[i % source.rows.length]) : [];
  const varied = rows.flatMap((row, i) => (row ? [rowWith(row, i)] : []));
  return fc.record({ rows: fc.tuple(...varied), title: words(12), client: words(8) }).map((made): Booklet => {
    const parts = fixtureBooklet.parts.map((part) => {
      if (part.kind === 'cover') return { ...part, client: made.client };
      return part.kind === 'session' && part.id === 'a' ? { ...part, title: made.title, rows: made.rows } : part;
    });
    return { ...fixtureBooklet, parts };
  });
});

/** To find the smallest case that fails may take an hour: it is looked for one minute. */
const HOW = {
  numRuns: runs(24, 200),
  seed: 20261124,
  interruptAfterTimeLimit: runs(60_000, 600_000),
  markInterruptAsFailure: true,
};

test('nothing leaves the page, the block or the grid, nothing covers anything else, and no head stands alone', () => {
  fc.assert(
    fc.property(anyBooklet, (booklet) => {
      const { value, problems } = layOutBooklet(booklet, measure, clientId('x'));
      expect(value.length > 0 || problems.length > 0).toBe(true);
      expect([...gridFaults(value), ...value.flatMap(strandedHeads)]).toEqual([]);
    }),
    HOW,
  );
});

test('every row’s name and every week’s stack is said, in the tree’s order', () => {
  const bare = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');
  fc.assert(
    fc.property(anyBooklet, (booklet) => {
      const { value } = layOutBooklet(booklet, measure, clientId('x'));
      const said = taggedTexts(value).map(({ text }) => bare(text));
      let place = -1;
      for (const row of partsOf(booklet, 'session')[0]?.rows ?? []) {
        place = said.indexOf(bare(row.name), place + 1);
        expect(place, row.name).toBeGreaterThanOrEqual(0);
        for (const cell of row.cells) {
          place = said.findIndex((text, i) => i > place && text.startsWith(bare(cell.version + cell.stack.join(''))));
          expect(place, `${row.name}, week ${cell.week}`).toBeGreaterThanOrEqual(0);
        }
      }
    }),
    HOW,
  );
});
