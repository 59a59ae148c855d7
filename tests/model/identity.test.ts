/** Ids are ordered by code point, whatever the letters. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareIds } from '../../src/model/identity.js';

/** The definition, at length. */
function byCodePoint(a: string, b: string): number {
  const [left, right] = [Array.from(a), Array.from(b)].map((letters) => letters.map((one) => one.codePointAt(0) ?? 0));
  for (let i = 0; left !== undefined && right !== undefined && i < Math.min(left.length, right.length); i += 1) {
    const difference = (left[i] ?? 0) - (right[i] ?? 0);
    if (difference !== 0) return Math.sign(difference);
  }
  return Math.sign((left?.length ?? 0) - (right?.length ?? 0));
}

const letters = fc.array(fc.constantFrom('a', 'z', '-', '9', 'é', '\uffee', '\ue000', '𝒶', '😀'), { maxLength: 6 });
const id = letters.map((all) => all.join(''));

test('as the code points stand', () => {
  fc.assert(fc.property(id, id, (a, b) => Math.sign(compareIds(a, b)) === byCodePoint(a, b)));
  expect(compareIds('\uffee', '😀')).toBeLessThan(0);
  expect(compareIds('bell-8', 'bell-8')).toBe(0);
});
