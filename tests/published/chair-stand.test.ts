/**
 * Rikli and Jones 1999, J Aging Phys Act 7(2):162-181: stands in 30 seconds, 25th to 75th percentile by age group,
 * women and men (n = 7,183). The figures were taken from a secondary copy of the table.
 */
import { describe, expect, it } from 'vitest';
import { CHAIR_STAND_NORMS, normAt } from '../../src/engine/items/chair-stand-norms.js';
import { CHAIR_STAND_LOW } from '../../src/engine/rules/chair-stand-low.js';
import { CHAIR_STAND_NORM } from '../../src/engine/rules/chair-stand-norm.js';
import { CHAIR_STAND_SECONDS } from '../../src/engine/rules/chair-stand-seconds.js';

const PRINTED = `
60-64 12-17 14-19
65-69 11-16 12-18
70-74 10-15 12-17
75-79 10-15 11-17
80-84 9-14 10-15
85-89 8-13 8-14
90-94 4-11 7-12`;

describe('the 30-second chair stand', () => {
  const rows = PRINTED.trim()
    .split('\n')
    .map((line) => line.split(' ').map((cell) => cell.split('-').map(Number)));

  it.each(rows)('%j %j %j', (ages = [], women = [], men = []) => {
    const [from = 0, to = 0] = ages;
    for (let age = from; age <= to; age += 1) {
      const norm = normAt(age);
      expect([norm?.women.min, norm?.women.max]).toEqual(women);
      expect([norm?.men.min, norm?.men.max]).toEqual(men);
    }
  });

  it('has every printed row and no other', () => {
    expect(CHAIR_STAND_NORMS).toHaveLength(rows.length);
    expect([normAt(59), normAt(95)]).toEqual([null, null]);
    expect([CHAIR_STAND_SECONDS.value, CHAIR_STAND_NORM.value, CHAIR_STAND_LOW.value]).toEqual([30, 25, 8]);
  });
});
