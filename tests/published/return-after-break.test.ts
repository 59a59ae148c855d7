/**
 * Caterisano et al. 2019 (CSCCa and NSCA joint consensus guidelines), Strength Cond J 41(3):1-23. From memory: volume
 * cut by 50, 30, 20 and 10 per cent in the first four weeks after two weeks or more without training; for lifting,
 * frequency at most 3 days in the first week and 4 in the second, and sets × reps × part of a maximum between 11 and
 * 30, so never above 30. Worked: 3 × 10 at 0.70 is 21, within; 5 × 10 at 0.70 is 35, above.
 */
import { describe, expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { BREAK_AWAY } from '../../src/engine/rules/break-away.js';
import { RETURN_CUT_FIRST } from '../../src/engine/rules/return-cut-first.js';
import { RETURN_CUT_FOURTH } from '../../src/engine/rules/return-cut-fourth.js';
import { RETURN_CUT_SECOND } from '../../src/engine/rules/return-cut-second.js';
import { RETURN_CUT_THIRD } from '../../src/engine/rules/return-cut-third.js';
import { RETURN_DAYS_FIRST } from '../../src/engine/rules/return-days-first.js';
import { RETURN_DAYS_SECOND } from '../../src/engine/rules/return-days-second.js';
import { RETURN_VOLUME } from '../../src/engine/rules/return-volume.js';
import { PLACE } from '../engine/generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  kg,
  on,
} from '../engine/make-block.js';

/** Sets of the first weeks after `days` without training, as many as the printed cut and limit leave of `sets`. */
function setsBack(days: number, sets: number, reps: number): readonly number[] {
  const dose = { kind: 'sets', sets, reps: { min: reps, max: reps }, eachSide: false } as const;
  const programme = aProgramme([aSession('A', aBlock([aRow('squat', { dose })]))], {
    curve: Array.from({ length: 6 }, () => ({ reserve: 40, share: 1000, easy: false })),
  });
  const from = on(new Date(Date.UTC(2027, 0, 3 - days)).toISOString().slice(0, 10));
  const client = aClient({
    minutes: 180,
    tests: [aTest('squat', 12, { load: kg('8'), reserve: 40, date: on('2026-10-01') })],
    breaks: [{ from, until: on('2027-01-02'), cause: 'away', place: PLACE }],
  });
  const library = aLibrary([anExercise('squat')], programme);
  const { value } = planBlock({ library, client, today: on('2026-12-20'), edition: 0 });
  return value?.inputs.strands[0]?.occurrences.map((each) => each.sets) ?? [];
}

describe('the first weeks back', () => {
  it('cut the volume by 50, 30, 20 and 10 per cent', () => {
    const cuts = [RETURN_CUT_FIRST, RETURN_CUT_SECOND, RETURN_CUT_THIRD, RETURN_CUT_FOURTH];
    expect(cuts.map(({ value }) => value)).toEqual([500, 300, 200, 100]);
    expect(setsBack(14, 10, 1)).toEqual([5, 7, 8, 9, 10, 10]);
    expect(setsBack(13, 10, 1)).toEqual([10, 10, 10, 10, 10, 10]);
  });

  it('keep sets × reps × part of a maximum within 30 in the first two', () => {
    const part = (reps: number, reserve: number) => 310 / (300 + 10 * reps + reserve);
    for (const reps of [3, 5, 8, 10]) {
      const planned = setsBack(14, 20, reps);
      planned.slice(0, 2).forEach((sets, index) => {
        const cut = Math.floor(20 * (index === 0 ? 0.5 : 0.7) + 0.5);
        const most = Math.floor(RETURN_VOLUME.value / (reps * part(reps, 40)));
        expect(sets).toBe(Math.min(cut, most));
        expect(sets * reps * part(reps, 40)).toBeLessThanOrEqual(30);
      });
    }
    expect(RETURN_VOLUME.value).toBe(30);
    expect(3 * 10 * 0.7).toBeLessThanOrEqual(RETURN_VOLUME.value);
    expect(5 * 10 * 0.7).toBeGreaterThan(RETURN_VOLUME.value);
  });

  it('after two weeks, on three days and then on four', () => {
    expect([BREAK_AWAY.value, RETURN_DAYS_FIRST.value, RETURN_DAYS_SECOND.value]).toEqual([14, 3, 4]);
  });
});
