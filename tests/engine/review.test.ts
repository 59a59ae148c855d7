/** What a review shows: sessions, rows, reserve, what a side can lift, pain and load, each against a small history. */
import { describe, expect, it, test } from 'vitest';
import { layOverrides } from '../../src/engine/rulebook.js';
import { NO_HISTORY } from '../../src/model/history.js';
import { exerciseId } from '../../src/model/identity.js';
import { on } from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone, type MadeRow } from './make-history.js';
import { allDone, doneUpTo, reviewOf, withPain } from './review-made.js';

const today = '2027-01-25';

describe('the block and its weeks', () => {
  it('is the one under way, with the week that today is in', () => {
    const { block } = reviewOf({ history: doneUpTo(9), today });
    expect(block).toMatchObject({ block: 2, edition: 1, begins: '2027-01-04', ends: '2027-02-14', week: 4, weeks: 6 });
    expect(reviewOf({ history: doneUpTo(0), today: '2027-01-03' }).block?.week).toBe(0);
    expect(reviewOf({ today: '2027-02-15' }).block?.week).toBe(7);
  });

  it('is nothing where nothing was issued', () => {
    expect(reviewOf({ history: NO_HISTORY, today })).toMatchObject({ block: null, need: 'not begun', proposals: [] });
  });

  it('counts sessions by the day they were done on', () => {
    const late = doneUpTo(9, (one) => (one.occurrence === 3 ? { ...one, day: on('2027-01-12') } : one));
    const { weeks } = reviewOf({ history: late, today });
    expect(weeks.map(({ done, planned, over }) => `${done}/${planned}${over ? '' : ' running'}`)).toEqual([
      '2/3',
      '4/3',
      '3/3',
      '0/3 running',
      '0/3 running',
      '0/3 running',
    ]);
  });

  it('plans none on days of a break that the coach wrote', () => {
    const place = { file: '', line: 1, column: 1, length: 1 };
    const breaks = [{ from: on('2027-01-12'), until: on('2027-01-14'), cause: 'away' as const, place }];
    const { weeks } = reviewOf({ history: doneUpTo(3), client: { breaks }, today });
    expect(weeks.map(({ planned }) => planned)).toEqual([3, 2, 3, 3, 3, 3]);
  });

  it('has of each session when it was planned and done, and what was said', () => {
    const said = doneUpTo(1, (one) => ({
      ...one,
      day: on('2027-01-05'),
      effort: 6,
      minutes: 40,
      today: 'short of time',
    }));
    const [first, second] = reviewOf({ history: said, today }).sessions;
    expect(first).toMatchObject({
      occurrence: 1,
      planned: '2027-01-04',
      done: '2027-01-05',
      effort: 6,
      minutes: 40,
      today: 'short of time',
    });
    expect(second).toMatchObject({ occurrence: 2, planned: '2027-01-06', done: null });
  });

  it('knows for how long nothing was heard', () => {
    expect(reviewOf({ history: doneUpTo(1), today: '2027-01-10' }).silentDays).toBe(6);
    expect(reviewOf({ history: doneUpTo(0), today: '2027-01-10' }).silentDays).toBe(6);
    expect(reviewOf({ history: doneUpTo(0), today: '2027-01-03' }).silentDays).toBeNull();
  });
});

describe('planned against done', () => {
  const planned = { reps: 8, kg: 16 };
  const asked = (kg: number, reps: number) => ({
    key: aMarkedRow('squat', { sets: [{}] }).sets[0]?.key ?? expect.fail('no set'),
    kind: 'work' as const,
    round: 1,
    reps,
    load: { kg, grams: 1000 * kg, mode: 'total' as const, pieces: [], label: `${kg} kg` },
  });
  const three = (change: MadeRow['sets']) => aMarkedRow('squat', { sets: change ?? [] });
  const set = (reps: number, kg = 16, more = {}) => ({ kg, reps, planned: asked(planned.kg, planned.reps), ...more });
  const outcomeOf = (row: ReturnType<typeof three>) => {
    const [found] = reviewOf({ history: aHistory(aSessionDone('2027-01-04', [row])), today }).rows;
    const { asPlanned, more, less, easier, leftOut, unmarked } = found ?? expect.fail('no row');
    return Object.entries({ asPlanned, more, less, easier, leftOut, unmarked }).flatMap(([name, n]) =>
      n > 0 ? name : [],
    );
  };

  test.each([
    ['as planned', alike(3, set(8)), 'asPlanned'],
    ['a rep more', [set(8), set(9), set(8)], 'more'],
    ['a rep fewer', [set(8), set(7), set(8)], 'less'],
    ['heavier for as many', alike(3, set(8, 20)), 'more'],
    ['lighter for as many', alike(3, set(8, 12)), 'less'],
    ['heavier for fewer, less in all', alike(3, set(6, 20)), 'less'],
    ['heavier for fewer, more in all', alike(3, set(7, 20)), 'more'],
    ['two of three sets', alike(2, set(8)), 'less'],
    ['one left out', [set(8), set(8), set(8, 16, { done: 'left out' })], 'less'],
    ['one easier', [set(8), set(8), set(8, 12, { done: 'easier' })], 'easier'],
    ['all left out', alike(3, set(8, 16, { done: 'left out' })), 'leftOut'],
    ['an extra set', [...alike(3, set(8)), { kg: 16, reps: 8, done: 'extra' as const }], 'more'],
  ])('%s', (_, sets, outcome) => {
    expect(outcomeOf(three(sets))).toEqual([outcome]);
  });

  it('takes for planned what is printed for a gate that did not open', () => {
    const otherwise = [
      { exercise: exerciseId('squat'), reps: 9, load: asked(12, 9).load, tempo: 'normal' as const, sets: 3 },
    ];
    const gated = { ...asked(16, 8), otherwise };
    expect(outcomeOf(three(alike(3, { kg: 12, reps: 9, planned: gated })))).toEqual(['asPlanned']);
    expect(outcomeOf(three(alike(3, { kg: 12, reps: 8, planned: gated })))).toEqual(['less']);
  });

  it('counts each session once, and how often a row was left running', () => {
    const done = three(alike(3, set(8)));
    const none = aMarkedRow('press');
    const sessions = [4, 6, 8, 11].map((day, index) =>
      aSessionDone(
        `2027-01-${String(day).padStart(2, '0')}`,
        [done, index === 0 ? aMarkedRow('press', { sets: alike(3, { kg: 12, reps: 8 }) }) : none],
        {
          occurrence: index + 1,
        },
      ),
    );
    const { rows, need } = reviewOf({ history: aHistory(...sessions), today: '2027-01-12' });
    expect(rows.map(({ exercise, sessions: n, unmarked, quiet }) => [exercise, n, unmarked, quiet])).toEqual([
      ['squat', 4, 0, 0],
      ['press', 4, 3, 3],
    ]);
    expect(need).toBe('worth a look');
  });

  it('adds up sets and reps of what was done, and has the last load', () => {
    const history = aHistory(aSessionDone('2027-01-04', [three([set(8), set(8), set(7, 12)])]));
    expect(reviewOf({ history, today }).rows[0]).toMatchObject({
      sets: { planned: 3, done: 3 },
      amount: { planned: 24, done: 23, unit: 'reps' },
      load: { planned: { label: '16 kg' }, done: { label: '12 kg' } },
    });
  });
});

describe('reserve said against asked', () => {
  const said = (...left: readonly number[]) =>
    aHistory(
      ...left.map((reps, index) =>
        aSessionDone(
          `2027-01-0${4 + index}`,
          [aMarkedRow('squat', { sets: alike(3, { kg: 16, reps: 8 }), left: reps })],
          {
            occurrence: index + 1,
          },
        ),
      ),
    );

  it.each([
    [[2, 2], 0, 2],
    [[3, 2, 2], 3, 3],
    [[1, 2, 2], -3, 3],
    [[0], -20, 1],
  ] as const)('%j left of 2 asked', (left, difference, n) => {
    expect(reviewOf({ history: said(...left), today }).effort).toEqual([{ exercise: 'squat', difference, n }]);
  });

  it('says nothing where nothing was said', () => {
    const unsaid = doneUpTo(3, (one) => ({ ...one, rows: one.rows.map((row) => ({ ...row, reserve: [] })) }));
    expect(reviewOf({ history: unsaid, today }).effort).toEqual([]);
  });
});

describe('what a side can lift now', () => {
  const press = (day: string, left: MadeRow['left'], ...reps: readonly [number, number]) =>
    aSessionDone(
      day,
      [
        aMarkedRow('press', {
          sides: 'each',
          sets: [
            { kg: 12, reps: reps[0], side: 'left' },
            { kg: 12, reps: reps[1], side: 'right' },
          ],
          ...(left === undefined ? {} : { left }),
        }),
      ],
      { occurrence: Number(day.slice(-2)) },
    );
  const history = aHistory(
    press('2027-01-04', 2, 6, 8),
    press('2027-01-06', 2, 7, 8),
    press('2027-01-08', 2, 8, 8),
    press('2027-01-11', 1, 8, 10),
  );

  it('has the first, the latest, the middle of the last three and their spread, in reps at the last load', () => {
    const { abilities } = reviewOf({ history, today });
    expect(
      abilities.map(({ side, first, latest, middle, lowest, highest, n }) => ({
        side,
        of: [first, latest, middle].map(({ at }) => at),
        lowest,
        highest,
        n,
      })),
    ).toEqual([
      { side: 'left', of: [80, 90, 90], lowest: 90, highest: 100, n: 4 },
      { side: 'right', of: [100, 110, 100], lowest: 100, highest: 110, n: 4 },
    ]);
  });

  it('compares the sides at the load of the weaker', () => {
    expect(reviewOf({ history, today }).sides).toMatchObject([
      { exercise: 'press', weaker: 'left', load: { label: '12 kg' }, reps: { left: 90, right: 100 } },
    ]);
  });

  it('carries an estimate from one load to another', () => {
    const heavier = aHistory(
      aSessionDone('2027-01-04', [aMarkedRow('squat', { sets: [{ kg: 16, reps: 10 }], left: 2 })]),
      aSessionDone('2027-01-06', [aMarkedRow('squat', { sets: [{ kg: 20, reps: 5 }], left: 1 })], { occurrence: 2 }),
    );
    // 16 kg × (30 + 12) = 672 = 20 kg × 33.6: 3.6 reps at 20 kg.
    const [squat] = reviewOf({ history: heavier, today }).abilities;
    expect([squat?.first.at, squat?.latest.at]).toEqual([36, 60]);
  });
});

describe('pain', () => {
  const sore = withPain(
    ['2027-01-04', { where: 'knee', degree: 3, side: 'left' }],
    ['2027-01-06', { where: 'knee', degree: 2, side: 'left', worseNextMorning: true }],
    ['2027-01-08', { where: 'shoulder', degree: 1 }, 1],
  );

  it('is told by place and side, with its trend and how long it has been quiet', () => {
    const { pain } = reviewOf({ history: doneUpTo(9, sore), today });
    expect(pain.map(({ where, side, trend, quietDays }) => [where, side, trend, quietDays])).toEqual([
      ['knee', 'left', 'less', 19],
      ['shoulder', 'both', 'once', 17],
    ]);
    expect(pain[0]?.reports.map(({ date, degree, exercise }) => [date, degree, exercise])).toEqual([
      ['2027-01-04', 3, 'squat'],
      ['2027-01-06', 2, 'squat'],
    ]);
  });

  it('said of a session with nothing else marked is not lost', () => {
    const [bare] = allDone().sessions;
    if (bare === undefined) expect.fail('no session');
    const rows = bare.rows.map((row) => ({ ...row, sets: [] }));
    const history = { ...doneUpTo(0), sessions: [{ ...bare, rows, pain: [{ where: 'knee' as const, degree: 5 }] }] };
    const review = reviewOf({ history: { ...history, lastMark: bare.day }, today: '2027-01-05' });
    expect(review.pain).toMatchObject([{ where: 'knee', reports: [{ degree: 5, exercise: null }] }]);
    expect(review.need).toBe('pain');
  });
});

describe('load', () => {
  it('is of seven days, as published, and of no other number', () => {
    const other = {
      rule: 'review-load',
      value: 14,
      reason: 'to see',
      place: { file: '', line: 1, column: 1, length: 1 },
    };
    expect(layOverrides([other]).problems).toMatchObject([{ code: 'rule-out-of-range', data: { least: 7, most: 7 } }]);
    const history = doneUpTo(9, (one) => ({ ...one, effort: 6, minutes: 60 }));
    expect(reviewOf({ history, today, overrides: [other] }).loads).toEqual(reviewOf({ history, today }).loads);
  });

  const said = (effort: number | null, minutes: number | null) => doneUpTo(9, (one) => ({ ...one, effort, minutes }));

  it('is effort times minutes, week by week, a running week without monotony', () => {
    const { loads } = reviewOf({ history: said(6, 60), today: '2027-01-20' });
    expect(loads).toMatchObject([
      { week: 1, kind: 'known', total: 1080 },
      { week: 2, kind: 'known', total: 1080 },
      { week: 3, kind: 'running', total: 720, days: [] },
    ]);
    expect(loads[0]?.kind === 'known' && loads[0].monotony).toBeCloseTo(0.866, 4);
  });

  it('is not known where something was not said, and says on which days', () => {
    expect(reviewOf({ history: said(6, null), today }).loads[0]).toMatchObject({
      kind: 'not known',
      days: ['2027-01-04', '2027-01-06', '2027-01-08'],
    });
  });

  it('adds up two sessions of one day, and has none where none was done', () => {
    const both = doneUpTo(2, (one) => ({ ...one, day: on('2027-01-04'), effort: 5, minutes: 30 }));
    expect(reviewOf({ history: both, today }).loads.map((load) => [load.kind, 'total' in load && load.total])).toEqual([
      ['known', 300],
      ['alike', 0],
      ['alike', 0],
      ['running', 0],
    ]);
  });
});
