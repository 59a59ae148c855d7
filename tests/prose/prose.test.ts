/** Text, fences and blocks: what stands where, in lines and columns a coach can count. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainText } from '../../src/model/prose.js';
import { parseFences } from '../../src/prose/front-matter.js';
import { cutLine, sliceLine, trimLine } from '../../src/prose/line.js';
import { parseBody } from '../../src/prose/parse-body.js';
import { cellSpans } from '../../src/prose/parse-table.js';
import { lineText, parseBytes, parseText, placeIn } from '../../src/prose/source-text.js';

const bytes = (text: string) => new TextEncoder().encode(text);
const bodyOf = (text: string) => parseBody(parseText('x.md', text), 1);

/** What the place covers, letter for letter. */
function covered(text: string, place: { line: number; column: number; length: number }): string {
  return Array.from(lineText(parseText('x.md', text), place.line))
    .slice(place.column - 1, place.column - 1 + place.length)
    .join('');
}

describe('text', () => {
  test.each([
    ['line feeds', 'a\nb\nc'],
    ['carriage returns and line feeds', 'a\r\nb\r\nc'],
    ['carriage returns', 'a\rb\rc'],
    ['a byte order mark', '\uFEFFa\nb\nc'],
  ])('%s', (_, text) => {
    const { source, faults } = parseBytes('x.md', bytes(text));
    expect(faults).toEqual([]);
    expect(source.text).toBe('a\nb\nc');
    expect(source.lineStarts).toEqual([0, 2, 4]);
  });

  test('columns count letters, not units: an emoji is one', () => {
    const source = parseText('x.md', 'one\n🏋🏋 two');
    expect(placeIn(source, 9, 12)).toEqual({ file: 'x.md', line: 2, column: 4, length: 3 });
  });

  // RFC 3629, section 4: overlong forms, surrogates, beyond U+10FFFF, lone continuation and cut sequences are not UTF-8.
  test.each([
    ['overlong', [0xc0, 0xaf]],
    ['overlong in three', [0xe0, 0x80, 0xaf]],
    ['a surrogate', [0xed, 0xa0, 0x80]],
    ['beyond the last code point', [0xf4, 0x90, 0x80, 0x80]],
    ['a lone continuation', [0x80]],
    ['cut short', [0xe2, 0x82]],
    ['Latin-1', [0xe9, 0x20]],
  ])('not UTF-8: %s', (_, bad) => {
    const { faults } = parseBytes('x.md', new Uint8Array([...bytes('é\nab'), ...bad]));
    expect(faults[0]?.kind).toBe('not-utf-8');
    expect(faults[0]?.place).toMatchObject({ line: 2, column: 3 });
  });

  test('a replacement character that was typed is text', () => {
    expect(parseBytes('x.md', bytes('a \uFFFD b')).faults).toEqual([]);
  });

  test('any text in UTF-8 is text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(parseBytes('x.md', bytes(text)).faults.filter(({ kind }) => kind === 'not-utf-8')).toEqual([]);
      }),
    );
  });
});

describe('fences', () => {
  const fences = (text: string) => parseFences(parseText('x.md', text));
  test('front matter, then body', () => {
    expect(fences('---\na: b\n---\nbody')).toEqual({ start: 4, end: 9, bodyLine: 4 });
  });
  test('empty front matter', () => {
    expect(fences('---\n---\nbody')).toEqual({ start: 4, end: 4, bodyLine: 3 });
  });
  test('blank lines before, spaces after', () => {
    expect(fences('\n\n---  \na: b\n---\t\n')).toMatchObject({ bodyLine: 6 });
  });
  test('none, and one never closed', () => {
    expect(fences('a\n---\nb\n---')).toBe('no-front-matter');
    expect(fences('')).toBe('no-front-matter');
    expect(fences('---\na: b')).toBe('front-matter-open');
  });
});

describe('blocks', () => {
  const text = [
    '## Cues ##',
    '',
    '- **Down** — Sit *between* your heels.',
    '  And stay.',
    '  - A [link](a.md) below',
    '1. First',
    '',
    'Words over',
    'two lines with [one](b.md "title").',
    '',
    '| A | B \\| C |',
    '| --- | --- |',
    '|  🏋 x | [y](c.md) | spare |',
    '| only |',
  ].join('\n');
  const { blocks, unprinted } = bodyOf(text);

  test('in order, each where it stands', () => {
    expect(blocks.map(({ kind, place }) => [kind, place.line])).toEqual([
      ['heading', 1],
      ['list', 3],
      ['list', 6],
      ['paragraph', 8],
      ['table', 11],
    ]);
    expect(unprinted).toEqual([]);
  });

  test('words are covered by their places', () => {
    const found: [string, string][] = [];
    for (const block of blocks) {
      if (block.kind === 'heading') found.push([plainText(block.words.line), covered(text, block.words.place)]);
      if (block.kind === 'list')
        for (const item of block.items) found.push([plainText(item.line), covered(text, item.place)]);
    }
    expect(found).toEqual([
      ['Cues', 'Cues'],
      ['Down — Sit between your heels. And stay.', '**Down** — Sit *between* your heels.'],
      ['A link below', 'A [link](a.md) below'],
      ['First', 'First'],
    ]);
  });

  test('links are where they stand, on the second line of a paragraph too', () => {
    const [paragraph] = blocks.flatMap((block) => (block.kind === 'paragraph' ? [block] : []));
    const [link] = paragraph?.words.links ?? [];
    expect(link).toMatchObject({ target: 'b.md', text: 'one', place: { line: 9, column: 16 } });
    expect(link && covered(text, link.place)).toBe('[one](b.md "title")');
  });

  test('cells, their letters counted, spare ones kept', () => {
    const [table] = blocks.flatMap((block) => (block.kind === 'table' ? [block] : []));
    expect(table?.head.map(({ raw }) => raw)).toEqual(['A', 'B | C']);
    expect(table?.rows.map(({ cells }) => cells.map(({ raw }) => raw))).toEqual([
      ['🏋 x', '[y](c.md)', 'spare'],
      ['only', ''],
    ]);
    expect(table?.rows[0]?.cells.map(({ place }) => covered(text, place))).toEqual(['🏋 x', '[y](c.md)', 'spare']);
    expect(table?.rows[0]?.cells[1]?.links[0]?.place).toMatchObject({ line: 13, column: 10 });
  });

  test('what is not printed is told', () => {
    const told = bodyOf('A ![p](a.png)\n\n> q\n\n```\nc\n```\n\n***\n\na <br> b').unprinted;
    expect(told.map(({ what, place }) => [what, place.line])).toEqual([
      ['picture', 1],
      ['quotation', 3],
      ['code', 5],
      ['line', 9],
      ['tag', 11],
    ]);
  });

  test('a picture alone is a block of its own, with what is said of it and its place', () => {
    const text = 'Words.\n\n  ![A *deep* squat](<my squat.jpg>)  \n\n![](b.png)\n![two](c.png)\n';
    const { blocks, unprinted } = bodyOf(text);
    const pictures = blocks.flatMap((block) => (block.kind === 'picture' ? [block] : []));
    expect(pictures.map(({ said, target, place }) => [said, target, covered(text, place)])).toEqual([
      ['A deep squat', 'my squat.jpg', '![A *deep* squat](<my squat.jpg>)'],
    ]);
    // Two in one paragraph stand alone no more.
    expect(unprinted.map(({ what, place }) => [what, place.line])).toEqual([
      ['picture', 5],
      ['picture', 6],
    ]);
  });

  test('3 < 5 and <3 are words', () => {
    expect(bodyOf('3 < 5, <3 and a<b>').unprinted.map(({ what }) => what)).toEqual(['tag']);
    expect(bodyOf('3 < 5 and <3').unprinted).toEqual([]);
  });

  test('a cell’s pipes may be escaped', () => {
    expect(cellSpans('| a \\| b | c |').map(({ start, end }) => '| a \\| b | c |'.slice(start, end))).toEqual([
      'a \\| b',
      'c',
    ]);
    expect(cellSpans('a | b').length).toBe(2);
  });
});

describe('lines', () => {
  const run = fc.record(
    { text: fc.string({ maxLength: 8 }), strong: fc.constant(true as const) },
    { requiredKeys: ['text'] },
  );
  const line = fc.array(run, { maxLength: 5 });

  test('a slice of the line is a slice of its words', () => {
    fc.assert(
      fc.property(line, fc.nat(30), fc.nat(30), (words, a, b) => {
        const [start, end] = [Math.min(a, b), Math.max(a, b)];
        expect(plainText(sliceLine(words, start, end))).toBe(plainText(words).slice(start, end));
      }),
    );
  });

  test('trimmed and cut', () => {
    expect(trimLine([{ text: '  a ', strong: true }, { text: ' ' }])).toEqual([{ text: 'a', strong: true }]);
    expect(cutLine([{ text: 'see ' }, { text: '— say', strong: true }], /—/)).toEqual({
      before: [{ text: 'see' }],
      after: [{ text: 'say', strong: true }],
    });
    expect(cutLine([{ text: 'no dash' }], /—/)).toBeUndefined();
  });
});
