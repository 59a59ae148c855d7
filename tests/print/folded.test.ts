/** A booklet as it leaves the printer, folded here page by page: every leaf turned shows the page that comes next. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { Booklet, Part } from '../../src/model/booklet.js';
import { clientId, exerciseId } from '../../src/model/identity.js';
import { drawForms } from '../../src/print/draw-forms.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { type Printed, readFolded } from './fold-sheets.js';

const folder = mkdtempSync(join(tmpdir(), 'folded-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Word {
  readonly left: number;
  readonly top: number;
  readonly word: string;
}

/** The words of each page in poppler's own places, line by line; of a side of a sheet, those left and right of its middle. */
function pagesOf(bytes: Uint8Array): readonly { readonly width: number; readonly words: readonly Word[] }[] {
  const file = join(folder, 'one.pdf');
  writeFileSync(file, bytes);
  const text = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' });
  return text
    .split('<page ')
    .slice(1)
    .map((page) => ({
      width: Number(/^width="([\d.]+)"/.exec(page)?.[1]),
      words: [...page.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>(.*?)<\/word>/g)]
        .map(([, left, top, word = '']): Word => ({ left: Number(left), top: Number(top), word }))
        .sort((a, b) => Math.round(a.top) - Math.round(b.top) || a.left - b.left),
    }));
}

const said = (words: readonly Word[]): string => words.map(({ word }) => word).join(' ');

/** What stands on each half of each sheet, fronts and backs in turn. */
function sheetsOf(bytes: Uint8Array): readonly Printed<string>[] {
  const sides = pagesOf(bytes).map(({ width, words }): readonly [string, string] => [
    said(words.filter(({ left }) => left < width / 2)),
    said(words.filter(({ left }) => left >= width / 2)),
  ]);
  return sides.flatMap((front, i) => {
    const back = sides[i + 1];
    return i % 2 === 0 && back ? [{ front, back }] : [];
  });
}

/** Twice as many exercises: too thick to fold in one. */
const thick: Booklet = {
  ...fixtureBooklet,
  parts: fixtureBooklet.parts.flatMap((part): readonly Part[] =>
    part.kind === 'exercise'
      ? ['one', 'two', 'three', 'four'].map((nth) => ({
          ...part,
          id: exerciseId(`${part.id}-${nth}`),
          title: `${part.title} ${nth}`,
        }))
      : [part],
  ),
};

test.each([
  ['A4', fixtureBooklet, 1],
  ['Letter', { ...fixtureBooklet, paper: 'letter' } satisfies Booklet, 1],
  ['A4 in two parts', thick, 2],
])('on %s it reads from its cover to its last page', async (_, booklet, parts) => {
  const { value } = await drawForms(booklet, clientId('rowan-ashby'));
  const single = value.find(({ form }) => form === 'single');
  const folded = value.filter(({ form }) => form === 'fold');
  expect(folded).toHaveLength(parts);
  const inOrder = pagesOf(single?.bytes ?? new Uint8Array()).map(({ words }) => said(words));
  expect(inOrder.length).toBeGreaterThanOrEqual(16);
  expect(new Set(inOrder).size).toBeGreaterThan(inOrder.length * 0.8);
  const read = folded.flatMap(({ bytes }) => readFolded(sheetsOf(bytes), 'left'));
  expect(read).toEqual(inOrder);
  // Two sheets exchanged, or one printed on its back the wrong way round, would be seen.
  const [first, second, ...others] = folded.flatMap(({ bytes }) => sheetsOf(bytes));
  if (!first || !second) throw new Error('there are sheets');
  expect(readFolded([second, first, ...others], 'left')).not.toEqual(inOrder);
  const turned = { ...first, back: [first.back[1], first.back[0]] as const };
  expect(readFolded([turned, second, ...others], 'left')).not.toEqual(inOrder);
});
