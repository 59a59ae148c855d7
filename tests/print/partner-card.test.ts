/** The partner's card leaves nothing out: all there is to count, watch and say, and when to stop. */
import { beforeAll, expect, test } from 'vitest';
import type { Booklet, PartnerPart } from '../../src/model/booklet.js';
import { exerciseId } from '../../src/model/identity.js';
import { plainText } from '../../src/model/prose.js';
import { cardSheet } from '../../src/print/card-sheet.js';
import { layOutPartnerCard } from '../../src/print/lay-out-partner-card.js';
import { type Faces, loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Page } from '../../src/print/page.js';
import { settingOf } from '../../src/print/setting.js';
import { A4 } from '../../src/print/sheet.js';
import { demoBooklet } from '../studio/demo-booklet.js';
import { overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

let faces: Faces;
beforeAll(async () => {
  faces = await loadFaces();
});

const SHEET = cardSheet(A4, 'book', 2);
const cardOf = (booklet: Booklet, part: PartnerPart): readonly Page[] =>
  layOutPartnerCard(part, settingOf(booklet, measureWith(faces, SHEET), false));

const lettersOf = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]+/gu, '');

function unsaid(part: PartnerPart, pages: readonly Page[]): readonly string[] {
  const read = lettersOf(
    taggedTexts(pages)
      .map(({ text }) => text)
      .join(' '),
  );
  let from = 0;
  const texts = [
    ...[...part.paragraphs, ...part.emergency].map(plainText),
    ...part.watched.flatMap(({ name, count, watch, faults, stop }) => [
      name,
      ...count,
      ...watch.map(plainText),
      ...faults.flatMap(({ see, say }) => [plainText(see), plainText(say)]),
      ...stop.map(plainText),
    ]),
  ];
  return texts.filter((text) => {
    const at = read.indexOf(lettersOf(text), from);
    if (at >= 0) from = at;
    return at < 0;
  });
}

async function partnerOf(name: string): Promise<readonly [Booklet, PartnerPart]> {
  const booklet = await demoBooklet(name);
  const [part] = partsOf(booklet, 'partner');
  if (!part) throw new Error(`${name} has no partner`);
  return [booklet, part];
}

test.each(['nell-fane', 'imre-fane'])('%s: one sheet, and all of it', async (name) => {
  const [booklet, part] = await partnerOf(name);
  const pages = cardOf(booklet, part);
  expect(part.watched.flatMap(({ faults }) => faults).length).toBeGreaterThan(0);
  expect(unsaid(part, pages)).toEqual([]);
  expect(pages.length).toBeLessThanOrEqual(2);
  expect(pages.flatMap((page) => overlaps(page, SHEET))).toEqual([]);
});

test('with more than a sheet holds it runs over to a second', async () => {
  const [booklet, part] = await partnerOf('nell-fane');
  const watched = [0, 1, 2].flatMap((n) =>
    part.watched.map((one) => ({ ...one, exercise: exerciseId(`${one.exercise}-${n}`), name: `${one.name} ${n}` })),
  );
  const long = { ...part, watched };
  const pages = cardOf(booklet, long);
  expect(pages.length).toBeGreaterThan(2);
  expect(unsaid(long, pages)).toEqual([]);
});
