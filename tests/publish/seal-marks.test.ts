/** Marks on their way: sealed on a phone, mangled by messages, opened by the studio. */
import { describe, expect, test } from 'vitest';
import { makePair } from '../../src/publish/key-pair.js';
import { looksSealed, openMarks, sealMarks } from '../../src/publish/seal-marks.js';

const MARKS =
  'Chalkleaf marks\nBooklet 0123456789abcdef0123456789abcdef\nDevice phone-7f3a\nEnd: 0 marks, check 00000000\n';
const pair = await makePair();
const sealed = await sealMarks(MARKS, pair);

test('what was sealed to the studio opens with its key, and with no other', async () => {
  expect(await openMarks(sealed, [pair])).toEqual({ text: MARKS });
  expect(await openMarks(sealed, [await makePair(), pair])).toEqual({ text: MARKS });
  expect(await openMarks(sealed, [await makePair()])).toEqual({ fault: 'no key' });
  expect(await openMarks(sealed, [])).toEqual({ fault: 'no key' });
});

test('it says nothing of whose marks they are, and few and many look alike', async () => {
  expect(sealed).not.toMatch(/phone-7f3a|0123456789abcdef/);
  expect((await sealMarks(`${MARKS}a note of some length`, pair)).length).toBe(sealed.length);
});

test('the private key is not needed to seal, and does not travel', async () => {
  const { crv, x, y, d } = pair;
  const other = await sealMarks(MARKS, { crv, x, y });
  expect(await openMarks(other, [pair])).toEqual({ text: MARKS });
  expect(other).not.toContain(d);
});

describe('as messages leave it', () => {
  test.each([
    ['quoted', (text: string) => text.replace(/^/gm, '> ')],
    ['broken elsewhere', (text: string) => text.replace(/(.{37})/g, '$1\r\n')],
    ['in one line', (text: string) => text.replaceAll('\n', ' ')],
    ['with words before and after', (text: string) => `Hi coach!\n\n${text}\nSent from my phone`],
    ['set in, with blanks that do not break', (text: string) => text.replace(/^/gm, '\u00a0\u00a0')],
    ['twice', (text: string) => `${text}\n${text}`],
  ])('%s', async (name, mangle) => {
    const message = mangle(sealed);
    expect(looksSealed(message)).toBe(true);
    const text = name === 'twice' ? `${MARKS}\n${MARKS}` : MARKS;
    expect(await openMarks(message, [pair])).toEqual({ text });
  });

  test('cut off anywhere after its first line, it opens to nothing', async () => {
    const first = sealed.indexOf('\n');
    for (let end = first; end < sealed.length - 2; end += 7) {
      expect(await openMarks(sealed.slice(0, end), [pair])).toEqual({ fault: 'cut short' });
    }
  });

  test('a line lost in the middle, or a letter changed, opens to nothing', async () => {
    const lines = sealed.split('\n');
    expect(await openMarks([...lines.slice(0, 8), ...lines.slice(9)].join('\n'), [pair])).toHaveProperty('fault');
    const at = Math.floor(sealed.length * 0.7);
    const changed = `${sealed.slice(0, at)}${sealed[at] === 'A' ? 'B' : 'A'}${sealed.slice(at + 1)}`;
    expect(await openMarks(changed, [pair])).toHaveProperty('fault');
  });

  test('of two messages in one, one that is not whole refuses both', async () => {
    expect(await openMarks(`${sealed}${sealed.slice(0, 300)}`, [pair])).toEqual({ fault: 'cut short' });
  });
});

test('plain marks do not look sealed', () => {
  expect(looksSealed(MARKS)).toBe(false);
});
