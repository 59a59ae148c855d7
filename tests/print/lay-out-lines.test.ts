/** Lines of text: where they may break, and where they may not. Every letter is 5 points wide here, whatever its style. */
import { describe, expect, test } from 'vitest';
import { drawable, layOutLines, layOutParagraph } from '../../src/print/lay-out-lines.js';
import type { Measure } from '../../src/print/measure.js';
import { tag } from '../../src/print/page.js';
import { A5_SHEET } from '../../src/print/sheet.js';
import type { StyleName } from '../../src/print/type-styles.js';

const LETTER = 5;
const measure: Measure = {
  sheet: A5_SHEET,
  width: (_, text) => Array.from(text).length * LETTER,
  hasGlyph: () => true,
  partsOf: (word) => [word],
};
const set = (text: string, letters: number): readonly string[] =>
  layOutLines([{ style: 'text', text }], letters * LETTER, measure).map((line) =>
    line.boxes.map((box) => box.text).join(''),
  );
const shown = (text: string): string => text.replaceAll('\u00a0', '_');

describe('a line breaks', () => {
  test('at spaces, as full as it goes', () => {
    expect(set('sit between your heels', 12)).toEqual(['sit between', 'your heels']);
  });
  test('before ×, never after it', () => {
    expect(set('now 16 kg × 10', 10).map(shown)).toEqual(['now 16_kg', '×_10']);
    expect(set('now 16 kg × 10', 12).map(shown)).toEqual(['now 16_kg', '×_10']);
  });
  test('never inside a pair of bells, nor between a figure and its unit', () => {
    expect(set('bar and 2 × 10 kg', 13).map(shown)).toEqual(['bar and', '2_×_10_kg']);
    expect(set('hold for 30 s', 11).map(shown)).toEqual(['hold for', '30_s']);
  });
  test('after a hyphen between letters, not between figures', () => {
    expect(set('half-kneeling', 6)).toEqual(['half-', 'kneeli', 'ng']);
    expect(set('take 10-12 of them', 8)).toEqual(['take', '10-12 of', 'them']);
  });
  test('inside a word only where the word is wider than the column', () => {
    expect(set('a Donaudampfschiff', 8)).toEqual(['a', 'Donaudam', 'pfschiff']);
  });
  test('between letters as people see them, not between a letter and its mark', () => {
    expect(set('q\u0303q\u0303q\u0303', 4)).toEqual(['q\u0303q\u0303', 'q\u0303']);
  });
});

describe('inside a word', () => {
  const parted: Measure = {
    ...measure,
    partsOf: (word, language) => (word === 'breastbone' && language === 'en' ? ['breast', 'bone'] : [word]),
  };
  const hyphenated = (text: string, letters: number, style: StyleName = 'text', lang = 'en'): readonly string[] =>
    layOutLines([{ style, text, lang }], letters * LETTER, parted).map((line) =>
      line.boxes.map((box) => box.text.replaceAll('\u00ad', '~')).join(''),
    );
  const CUE = 'hold it at the breastbone, close';
  test('a line that would be left short takes the part that fits, with a hyphen of its own', () => {
    expect(hyphenated(CUE, 23)).toEqual(['hold it at the breast~', 'bone, close']);
  });
  test('never where the line is full enough, the part and its hyphen do not fit, or the word is the last', () => {
    expect(hyphenated('hold it at your own breastbone, close', 23)[0]).toBe('hold it at your own');
    expect(hyphenated(CUE, 21)[0]).toBe('hold it at the');
    expect(hyphenated('hold it at the breastbone', 23)[0]).toBe('hold it at the');
  });
  test('never on two lines running', () => {
    expect(hyphenated('at a breastbone breastbone or so', 12)).toEqual(['at a breast~', 'bone', 'breastbone', 'or so']);
  });
  test('never in a name or a figure, nor by the rules of another language', () => {
    expect(hyphenated(CUE, 23, 'exercise')[0]).toBe('hold it at the');
    expect(hyphenated(CUE, 23, 'text-strong')[0]).toBe('hold it at the');
    expect(hyphenated(CUE, 23, 'text', 'nb')[0]).toBe('hold it at the');
  });
  test('the language is that of the nearest element that names one', () => {
    const of = tag('Span', tag('P', undefined, { lang: 'en' }));
    const [line] = layOutLines([{ style: 'text', text: CUE, tag: of }], 23 * LETTER, parted);
    expect(line?.boxes.at(-1)?.text.endsWith('breast\u00ad')).toBe(true);
    expect(line?.boxes.at(-1)?.endsAtSpace).toBe(false);
  });
});

test('runs of one style are one box; another style is another', () => {
  const [line] = layOutLines(
    [
      { style: 'text', text: 'Sit ' },
      { style: 'text', text: 'between ' },
      { style: 'text-strong', text: 'your heels' },
      { style: 'text', text: '.' },
    ],
    500,
    measure,
  );
  expect(line?.boxes.map(({ style, text, x }) => [style, text, x])).toEqual([
    ['text', 'Sit between ', 0],
    ['text-strong', 'your heels', 60],
    ['text', '.', 110],
  ]);
});

test('a space at a line’s end is remembered, a hyphen has none', () => {
  const ends = (text: string): readonly boolean[] =>
    layOutLines([{ style: 'text', text }], 8 * LETTER, measure).map((line) => line.boxes.at(-1)?.endsAtSpace ?? false);
  expect(ends('between your')).toEqual([true, false]);
  expect(ends('between-you')).toEqual([false, false]);
});

test('a paragraph does not end in one short word, if that costs no line', () => {
  const lines = (lay: typeof layOutLines): readonly string[] =>
    lay(
      [{ style: 'text', text: 'Let your elbows brush the inside of both your knees on it' }],
      28 * LETTER,
      measure,
    ).map((line) => line.boxes.map((box) => box.text).join(''));
  expect(lines(layOutLines).at(-1)).toBe('it');
  expect(lines(layOutParagraph).at(-1)).not.toBe('it');
  expect(lines(layOutParagraph).length).toBe(lines(layOutLines).length);
});

test('no text, no line', () => {
  expect(set('', 10)).toEqual([]);
  expect(set('   ', 10)).toEqual([]);
});

test('what shows nothing is left out, and every space is a plain one', () => {
  expect(drawable('a\u00adb\u200bc\u2066d\u2069\tx\ny\ufe0f')).toBe('abcd x y');
  expect(drawable('e\u0301')).toBe('é');
});
