/** Any value told by what is new in it arrives letter for letter. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readByDifference, tellByDifference } from '../../src/session/by-difference.js';
import { finish } from '../../src/session/in-steps.js';

/** Through text, as it goes. */
const there = (value: unknown): unknown =>
  finish(readByDifference(JSON.parse(JSON.stringify(tellByDifference(value)))));
const same = (value: unknown): void => {
  expect(JSON.stringify(there(value))).toBe(JSON.stringify(value));
};

/** Few names and few values, so that much is like what stands before it. */
const alike = fc.letrec((tie) => ({
  value: fc.oneof({ depthSize: 'medium' }, fc.constantFrom(0, 1, -1, 'a', '', null, true), tie('list'), tie('fields')),
  list: fc.array(tie('value'), { maxLength: 5 }),
  fields: fc.dictionary(fc.constantFrom('a', 'b', 'c', 'a,b'), tie('value'), { maxKeys: 3 }),
})).value;

test.each([fc.jsonValue(), alike])('of any shape', (values) => {
  fc.assert(
    fc.property(values, (value) => same(value)),
    { numRuns: 500 },
  );
});

test('two that are like each other, and lists that grow and shrink', () => {
  fc.assert(
    fc.property(alike, fc.array(alike, { minLength: 1, maxLength: 4 }), (value, more) => {
      same([value, value, { rows: more }, { rows: [...more, value] }, { rows: more.slice(1) }, { rows: [] }]);
    }),
    { numRuns: 500 },
  );
});

test('a field that is not there does not travel, and one after another is told by the first', () => {
  const sets = [1, 2, 3].map((round) => ({ kind: 'work', round, reps: 8, side: undefined }));
  expect(tellByDifference(sets)).toEqual({
    shapes: [['kind', 'round', 'reps']],
    value: [0, [1, 'work', 1, 8], [-1, 1, 2], [-1, 1, 3]],
  });
  same(sets);
});
