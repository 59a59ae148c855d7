/** The faces themselves: figures of one width, in measuring and in drawing; letters of the languages they are chosen for. */
import { beforeAll, describe, expect, test } from 'vitest';
import { type Faces, loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import { A4_LARGE_SHEET } from '../../src/print/sheet.js';
import { type Face, FEATURES, type StyleName, TYPE_STYLES } from '../../src/print/type-styles.js';

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
    const [word] = faces[TYPE_STYLES[style].face].wordsOf('\u00ad');
    expect(word?.glyphs.map(({ codePoints }) => codePoints)).toEqual([[0xad]]);
  },
);

test('large print parts no word', () => {
  expect(measure.partsOf('comfortably', 'en')).toEqual(['com', 'fort', 'ably']);
  expect(measureWith(faces, A4_LARGE_SHEET).partsOf('comfortably', 'en')).toEqual(['comfortably']);
});

const FACES: readonly Face[] = ['text', 'text-italic', 'text-strong', 'display', 'display-strong'];

test.each(FACES)('%s has uneven figures of its own, so the features are what makes them even', (face) => {
  const [plain] = faces[face].font.layout('1').positions;
  const [wide] = faces[face].font.layout('0').positions;
  expect(plain?.xAdvance).not.toBe(wide?.xAdvance);
});

test.each(FACES)('%s has figures that stand on the line, as high as its capitals', (face) => {
  const boxOf = (letter: string) => faces[face].wordsOf(letter)[0]?.glyphs[0]?.bbox;
  const capital = boxOf('H');
  // Round ones overshoot, and some faces draw figures a little lower than capitals: within a sixteenth of the em.
  const slack = faces[face].font.unitsPerEm / 16;
  for (const box of [...'0123456789'].map(boxOf)) {
    expect(Math.abs(box?.minY ?? Number.NaN)).toBeLessThan(slack);
    expect(Math.abs((box?.maxY ?? Number.NaN) - (capital?.maxY ?? Number.NaN))).toBeLessThan(slack);
  }
});

test('a text measured is as wide as the glyphs drawn for it', () => {
  const { font, wordsOf } = faces['display-strong'];
  for (const text of ['16 kg', '×12', 'Goblet squat, two bells', 'AVAVA To 1171']) {
    const advances = wordsOf(text)
      .flatMap(({ positions }) => positions)
      .reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    expect(measure.width('figure', text)).toBeCloseTo((advances / font.unitsPerEm) * 12, 6);
  }
});

// Every letter that kerns with others, and signs that stand at a word's end, on both sides of a space.
const BESIDE_A_SPACE = [...'AFJKLPRTVWXYZafkrtvwyz0179.,;:!?)(“”‘’/–—×½°'];

test.each(FACES)('in %s a line shaped whole is its words and spaces shaped one by one', (face) => {
  const { font, wordsOf } = faces[face];
  const texts = [
    ...BESIDE_A_SPACE.map((letter) => BESIDE_A_SPACE.map((other) => `${letter} ${other}`).join(' ')),
    'Half of it: 16\u00a0kg ×\u00a08, then “row” – off the floor, TAV to fill 1 / 2  twice, Ålesund Żółw Việt',
  ];
  for (const text of texts) {
    const whole = font.layout(text, [...FEATURES[face]]);
    const words = wordsOf(text);
    const placed = (of: readonly { readonly xAdvance: number; readonly xOffset: number }[]) =>
      of.map(({ xAdvance, xOffset }) => `${xAdvance} ${xOffset}`);
    expect(words.flatMap(({ glyphs }) => glyphs.map(({ id }) => id))).toEqual(whole.glyphs.map(({ id }) => id));
    expect(words.flatMap(({ positions }) => placed(positions))).toEqual(placed(whole.positions));
  }
});

test('a word is shaped once', () => {
  const [first] = faces.text.wordsOf('heels');
  expect(faces.text.wordsOf('Sit between your heels').at(-1)).toBe(first);
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
