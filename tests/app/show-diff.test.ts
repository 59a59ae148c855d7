/** What a change does to a page, as unified hunks: laid over the old lines they give the new ones. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diffOf, wantsColour } from '../../src/app/show-diff.js';

const PATH = 'clients/ida-fell/client.md';
const old = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((letter) => `${letter}\n`).join('');

/** Follows the hunks over the old text, as the form is defined by POSIX for `diff -u`. */
function laidOver(before: string, hunks: string): string {
  const old = before.split('\n');
  const made: string[] = [];
  let at = 0;
  for (const line of hunks.split('\n').slice(2)) {
    const start = /^@@ -(\d+),(\d+) /.exec(line);
    if (start) {
      const first = Number(start[1]) - (start[2] === '0' ? 0 : 1);
      made.push(...old.slice(at, first));
      at = first;
    } else if (line.startsWith(' ') || line.startsWith('-')) {
      expect(old[at]).toBe(line.slice(1));
      if (line.startsWith(' ')) made.push(line.slice(1));
      at += 1;
    } else if (line.startsWith('+')) made.push(line.slice(1));
  }
  return [...made, ...old.slice(at)].join('\n');
}

describe('the hunks of a change', () => {
  test('three lines around it', () => {
    expect(diffOf(PATH, old, old.replace('e\n', 'E\n'))).toBe(
      `--- ${PATH}\n+++ ${PATH}\n@@ -2,7 +2,7 @@\n b\n c\n d\n-e\n+E\n f\n g\n h\n`,
    );
  });

  test('nothing where nothing changes, or only how lines end', () => {
    expect(diffOf(PATH, old, old)).toBe('');
    expect(diffOf(PATH, old, `\ufeff${old.replaceAll('\n', '\r\n')}`)).toBe('');
  });

  test('laid over the old lines, they give the new ones', () => {
    const lines = fc.array(fc.constantFrom('a', 'b', '', '-- c', '++ d', '@@ e', '漢字 “f”'), { maxLength: 20 });
    fc.assert(
      fc.property(lines, lines, (one, other) => {
        const [before, after] = [one, other].map((text) => text.map((line) => `${line}\n`).join(''));
        const shown = diffOf(PATH, before ?? '', after ?? '');
        expect(laidOver(before ?? '', shown)).toBe(after);
      }),
    );
  });

  test('colours only mark what the signs say', () => {
    const after = old.replace('e\n', '-- E\n');
    const plain = diffOf(PATH, old, after);
    const coloured = diffOf(PATH, old, after, true);
    const begin = '\u001b[';
    const uncoloured = coloured.split(begin).map((part, index) => (index === 0 ? part : part.replace(/^\d+m/, '')));
    expect(uncoloured.join('')).toBe(plain);
    expect(coloured).toContain('\u001b[31m-e\u001b[0m\n\u001b[32m+-- E\u001b[0m\n');
    expect(plain).not.toContain('\u001b');
  });

  test('nothing written moves the cursor or turns a line round', () => {
    const shown = diffOf(PATH, 'a\n', 'a \u001b[2J \u202e \u0007 \tb\n');
    expect(shown).toContain('+a \ufffd[2J \ufffd \ufffd \tb\n');
  });

  test.each([
    [{ isTTY: true }, {}, true],
    [{ isTTY: true }, { NO_COLOR: '' }, true],
    [{ isTTY: true }, { NO_COLOR: '1' }, false],
    [{ isTTY: true }, { NO_COLOR: '0' }, false],
    [{ isTTY: true }, { TERM: 'dumb' }, false],
    [{ isTTY: false }, {}, false],
    [{}, { TERM: 'xterm' }, false],
  ] as const)('colours where a person looks on: %j %j', (stream, env, wanted) => {
    expect(wantsColour(stream, env)).toBe(wanted);
  });
});
