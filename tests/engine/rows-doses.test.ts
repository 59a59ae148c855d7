/** Which doses each way of working takes, walked or by rungs; and what an effort may say of either. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { dosesFor, plannedBy, repsOf, setsOf } from '../../src/engine/rows/planned-by.js';
import type { Dose, Effort } from '../../src/model/dose.js';
import type { Facts, Way } from '../../src/model/exercise.js';
import { aBlock, aClient, aLibrary, anExercise, aProgramme, aRow, aSession, aTest, kg, on } from './make-block.js';

const DOSES: readonly Dose[] = [
  { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false },
  { kind: 'timed', sets: 3, seconds: { min: 20, max: 40 }, eachSide: false },
  { kind: 'distance', sets: 3, metres: { min: 20, max: 20 }, eachSide: false },
  { kind: 'every', minutes: 10, reps: 5, everySeconds: 90 },
  { kind: 'main-next', main: 15, next: 5 },
  { kind: 'steps', reps: [1, 2, 3], times: 4 },
  { kind: 'rounds', rounds: 3 },
];
const dose = (kind: Dose['kind']): Dose => {
  const found = DOSES.find((one) => one.kind === kind);
  if (found === undefined) throw new Error(kind);
  return found;
};
const factsOf = (way: Way, holds: Facts['holds'] = 'total'): Facts => anExercise('x', { way, holds }).facts;

describe('which doses a way takes', () => {
  // In the order of DOSES: w walked, l on the ladder, – refused.
  test.each<[Way, string]>([
    ['strength', 'w w – w – w –'],
    ['bodyweight', 'w w l w – w –'],
    ['combination', 'w w – w – w –'],
    ['swing', 'l l – l l l –'],
    ['hold', 'l l – – – – –'],
    ['carry', '– l l – – – –'],
    ['mobility', 'l l – – – – l'],
    ['conditioning', 'l l l l – – l'],
  ])('%s: %s', (way, expected) => {
    const planned = DOSES.map((one) => plannedBy(factsOf(way), one)?.[0] ?? '–').join(' ');
    expect(planned).toBe(expected);
    const taken = DOSES.filter((_, index) => expected.split(' ')[index] !== '–').map(({ kind }) => kind);
    expect(dosesFor(factsOf(way))).toEqual(taken);
  });

  test.each(['band', 'assisted'] as const)('anything held by %s goes on the ladder, by reps or seconds', (holds) => {
    for (const way of ['strength', 'bodyweight', 'swing'] as const) {
      const planned = DOSES.map((one) => plannedBy(factsOf(way, holds), one)?.[0] ?? '–').join(' ');
      expect(planned).toBe('l l – – – – –');
    }
  });

  test('sets and reps of each: signals that fit, times through, all steps together, the reps that fit the seconds', () => {
    expect(DOSES.map(setsOf)).toEqual([3, 3, 3, 6, 1, 4, 3]);
    expect(DOSES.map((one) => repsOf(one, 3))).toEqual([
      { min: 6, max: 10 },
      { min: 6, max: 13 },
      null,
      { min: 5, max: 5 },
      null,
      { min: 6, max: 6 },
      null,
    ]);
    expect(repsOf({ kind: 'timed', sets: 1, seconds: { min: 2, max: 3 }, eachSide: false }, 4)).toEqual({
      min: 1,
      max: 1,
    });
  });
});

describe('what cannot be planned is said', () => {
  const planned = (facts: Partial<Facts>, kind: Dose['kind'], effort?: Effort) =>
    planBlock({
      library: aLibrary(
        [anExercise('squat', facts)],
        aProgramme([
          aSession('A', aBlock([aRow('squat', { dose: dose(kind), ...(effort === undefined ? {} : { effort }) })])),
        ]),
      ),
      client: aClient({ tests: [aTest('squat', 10, { load: kg('16') })] }),
      today: on('2026-12-20'),
      edition: 0,
    }).problems.map(({ code, data }) => ({ code, data }));

  test('a dose this way does not take, with those it does', () => {
    expect(planned({ way: 'strength' }, 'rounds')).toEqual([
      {
        code: 'dose-for-way',
        data: {
          row: 'squat',
          exercise: 'squat',
          way: 'strength',
          dose: 'rounds',
          takes: ['sets', 'timed', 'every', 'steps'],
        },
      },
    ]);
  });

  test('the talk test where reps in reserve are counted', () => {
    expect(planned({}, 'sets', { kind: 'talk', level: 'sentences' })).toEqual([
      { code: 'effort-for-way', data: { row: 'squat', exercise: 'squat', way: 'strength', effort: 'talk' } },
    ]);
  });

  test.each<Effort>([
    { kind: 'reserve', tenths: 20 },
    { kind: 'rpe', tenths: 80 },
    { kind: 'percent', percent: 70 },
  ])('$kind where none are counted', (effort) => {
    const { kind } = effort;
    expect(planned({ way: 'hold' }, 'timed', effort)).toMatchObject([
      { code: 'effort-for-way', data: { effort: kind } },
    ]);
  });
});
