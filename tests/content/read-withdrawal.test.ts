/** A withdrawal as it was written, or a few words on why it is not; whatever the text. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readWithdrawal } from '../../src/content/read-withdrawal.js';

const WRITTEN = { schema: 1, date: '2027-01-06', why: 'a new pain at night' };

test('is read as it was written', () => {
  expect(readWithdrawal(JSON.stringify(WRITTEN))).toEqual(WRITTEN);
});

test.each([
  ['', 'not JSON'],
  ['{', 'not JSON'],
  ['[]', ''],
  [JSON.stringify({ ...WRITTEN, schema: 2 }), 'schema'],
  [JSON.stringify({ ...WRITTEN, date: 'soon' }), 'date'],
  [JSON.stringify({ ...WRITTEN, date: '2027-02-30' }), 'date'],
  [JSON.stringify({ schema: 1, date: WRITTEN.date }), 'why'],
])('%s is not one', (text, why) => {
  const read = readWithdrawal(text);
  expect(read).not.toHaveProperty('date');
  expect(read.why).toContain(why);
});

test('any text gives an answer', () => {
  fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => typeof readWithdrawal(text).why === 'string'));
});
