/** The faces themselves: figures of one width, in measuring and in drawing; letters of the languages they are chosen for. */
import { beforeAll, describe, expect, test } from 'vitest';
import { type Faces, loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import { A4_LARGE_SHEET } from '../../src/print/sheet.js';
import { type Face, type StyleName, TYPE_STYLES } from '../../src/print/type-styles.js';

let faces: Faces;
let measure: Measure;
beforeAll(async () => {
  faces = await loadFaces();
  measure = measureWith(faces);
});

const DISPLAY: readonly StyleName[] = ['label', 'label-strong', 'figure', 'figure-plain', 'exercise', 'title'];

const RUNNING: readonly StyleName[] = ['text', 'text-italic', 'text-strong', 'note', 'note-italic', 'note-strong'];

describe.each([...DISPLAY, ...RUNNING])('%s', (style) => {
  test('every figure has one width, alone and among others', () => {
    const alone = [...'0123456789'].map((digit) => measure.width(style, digit));
    expect(new Set(alone.map((width) => width.toFixed(4))).size).toBe(1);
    const pairs = [...'0123456789'].map((digit) => measure.width(style, `1${digit}7`));
    expect(new Set(pairs.map((width) => width.toFixed(4))).size).toBe(1);
    expect(pairs[0]).toBeCloseTo(3 * (alone[0] ?? 0), 6);
  });
});

test.each<StyleName>(['text', 'text-italic', 'note', 'label'])(
  'in %s the hyphen of a parted word is drawn, and read as soft',
  (style) => {
    expect(measure.width(style, 'breast\u00ad')).toBeGreaterThan(measure.width(style, 'breast') + 2);
    const [hyphen] = faces[TYPE_STYLES[style].face].layout('\u00ad').glyphs;
    expect(hyphen?.codePoints).toEqual([0xad]);
  },
);

test('large print parts no word', () => {
  expect(measure.partsOf('comfortably', 'en')).toEqual(['com', 'fort', 'ably']);
  expect(measureWith(faces, A4_LARGE_SHEET).partsOf('comfortably', 'en')).toEqual(['comfortably']);
});

const FACES: readonly Face[] = ['text', 'text-italic', 'text-strong', 'display', 'display-strong'];

test.each(FACES)('%s has uneven figures of its own, so the features are what makes them even', (face) => {
  const [plain] = Object.getPrototypeOf(faces[face]).layout('1').positions;
  const [wide] = Object.getPrototypeOf(faces[face]).layout('0').positions;
  expect(plain.xAdvance).not.toBe(wide.xAdvance);
});

test.each(FACES)('%s has figures that stand on the line, as high as its capitals', (face) => {
  const boxes = [...'0123456789'].map((digit) => faces[face].layout(digit).glyphs[0]?.bbox);
  const capital = faces[face].layout('H').glyphs[0]?.bbox;
  // Round ones overshoot, and some faces draw figures a little lower than capitals: within a sixteenth of the em.
  const slack = faces[face].unitsPerEm / 16;
  for (const box of boxes) {
    expect(Math.abs(box?.minY ?? Number.NaN)).toBeLessThan(slack);
    expect(Math.abs((box?.maxY ?? Number.NaN) - (capital?.maxY ?? Number.NaN))).toBeLessThan(slack);
  }
});

test('a text measured is as wide as the glyphs drawn for it', () => {
  for (const text of ['16 kg', '×12', 'Goblet squat, two bells', 'AVAVA To 1171']) {
    const run = faces['display-strong'].layout(text);
    const advances = run.positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    expect(measure.width('figure', text)).toBeCloseTo((advances / faces['display-strong'].unitsPerEm) * 12, 6);
  }
});

test('shaping again gives the same positions, whatever was done with the first', () => {
  const first = faces.text.layout('Sit between your heels').positions.map(({ xAdvance }) => xAdvance);
  expect(faces.text.layout('Sit between your heels').positions.map(({ xAdvance }) => xAdvance)).toEqual(first);
});

test.each([
  ['Polish', 'Zażółć gęślą jaźń ŁĄŻŹ'],
  ['Vietnamese', 'Nguyễn Thị Phương, hạ xuống thật chậm'],
  ['Greek', 'Κάθισμα με το βάρος'],
  ['Cyrillic', 'Приседание с гирей Їжак'],
  ['signs of the trade', '× – — “ ” ‘ ’ ½ … · + °'],
])('%s can be set in every style', (_, text) => {
  const styles: readonly StyleName[] = [...DISPLAY, 'text', 'text-italic', 'text-strong', 'note', 'note-italic'];
  for (const style of styles) {
    const missing = [...text].filter((letter) => !measure.hasGlyph(style, letter.codePointAt(0) ?? 0));
    expect(missing).toEqual([]);
  }
});
