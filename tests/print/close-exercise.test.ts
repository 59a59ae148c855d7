/** An exercise is set closer only for the sake of one page, or of stop signs on its first, and nothing it says is lost. */
import { expect, test } from 'vitest';
import type { Booklet, ExercisePart, Part } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { plainLine, plainText } from '../../src/model/prose.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import { exerciseTarget } from '../../src/print/setting.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { offTheGrid, offThePage, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

const measure = measureWith(await loadFaces());
const [first] = partsOf(fixtureBooklet, 'exercise');

/** The first exercise with so many more faults, each seen in a word and answered in one. */
function withFaults(more: number): ExercisePart {
  if (!first) throw new Error('the fixture has an exercise');
  const faults = Array.from({ length: more }, (_, i) => ({
    lead: plainLine(`Drifts ${i}`),
    text: plainLine(`‘Stay ${i}.’`),
  }));
  const sections = first.sections.map((section) =>
    section.name === 'faults' ? { ...section, lines: [...section.lines, ...faults] } : section,
  );
  return { ...first, sections };
}

interface Set {
  readonly pages: number;
  readonly dashes: number;
  /** Its stop signs stand on its first page. */
  readonly stopsFirst: boolean;
}

function setWith(more: number): Set {
  const exercise = withFaults(more);
  const booklet: Booklet = {
    ...fixtureBooklet,
    parts: fixtureBooklet.parts.flatMap((part): readonly Part[] =>
      part.kind !== 'exercise' ? [part] : part.id === exercise.id ? [exercise] : [],
    ),
  };
  const { value } = layOutBooklet(booklet, measure, clientId('x'));
  const from = value.findIndex(({ targets }) => targets.some(({ name }) => name === exerciseTarget(exercise.id)));
  const to = value.findIndex(
    ({ boxes }, i) => i > from && !boxes.some((box) => box.kind === 'text' && box.text === exercise.title),
  );
  const pages = value.slice(from, to);
  expect(pages.flatMap((page) => [...offThePage(page), ...overlaps(page), ...offTheGrid(page, 7)])).toEqual([]);
  const bare = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]+/gu, '');
  const said = bare(
    taggedTexts(pages)
      .map(({ text }) => text)
      .join(''),
  );
  for (const section of exercise.sections)
    for (const { text } of section.lines) expect(said).toContain(bare(plainText(text)));
  const [page] = pages;
  return {
    pages: pages.length,
    dashes: taggedTexts(pages).filter(({ text }) => text === '–').length,
    stopsFirst: page?.boxes.some(({ kind }) => kind === 'frame') === true,
  };
}

test('what is listed line by line runs on where that keeps it, or its stop signs, on one page, and there alone', () => {
  const sets = Array.from({ length: 14 }, (_, more) => setWith(more));
  const [roomy] = sets;
  const isClose = ({ dashes }: Set): boolean => dashes < (roomy?.dashes ?? 0);
  expect(sets.filter((set) => set.pages === 1 && isClose(set)).length).toBeGreaterThan(0);
  const over = sets.filter(({ pages }) => pages > 1);
  const [near, far] = [over.filter(({ stopsFirst }) => stopsFirst), over.filter(({ stopsFirst }) => !stopsFirst)];
  expect(near.some(isClose)).toBe(true);
  expect(far.length).toBeGreaterThan(0);
  expect(far.filter(isClose)).toEqual([]);
  // The more there is to say, the closer: never roomy again once it was close, until it goes over.
  expect(sets.map(({ pages }) => pages)).toEqual([...sets.map(({ pages }) => pages)].sort());
});
