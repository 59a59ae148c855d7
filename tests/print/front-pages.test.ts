/** Before the sessions no page holds a last sentence alone, and none of the contents is left empty. */
import { beforeAll, expect, test } from 'vitest';
import type { Booklet, ExercisePart } from '../../src/model/booklet.js';
import { clientId, exerciseId } from '../../src/model/identity.js';
import { plainLine } from '../../src/model/prose.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { Page } from '../../src/print/page.js';
import { LINE } from '../../src/print/sheet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { gridFaults, strandedHeads } from './grid-faults.js';
import { partsOf } from './parts-of.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});

const laidOut = (booklet: Booklet): readonly Page[] => layOutBooklet(booklet, measure, clientId('x')).value;

interface Set {
  readonly pages: readonly Page[];
  readonly said: readonly string[];
  /** Lines from each paragraph to the next on its page. */
  readonly steps: ReadonlySet<number>;
}

/** So many sentences of one line each. */
function cautions(count: number): Set {
  const sentences = Array.from({ length: count }, (_, i) => `Caution ${i + 1} of them.`);
  const booklet = {
    ...fixtureBooklet,
    parts: fixtureBooklet.parts.map((part) =>
      part.kind === 'safety' ? { ...part, paragraphs: sentences.map((text) => plainLine(text)) } : part,
    ),
  };
  const own = (page: Page) =>
    page.boxes.flatMap((box) => (box.kind === 'text' && box.text.startsWith('Caution ') ? [box] : []));
  const pages = laidOut(booklet);
  expect([...gridFaults(pages), ...pages.flatMap(strandedHeads)]).toEqual([]);
  const steps = pages.flatMap((page) =>
    own(page).flatMap(({ y }, i, all) => (i === 0 ? [] : [Math.round(((y - (all[i - 1]?.y ?? 0)) / LINE) * 10) / 10])),
  );
  const carrying = pages.filter((page) => own(page).length > 0);
  expect(carrying.flatMap((page) => own(page).map(({ text }) => text))).toEqual(sentences);
  return { pages: carrying, said: sentences, steps: new Set(steps) };
}

test('cautions stand closer only where that saves a page, and evenly', () => {
  const sets = Array.from({ length: 40 }, (_, i) => cautions(i + 2));
  for (const { steps } of sets) expect([[1.5], [2]]).toContainEqual([...steps]);
  const lengths = sets.map(({ pages }) => pages.length);
  expect(lengths).toEqual([...lengths].sort());
  expect(new Set(lengths).size).toBeGreaterThan(2);
  for (const [i, { steps, pages }] of sets.entries()) {
    const before = sets[i - 1];
    // Roomy again on a page more, as soon as closer does not help.
    if (before?.steps.has(1.5) && steps.has(2)) expect(pages.length).toBe(before.pages.length + 1);
    // It closes at a length at which nothing would have had to give way.
    if (before?.steps.has(2) && steps.has(1.5)) expect(pages.length).toBe(before.pages.length);
  }
  expect(sets.filter(({ steps }) => steps.has(1.5)).length).toBeGreaterThan(0);
});

test('contents that go over to another page leave lines there to write on', () => {
  const [exercise] = partsOf(fixtureBooklet, 'exercise');
  if (!exercise) throw new Error('the fixture has no exercise');
  const named = (count: number): Booklet => ({
    ...fixtureBooklet,
    parts: [
      ...fixtureBooklet.parts.filter(({ kind }) => kind !== 'exercise'),
      ...Array.from(
        { length: count },
        (_, i): ExercisePart => ({
          ...exercise,
          id: exerciseId(`one-${i}`),
          title: `Exercise ${i}`,
        }),
      ),
    ],
  });
  const ruled = ({ boxes }: Page): number => boxes.filter(({ kind }) => kind === 'line').length;
  const contents = (count: number): readonly Page[] =>
    laidOut(named(count)).filter(({ boxes }) =>
      boxes.some((box) => box.kind === 'text' && box.tag === undefined && box.text === 'Contents'),
    );
  const [first, second, ...others] = contents(34);
  expect(others).toEqual([]);
  expect(first && ruled(first)).toBe(0);
  expect(second && ruled(second)).toBeGreaterThan(5);
  expect(second?.boxes.some((box) => box.kind === 'text' && box.tag?.role === 'H3' && box.text === 'Notes')).toBe(true);
  expect(second && [...gridFaults([second]), ...strandedHeads(second)]).toEqual([]);
  expect(contents(10).map(ruled)).toEqual([0]);
});
