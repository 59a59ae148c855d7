/** Whatever is in the files, reading ends, throws nothing, and places every problem in the file it speaks of. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FolderFile, readFolder } from '../../src/content/read-folder.js';
import { sayProblemReport } from '../../src/words/show-problem.js';
import { runs } from '../deep.js';
import { baseFiles } from './error-folders.js';

const encode = (text: string) => new TextEncoder().encode(text);
const base = baseFiles();
const CONTENT = resolve(import.meta.dirname, '..', '..', 'content');
const demo: FolderFile[] = readdirSync(CONTENT, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => ({ path: path.slice(CONTENT.length + 1), bytes: new Uint8Array(readFileSync(path)) }))
  .filter(({ path }) => !/(GUIDE|ERRORS)\.md$/.test(path));

/** Reads, phrases everything, and holds every place against the file it names. */
function readAll(files: readonly FolderFile[]): number {
  const { problems } = readFolder(files);
  const texts = new Map(files.map(({ path, bytes }) => [path, new TextDecoder().decode(bytes)]));
  expect(sayProblemReport(problems, (file) => texts.get(file))).not.toMatch(/undefined|\[object|NaN/);
  for (const { place } of problems) {
    if (!place) continue;
    const lines = (texts.get(place.file) ?? '').split(/\r\n|\r|\n/);
    expect(place.line).toBeGreaterThanOrEqual(1);
    expect(place.line).toBeLessThanOrEqual(lines.length);
    expect(place.length).toBeGreaterThanOrEqual(1);
    const letters = Array.from((lines[place.line - 1] ?? '').replace(/^\ufeff/, ''));
    expect(place.column).toBeLessThanOrEqual(letters.length + 1);
  }
  return problems.length;
}

const withFile = (path: string, bytes: Uint8Array): FolderFile[] => [
  ...base.filter((file) => file.path !== path),
  { path, bytes },
];
const paths = [...base.map(({ path }) => path), 'rules.md', 'clients/ida-fell/notes.md'];

describe('any bytes', () => {
  test('at random', () => {
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.uint8Array({ maxLength: 400 }), (path, bytes) => {
        readAll(withFile(path, bytes));
      }),
      { numRuns: 150 },
    );
  });

  test('pieces of pages at random', () => {
    const piece = fc.constantFrom(
      '---\n',
      '\n',
      'name: ',
      'kit:\n',
      '  bells: 8, ',
      'asks:\n',
      '- ',
      '[',
      ']',
      '{',
      '}',
      '*a',
      '&a ',
      '!x ',
      '"',
      "'",
      ': ',
      '|',
      '| --- |',
      '## ',
      '### ',
      'A: x',
      'Cues',
      '**',
      '](',
      'x.md)',
      '../',
      '<b>',
      '`',
      '3 × 8',
      '\t',
      '\r',
      '\u202e',
      '🏋',
      '%',
      '__proto__: 1\n',
      'constructor: x\n',
      'toString: y\n',
      '? ',
      '<<: ',
      '? [1]\n',
    );
    const page = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(fc.constantFrom(...paths), page, fc.boolean(), (path, text, fenced) => {
        readAll(withFile(path, encode(fenced ? `---\n${text}\n---\n${text}` : text)));
      }),
      { numRuns: runs(150, 1000) },
    );
  });

  test('pages of the demo cut short, with a letter changed, a line lost, a line twice', () => {
    const change = fc.record({
      file: fc.nat(demo.length - 1),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      how: fc.constantFrom('cut', 'letter', 'lose', 'twice'),
      letter: fc.constantFrom(':', '|', '-', '#', '"', '[', ' ', '\t', 'é', '\u0000', '×', '9'),
    });
    fc.assert(
      fc.property(change, ({ file, at, how, letter }) => {
        const { path, bytes } = demo[file] ?? { path: 'studio.md', bytes: new Uint8Array() };
        const text = new TextDecoder().decode(bytes);
        const offset = Math.floor(at * text.length);
        const lines = text.split('\n');
        const line = Math.floor(at * lines.length);
        const changed = {
          cut: text.slice(0, offset),
          letter: text.slice(0, offset) + letter + text.slice(offset + 1),
          lose: lines.toSpliced(line, 1).join('\n'),
          twice: lines.toSpliced(line, 0, lines[line] ?? '').join('\n'),
        }[how];
        readAll([...demo.filter((other) => other.path !== path), { path, bytes: encode(changed ?? '') }]);
      }),
      // Each time the whole studio is read.
      { numRuns: runs(12, 200) },
    );
  });
});

describe('pages made to be slow', () => {
  const deep = (open: string, close: string, times: number): string => open.repeat(times) + close.repeat(times);
  const bomb = Array.from(
    { length: 30 },
    (_, i) =>
      `a${i}: &a${i} [${
        i === 0
          ? 'x'
          : Array(9)
              .fill(`*a${i - 1}`)
              .join(', ')
      }]`,
  );
  test.each([
    ['aliases thirty deep', `---\n${bomb.join('\n')}\n---\n`],
    ['ten thousand brackets', `---\na: ${deep('[', ']', 10_000)}\n---\n`],
    ['ten thousand braces', `---\na: ${deep('{a: ', '}', 10_000)}\n---\n`],
    ['ten thousand lists in one another', `---\n${'- '.repeat(10_000)}x\n---\n`],
    ['ten thousand keys of keys', `---\n${'? '.repeat(10_000)}x\n---\n`],
    ['a thousand keys set in', `---\n${Array.from({ length: 300 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')}\n---\n`],
    ['five thousand keys', `---\n${Array.from({ length: 5_000 }, (_, i) => `a${i}: b`).join('\n')}\n---\n`],
    ['brackets in the body', `---\n---\n${'['.repeat(20_000)}`],
    ['links in the body', `---\n---\n${'[a](b.md) '.repeat(1_000)}`],
    ['stars in the body', `---\n---\n${'*a **b '.repeat(5_000)}`],
    ['quotations in one another', `---\n---\n${'> '.repeat(5_000)}x`],
    ['lists in one another', `---\n---\n${Array.from({ length: 300 }, (_, i) => `${'  '.repeat(i)}- a`).join('\n')}`],
    ['backticks', `---\n---\n${Array.from({ length: 1_500 }, (_, i) => '`'.repeat(i % 90)).join(' ')}`],
    [
      'a table of ten thousand lines',
      `---\n---\n## Poses\n\n| Pose | A |\n| --- | --- |\n${'| x | y |\n'.repeat(10_000)}`,
    ],
    ['a line of a million letters', `---\nname: ${'a'.repeat(1_000_000)}\n---\n`],
    ['a long name without an end', `---\nname: "${'a b '.repeat(10_000)}\n---\n`],
  ])('%s', (_, text) => {
    expect(readAll(withFile('exercises/chair-squat.md', encode(text)))).toBeGreaterThan(0);
  });

  test('a page of 50 MB is not read', () => {
    const { problems } = readFolder(withFile('exercises/chair-squat.md', new Uint8Array(50 * 1024 * 1024)));
    const own = problems.filter(({ place }) => place?.file === 'exercises/chair-squat.md');
    expect(own.map(({ code, data }) => [code, data])).toEqual([
      ['file-too-large', { path: 'exercises/chair-squat.md', megabytes: 50, mostMegabytes: 2 }],
    ]);
  });

  test('an alias bomb is told of once, where it begins', () => {
    const { problems } = readFolder(withFile('exercises/chair-squat.md', encode(`---\n${bomb.join('\n')}\n---\n`)));
    const own = problems.filter(({ place }) => place?.file === 'exercises/chair-squat.md');
    expect(own.map(({ code, place }) => [code, place?.line])).toEqual([['yaml-feature', 2]]);
  });
});

test('reading changes nothing and is the same again, in any order of files', () => {
  const forwards = readFolder(demo);
  const backwards = readFolder([...demo].reverse());
  expect(JSON.stringify(backwards)).toBe(JSON.stringify(forwards));
});
