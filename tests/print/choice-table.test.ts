/** The lists of several weeks told as one say, for every number left and every week, what each list said. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { choiceTable, type WeekChoices } from '../../src/print/choice-table.js';

const LAST = 99;

/** Lists as a feeler set has them: from none left to as many as there are, without a gap. */
const lists: fc.Arbitrary<readonly WeekChoices[]> = fc
  .array(
    fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 5 }).chain((cuts) =>
      fc
        .array(fc.integer({ min: 4, max: 7 }), { minLength: cuts.length + 1, maxLength: cuts.length + 1 })
        .map((reps) => {
          const starts = [0, ...[...cuts].sort((a, b) => a - b)];
          return starts.map((min, i) => {
            const max = (starts[i + 1] ?? LAST + 1) - 1;
            return { felt: `${min} to ${max} left`, left: { min, max }, use: `8 kg × ${reps[i]}` };
          });
        }),
    ),
    { minLength: 1, maxLength: 6 },
  )
  .map((weeks) => weeks.map((rows, i) => ({ week: i + 1, rows })));

test('whatever is left, in whichever week', () => {
  fc.assert(
    fc.property(lists, fc.integer({ min: 0, max: LAST }), (weeks, left) => {
      const lines = choiceTable(weeks) ?? [];
      const found = lines.filter(({ min, max }) => min <= left && left <= max);
      expect(found).toHaveLength(1);
      for (const { week, rows } of weeks) {
        const row = rows.find((one) => one.left !== undefined && one.left.min <= left && left <= one.left.max);
        expect(found[0]?.uses.find((use) => use.week === week)?.text).toBe(row?.use);
      }
    }),
    { seed: 20261124, numRuns: 300 },
  );
});

test('neighbours that lead to the same in every week are one line', () => {
  fc.assert(
    fc.property(lists, (weeks) => {
      const told = (choiceTable(weeks) ?? []).map(({ uses }) => uses.map(({ text }) => text).join());
      for (const [i, line] of told.entries()) expect(line).not.toBe(told[i + 1]);
    }),
    { seed: 20261124, numRuns: 100 },
  );
});

test('lists that do not say of which numbers they speak, or not of all, are left as they are', () => {
  const row = { felt: '2 or 3 left', left: { min: 2, max: 3 }, use: '8 kg × 5' };
  const { left: _left, ...old } = row;
  expect(choiceTable([{ week: 2, rows: [old] }])).toBeNull();
  expect(
    choiceTable([
      { week: 2, rows: [row] },
      { week: 3, rows: [{ ...row, left: { min: 0, max: 3 } }] },
    ]),
  ).toBeNull();
});
