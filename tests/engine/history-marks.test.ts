/** What marks say of an exercise: the set that decides, where each row ended, and what is told of gaps and quiet rows. */
import { describe, expect, it, test } from 'vitest';
import { exercisesById } from '../../src/engine/block-context.js';
import { NO_RECALL, type Recall, type Remembered } from '../../src/engine/history/recall.js';
import { remember } from '../../src/engine/history/remember.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Client } from '../../src/model/client.js';
import { addDays, isoOfDay } from '../../src/model/day.js';
import type { DoneRow, DoneSession, History } from '../../src/model/history.js';
import { exerciseId } from '../../src/model/identity.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { PLACE } from './generate-exercises.js';
import { aClient, anExercise, aTest, bodyweight, kg, on } from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone, type MadeRow, planLoad } from './make-history.js';

const today = on('2026-12-28');
const press = anExercise('press');
const row = anExercise('row', { sides: 'each' });
const chair = anExercise('chair');
const sit = anExercise('sit', { ...bodyweight, measure: 'chair stand' });
const floor = anExercise('floor', { ...bodyweight });
const EXERCISES = exercisesById([press, row, chair, sit, floor]);

function recalled(history: History, client: Partial<Client> = {}, overrides: readonly RuleOverride[] = []): Remembered {
  const rules = layOverrides(overrides).value;
  return remember({ client: aClient(client), history, exercises: EXERCISES, rules, today });
}
const recallOf = (remembered: Remembered, id = 'press'): Recall => remembered.recalls.get(exerciseId(id)) ?? NO_RECALL;
const own = (rule: string, value: number): RuleOverride => ({ rule, value, reason: 'to see', place: PLACE });

/** Done on so many days before today, three equal sets, `left` said. */
const daysAgo = (days: number, sets: MadeRow['sets'], more: MadeRow = {}, of = 'press'): DoneSession =>
  aSessionDone(addDays(today, -days), [aMarkedRow(of, { ...more, sets: sets ?? [] })], { occurrence: 60 - days });
const work = (kilograms: number, reps: number, left?: number, more: MadeRow = {}) => {
  return { sets: alike(3, { kg: kilograms, reps }), more: { ...more, ...(left === undefined ? {} : { left }) } };
};
const sessions = (...all: readonly (readonly [number, ReturnType<typeof work>])[]): History =>
  aHistory(...all.map(([days, { sets, more }]) => daysAgo(days, sets, more)));

/** `60 kg × 8, 2 left (2026-12-20)` of each test made. */
const tests = ({ client }: Remembered): readonly string[] =>
  client.tests
    .filter(({ marked }) => marked === true)
    .map(({ side, load, reps, reserve, tempo, date }) => {
      const of = side === 'both' ? '' : `${side} `;
      return `${of}${load?.figure ?? 0} × ${reps}, ${reserve / 10} left${tempo === undefined ? '' : `, ${tempo}`} (${isoOfDay(date)})`;
    });

const last = (remembered: Remembered, id = 'press', key = `A/${id}`): string => {
  const end = recallOf(remembered, id).lastIn.get(key);
  if (end === undefined) return 'nothing';
  const { grams, tempo, earned, reps, lighter, short } = end;
  const slow = tempo === 'normal' ? '' : ` ${tempo}`;
  return `${grams / 1000} × ${reps}${slow}, earned ${earned}${lighter > 0 ? `, ${lighter} lighter` : ''}${short ? ', short' : ''}`;
};

describe('a set done proves what it is', () => {
  it('though the last one was tired: 9, 7, 5 with 1 left is at least 9', () => {
    const { sets } = work(60, 9, 1);
    const tired = sets.map((set, index) => ({ ...set, reps: [9, 7, 5][index] ?? 0 }));
    expect(tests(recalled(aHistory(daysAgo(5, tired, { left: 1 }))))).toEqual(['60 × 9, 0 left (2026-12-23)']);
  });
});

describe('done-median: the set in the middle of the last three', () => {
  test.each([
    ['of one that one', [[5, work(60, 8, 2)]], '60 × 8, 2 left (2026-12-23)'],
    [
      'of two the lower',
      [
        [7, work(60, 8, 4)],
        [5, work(60, 8, 2)],
      ],
      '60 × 8, 2 left (2026-12-23)',
    ],
    [
      'of two none that fell short with a heavier load',
      [
        [7, work(60, 8, 2)],
        [5, work(70, 2, 0)],
      ],
      '60 × 8, 2 left (2026-12-21)',
    ],
    [
      'of two one that fell short with the same load',
      [
        [7, work(60, 8, 2)],
        [5, work(60, 2, 0)],
      ],
      '60 × 2, 0 left (2026-12-23)',
    ],
    [
      'of three the middle',
      [
        [9, work(60, 8, 1)],
        [7, work(60, 8, 4)],
        [5, work(60, 8, 2)],
      ],
      '60 × 8, 2 left (2026-12-23)',
    ],
    [
      'of four the last three',
      [
        [11, work(60, 8, 0)],
        [9, work(60, 8, 3)],
        [7, work(60, 8, 4)],
        [5, work(60, 8, 5)],
      ],
      '60 × 8, 4 left (2026-12-21)',
    ],
    [
      'by what is lifted, not by reps',
      [
        [9, work(50, 10, 2)],
        [7, work(60, 8, 2)],
        [5, work(70, 5, 2)],
      ],
      '60 × 8, 2 left (2026-12-21)',
    ],
  ] as const)('%s', (_, all, said) => {
    expect(tests(recalled(sessions(...all)))).toEqual([said]);
  });

  it('is in the middle of as many as the coach sets', () => {
    const history = sessions([9, work(60, 8, 1)], [7, work(60, 8, 4)], [5, work(60, 8, 5)]);
    expect(tests(recalled(history, {}, [own('done-median', 1)]))).toEqual(['60 × 8, 5 left (2026-12-23)']);
  });

  it('rests on the last set, after which the reserve was said', () => {
    const sets = [
      { kg: 60, reps: 8 },
      { kg: 60, reps: 8 },
      { kg: 60, reps: 7 },
    ];
    expect(tests(recalled(aHistory(daysAgo(5, sets, { left: 1.5 }))))).toEqual(['60 × 7, 1.5 left (2026-12-23)']);
  });

  it('does not speak where the coach has tested since, or the same day', () => {
    const history = sessions([5, work(60, 8, 2)]);
    const tested = (date: string) => ({ tests: [aTest('press', 5, { load: kg('50'), date: on(date) })] });
    expect(tests(recalled(history, tested('2026-12-23')))).toEqual([]);
    expect(tests(recalled(history, tested('2026-12-24')))).toEqual([]);
    expect(tests(recalled(history, tested('2026-12-22')))).toHaveLength(1);
  });

  it('knows each side by its own marks, the word for both sides standing for either', () => {
    const sides = [...alike(3, { kg: 20, reps: 8, side: 'left' }), ...alike(3, { kg: 20, reps: 9, side: 'right' })];
    const each = (left: MadeRow['left']) =>
      aHistory(daysAgo(5, sides, { sides: 'each', ...(left === undefined ? {} : { left }) }, 'row'));
    expect(tests(recalled(each({ left: 1, right: 3 })))).toEqual([
      'left 20 × 8, 1 left (2026-12-23)',
      'right 20 × 9, 3 left (2026-12-23)',
    ]);
    expect(tests(recalled(each(2)))).toEqual(['left 20 × 8, 2 left (2026-12-23)', 'right 20 × 9, 2 left (2026-12-23)']);
    expect(tests(recalled(each({ right: 3 })))).toEqual(['right 20 × 9, 3 left (2026-12-23)']);
  });

  it('is at the tempo it was done at', () => {
    const sets = alike(3, { kg: 60, reps: 8, tempo: 'slow lowering' as const });
    expect(tests(recalled(aHistory(daysAgo(5, sets, { left: 2 }))))).toEqual([
      '60 × 8, 2 left, slow lowering (2026-12-23)',
    ]);
  });

  it('takes a trial and a feeler set for what they were, where nothing came after them', () => {
    const tried = [{ kg: 70, reps: 4, kind: 'trial' as const }];
    expect(tests(recalled(aHistory(daysAgo(5, tried, { left: 2 }))))).toEqual(['70 × 4, 2 left (2026-12-23)']);
    const felt = [{ kg: 8, reps: 6, kind: 'feeler' as const }];
    expect(tests(recalled(aHistory(daysAgo(5, felt, { left: 4 }))))).toEqual(['8 × 6, 4 left (2026-12-23)']);
  });

  it('where a feeler set went before, takes the lower: nobody knows of which the reserve was said', () => {
    const sets = [{ kg: 8, reps: 6, kind: 'feeler' as const }, ...alike(3, { kg: 9, reps: 6 })];
    expect(tests(recalled(aHistory(daysAgo(5, sets, { left: 5 }))))).toEqual(['8 × 6, 5 left (2026-12-23)']);
  });
});

describe('a test marked counts as one the coach took', () => {
  const planned = { reps: 15, stopAt: { reserve: 10 } };
  const tested = (reps: number, more: MadeRow['sets'] = [], asPlanned = false) => {
    const set = { kg: 60, reps, kind: 'test' as const, asPlanned };
    const done = aMarkedRow('press', { sets: [set, ...(more ?? [])], left: 3 });
    const sets = done.sets.map((one) =>
      one.kind === 'test' ? { ...one, planned: { ...planned, key: one.key, kind: 'test' as const, round: 1 } } : one,
    );
    return aSessionDone('2026-12-23', [{ ...done, sets }]);
  };

  it('stops with so many left as it was planned to, whatever was said after the work', () => {
    expect(tests(recalled(aHistory(tested(11, alike(2, { kg: 60, reps: 8 })))))).toEqual([
      '60 × 11, 1 left (2026-12-23)',
    ]);
  });

  it('with what was said, where it was the last set', () => {
    expect(tests(recalled(aHistory(tested(11))))).toEqual(['60 × 11, 3 left (2026-12-23)']);
  });

  it('and says nothing where it was only ticked: the plan names no number of reps', () => {
    expect(tests(recalled(aHistory(tested(15, [], true))))).toEqual([]);
  });

  it('ends what older marks say, and newer ones end it', () => {
    const before = daysAgo(10, alike(3, { kg: 60, reps: 8 }), { left: 5 });
    expect(tests(recalled(aHistory(before, tested(11))))).toEqual(['60 × 11, 3 left (2026-12-23)']);
    const after = daysAgo(1, alike(3, { kg: 60, reps: 8 }), { left: 2 });
    expect(tests(recalled(aHistory(before, tested(11), after)))).toEqual(['60 × 8, 2 left (2026-12-27)']);
  });

  it('of a published measure is its count; work in it is none', () => {
    const measure = { reps: 14, kind: 'test' as const, asPlanned: false };
    expect(tests(recalled(aHistory(daysAgo(5, [measure], {}, 'sit'))))).toEqual(['0 × 14, 0 left (2026-12-23)']);
    expect(tests(recalled(aHistory(daysAgo(5, alike(3, { reps: 8 }), { left: 2 }, 'sit'))))).toEqual([]);
  });
});

describe('done-days: marks older than that say nothing', () => {
  test.each([
    [41, 1],
    [42, 1],
    [43, 0],
  ])('%i days: %i', (days, count) => {
    const remembered = recalled(sessions([days, work(60, 8, 2)]));
    expect(tests(remembered)).toHaveLength(count);
    expect(remembered.recalls.size).toBe(count);
  });
});

describe('done-unsaid: no reserve was said', () => {
  const done = (reps: number, kilograms: number, planned = { reps: 8, reserve: 20, kg: 60 }): History => {
    const marked = aMarkedRow('press', { sets: alike(3, { kg: kilograms, reps }) });
    const sets = marked.sets.map((set) => ({
      ...set,
      planned: {
        ...{ key: set.key, kind: 'work' as const, round: 1, reps: planned.reps, reserve: planned.reserve },
        load: planLoad(planned.kg),
      },
    }));
    return aHistory(aSessionDone('2026-12-23', [{ ...marked, sets }]));
  };

  test.each([
    ['as planned: what the plan predicted', 8, 60, '60 × 8, 2 left (2026-12-23)'],
    ['fewer: what was done, and the reserve predicted', 7, 60, '60 × 7, 2 left (2026-12-23)'],
    ['more: no more than the plan predicted in all', 9, 60, '60 × 9, 1 left (2026-12-23)'],
    ['more than it predicted: what was done', 12, 60, '60 × 12, 0 left (2026-12-23)'],
    ['heavier: what the plan predicts there', 5, 65, '65 × 5, 1.9 left (2026-12-23)'],
    ['lighter: never more left than was predicted', 8, 40, '40 × 8, 2 left (2026-12-23)'],
  ])('%s', (_, reps, kilograms, said) => {
    const remembered = recalled(done(reps, kilograms));
    expect(tests(remembered)).toEqual([said]);
    expect(recallOf(remembered).weak).toBe(true);
  });

  it('gives way to any in which it was said', () => {
    const { sessions: ticked } = done(8, 60);
    const said = sessions([20, work(60, 6, 2)]).sessions;
    expect(tests(recalled(aHistory(...said, ...ticked)))).toEqual(['60 × 6, 2 left (2026-12-08)']);
  });

  it('takes nothing where the coach wants nothing of it, nor where the plan predicted nothing', () => {
    expect(tests(recalled(done(8, 60), {}, [own('done-unsaid', 0)]))).toEqual([]);
    expect(tests(recalled(sessions([5, work(60, 8)])))).toEqual([]);
  });
});

describe('where a row ended', () => {
  const top = (left: number | undefined, days: number) => [days, work(60, 10, left)] as const;

  test.each([
    ['once at the top, the reserve as asked', [top(2, 5)], '60 × 10, earned 1'],
    ['twice', [top(2, 9), top(2, 5)], '60 × 10, earned 2'],
    ['three times is no more', [top(2, 9), top(2, 7), top(2, 5)], '60 × 10, earned 2'],
    ['with less left than asked', [top(2, 9), top(1, 5)], '60 × 10, earned 0'],
    ['with another load before it', [[9, work(50, 10, 2)], top(2, 5)], '60 × 10, earned 1'],
    [
      'below the top in between neither counts nor breaks',
      [top(2, 9), [7, work(60, 8, 2)], top(2, 5)],
      '60 × 10, earned 2',
    ],
    ['nothing said and nothing planned', [top(undefined, 5)], '60 × 10, earned 0'],
    ['below the top', [[5, work(60, 8, 2)]], '60 × 8, earned 0'],
  ] as const)('done-earned: %s', (_, all, said) => {
    expect(last(recalled(sessions(...all)))).toBe(said);
  });

  it('done-earned: with one set of three not marked nothing is earned', () => {
    expect(last(recalled(aHistory(daysAgo(5, alike(2, { kg: 60, reps: 10 }), { left: 2 }))))).toBe('60 × 10, earned 0');
  });

  it('done-earned: a top that was planned and missed begins again from nothing', () => {
    const missed = aMarkedRow('press', { sets: alike(3, { kg: 60, reps: 9 }), left: 2 });
    const sets = missed.sets.map((set) => ({
      ...set,
      planned: { key: set.key, kind: 'work' as const, round: 1, reps: 10, reserve: 20, load: planLoad(60) },
    }));
    const before = sessions(top(2, 9)).sessions;
    const after = sessions(top(2, 3)).sessions;
    const day = aSessionDone('2026-12-22', [{ ...missed, sets }]);
    expect(last(recalled(aHistory(...before, day, ...after)))).toBe('60 × 10, earned 1');
  });

  it('done-earned: an easy week neither counts nor breaks', () => {
    const [first, second] = sessions(top(2, 9), top(2, 5)).sessions;
    const easy = aSessionDone('2026-12-21', [aMarkedRow('press', { sets: alike(2, { kg: 60, reps: 4 }) })], {
      easy: true,
    });
    const history = aHistory(...[first, easy, second].flatMap((one) => one ?? []));
    expect(last(recalled(history))).toBe('60 × 10, earned 2');
  });

  test.each([
    [
      'twice by two reps',
      [
        [9, work(60, 8, 4)],
        [5, work(60, 8, 4)],
      ],
      '60 × 8, earned 2',
    ],
    [
      'once',
      [
        [9, work(60, 8, 3)],
        [5, work(60, 8, 4)],
      ],
      '60 × 8, earned 0',
    ],
    [
      'twice by less',
      [
        [9, work(60, 8, 3)],
        [5, work(60, 8, 3)],
      ],
      '60 × 8, earned 0',
    ],
  ] as const)('done-over-target: %s', (_, all, said) => {
    expect(last(recalled(sessions(...all)))).toBe(said);
  });

  test.each([
    [4, '60 × 4, earned 0'],
    [5, '60 × 5, earned 0'],
    [6, '60 × 6, earned 2'],
  ])('done-over-target: %i planned and done of 6 to 10, with 5 left, twice', (reps, said) => {
    const planned = (days: number): DoneSession => {
      const marked = aMarkedRow('press', { sets: alike(3, { kg: 60, reps }), left: 5 });
      const sets = marked.sets.map((set) => ({
        ...set,
        planned: { key: set.key, kind: 'work' as const, round: 1, reps, reserve: 20, load: planLoad(60) },
      }));
      return aSessionDone(addDays(today, -days), [{ ...marked, sets }]);
    };
    expect(last(recalled(aHistory(planned(9), planned(5))))).toBe(said);
  });

  test.each([
    ['with nothing before it, one load lighter', [[5, work(60, 5, 0)]], '60 × 5, earned 0, 1 lighter, short'],
    [
      'with a lighter load before it, that one',
      [
        [9, work(50, 8, 2)],
        [5, work(60, 5, 0)],
      ],
      '50 × 8, earned 0, short',
    ],
    [
      'with the same load before it, the same',
      [
        [9, work(60, 8, 2)],
        [5, work(60, 5, 0)],
      ],
      '60 × 8, earned 0, short',
    ],
    [
      'never with a heavier one',
      [
        [9, work(70, 8, 2)],
        [5, work(60, 5, 0)],
      ],
      '60 × 5, earned 0, 1 lighter, short',
    ],
    ['at the bottom of the range is none', [[5, work(60, 6, 2)]], '60 × 6, earned 0'],
    [
      'before the last one is past',
      [
        [9, work(60, 5, 0)],
        [5, work(60, 8, 2)],
      ],
      '60 × 8, earned 0',
    ],
  ] as const)('done-missed: a set below the range, %s', (_, all, said) => {
    expect(last(recalled(sessions(...all)))).toBe(said);
  });

  test.each([
    ['with less left than asked', 1, 'as usual', true],
    ['with what was asked left', 2, 'as usual', false],
    ['for want of time', 1, 'short of time', false],
  ] as const)('done-missed: a set left out %s', (_, left, feeling, short) => {
    const sets = [...alike(2, { kg: 60, reps: 8 }), { kg: 60, done: 'left out' as const }];
    const day = aSessionDone('2026-12-23', [aMarkedRow('press', { sets, left })], { today: feeling });
    expect(recallOf(recalled(aHistory(day))).last?.short).toBe(short);
  });

  it('done-easier: chosen twice running, the row goes on with it; once is only that day', () => {
    const easier = (days: number) =>
      daysAgo(days, alike(3, { kg: 12, reps: 8, done: 'easier', exercise: exerciseId('chair') }), { left: 2 });
    expect(last(recalled(aHistory(easier(9), easier(5))), 'chair', 'A/press')).toBe('12 × 8, earned 0, short');
    const once = recalled(aHistory(daysAgo(9, alike(3, { kg: 60, reps: 8 }), { left: 2 }), easier(5)));
    expect(last(once)).toBe('60 × 8, earned 0');
    expect(last(once, 'chair', 'A/press')).toBe('nothing');
  });

  it('done-easier: a way of its own has no page, so it is one load lighter', () => {
    const easier = (days: number) => daysAgo(days, alike(3, { kg: 60, reps: 8, done: 'easier' }), { left: 2 });
    expect(last(recalled(aHistory(easier(9), easier(5))))).toBe('60 × 8, earned 0, 1 lighter, short');
  });

  it('done-greatest: the greatest set of work marked in any of its rows', () => {
    const history = sessions([9, work(60, 10, 2)], [5, work(70, 6, 2)]);
    expect(recallOf(recalled(history)).last?.greatest).toBe(600_000);
    expect(recallOf(recalled(history, {}, [own('done-greatest', 0)])).last?.greatest).toBeNull();
  });

  it('is forgotten where the coach has tested since', () => {
    const tested = { tests: [aTest('press', 8, { load: kg('60'), date: on('2026-12-24') })] };
    expect(last(recalled(sessions(top(2, 5)), tested))).toBe('nothing');
  });
});

describe('a set marked without a load', () => {
  /** Planned with 60 kg for 8 reps, 2 left; done so, and nothing said of the load. */
  const unsaid = (days: number, reps: number, asPlanned: boolean, more: MadeRow = {}): DoneSession => {
    const marked = aMarkedRow('press', { sets: alike(3, { reps, asPlanned }), left: 2, ...more });
    const sets = marked.sets.map((set) => ({
      ...set,
      planned: { key: set.key, kind: 'work' as const, round: 1, reps: 8, reserve: 20, load: planLoad(60) },
    }));
    return aSessionDone(addDays(today, -days), [{ ...marked, sets }]);
  };
  const before = daysAgo(9, alike(3, { kg: 50, reps: 8 }), { left: 3 });

  it('as planned is with the load planned', () => {
    const remembered = recalled(aHistory(unsaid(5, 8, true)));
    expect(tests(remembered)).toEqual(['60 × 8, 2 left (2026-12-23)']);
    expect(last(remembered)).toBe('60 × 8, earned 0');
    expect(recallOf(remembered).last?.greatest).toBe(60_000 * 8);
  });

  it('else is not known, and never nothing: what stood before it stands', () => {
    const alone = recalled(aHistory(unsaid(5, 8, false)));
    expect([tests(alone), last(alone)]).toEqual([[], 'nothing']);
    const after = recalled(aHistory(before, unsaid(5, 8, false)));
    expect([tests(after), last(after)]).toEqual([['50 × 8, 3 left (2026-12-19)'], '50 × 8, earned 0']);
  });

  it('is not known either where the plan named none, of what cannot be done without one', () => {
    const alone = recalled(aHistory(daysAgo(5, alike(3, { reps: 8 }), { left: 2 })));
    expect([tests(alone), last(alone)]).toEqual([[], 'nothing']);
  });

  it('falls short all the same, of no more than was planned', () => {
    expect(last(recalled(aHistory(unsaid(5, 4, false))))).toBe('60 × 4, earned 0, 1 lighter, short');
    expect(tests(recalled(aHistory(unsaid(5, 4, false))))).toEqual([]);
  });

  it('of an easier version of the body alone is the body alone', () => {
    const easier = (days: number) =>
      unsaid(days, 8, false, { sets: alike(3, { reps: 8, done: 'easier', exercise: exerciseId('floor') }) });
    expect(last(recalled(aHistory(easier(9), easier(5))), 'floor', 'A/press')).toBe('0 × 8, earned 0, short');
  });
});

describe('done-side', () => {
  it('tells both sides apart, as tests do', () => {
    const sides = [...alike(3, { kg: 20, reps: 8, side: 'left' }), ...alike(3, { kg: 20, reps: 10, side: 'right' })];
    const history = aHistory(daysAgo(5, sides, { sides: 'each', left: { left: 2, right: 2 } }, 'row'));
    expect(tests(recalled(history)).map((said) => said.split(' ')[0])).toEqual(['left', 'right']);
  });
});

describe('done-gap: weeks without a mark', () => {
  const planned = (...days: readonly string[]): History['blocks'] => [
    {
      block: 1,
      edition: 1,
      // A gap reads the days of the queue alone.
      plan: JSON.parse('{"inputs":{"strands":[],"ladders":[]}}'),
      queue: days.map((date) => ({ edition: 1, week: 1, session: JSON.parse(JSON.stringify({ date })) })),
    },
  ];
  const marks = (...days: readonly number[]): History => sessions(...days.map((day) => [day, work(60, 8, 2)] as const));
  const breaks = (history: History, client: Partial<Client> = {}) =>
    recalled(history, client).client.breaks.map(
      ({ from, until, cause }) => `${isoOfDay(from)} ${isoOfDay(until)} ${cause}`,
    );

  test.each([
    [14, []],
    [15, ['2026-12-14 2026-12-27 away']],
  ])('%i days since the last mark', (days, found) => {
    expect(breaks({ ...marks(days), blocks: planned('2026-12-20') })).toEqual(found);
  });

  it('between two marks', () => {
    expect(breaks({ ...marks(30, 2), blocks: planned('2026-12-10') })).toEqual(['2026-11-29 2026-12-25 away']);
  });

  it('none where nothing was planned, or the coach wrote what it was', () => {
    expect(breaks({ ...marks(20), blocks: planned('2026-12-01') })).toEqual([]);
    const ill = { from: on('2026-12-20'), until: on('2026-12-22'), cause: 'ill', place: PLACE } as const;
    expect(breaks({ ...marks(20), blocks: planned('2026-12-20') }, { breaks: [ill] })).toEqual([
      '2026-12-20 2026-12-22 ill',
    ]);
  });

  it('is told to the coach', () => {
    const { findings } = recalled({ ...marks(20), blocks: planned('2026-12-20') });
    expect(findings.map(({ rule }) => rule)).toContain('done-gap');
  });
});

describe('after a break what was marked before it says nothing beside what was marked since', () => {
  const away = (from: number, until: number) => ({
    breaks: [{ from: addDays(today, -from), until: addDays(today, -until), cause: 'away' as const, place: PLACE }],
  });
  const before = [
    [34, work(12, 8, 2)],
    [32, work(12, 8, 3)],
    [30, work(12, 8, 2)],
  ] as const;

  test.each([
    [14, '10 × 9, 5 left (2026-12-25)'],
    [13, '12 × 8, 2 left (2026-11-28)'],
  ])('done-median: a break of %i days', (days, said) => {
    expect(tests(recalled(sessions(...before, [3, work(10, 9, 5)]), away(20, 21 - days)))).toEqual([said]);
  });

  it('done-gap: a break that marks tell of is one', () => {
    const queue = [{ edition: 1, week: 1, session: JSON.parse('{"date":"2026-12-10"}') }];
    const plan = JSON.parse('{"inputs":{"strands":[],"ladders":[]}}');
    const history = { ...sessions(...before, [3, work(10, 9, 5)]), blocks: [{ block: 1, edition: 1, plan, queue }] };
    expect(tests(recalled(history))).toEqual(['10 × 9, 5 left (2026-12-25)']);
  });

  it('while nothing is marked since, it stands', () => {
    expect(tests(recalled(sessions(...before), away(20, 1)))).toEqual(['12 × 8, 2 left (2026-11-24)']);
  });

  it('done-earned: begins anew', () => {
    const top = [32, 30].map((days) => [days, work(60, 10, 2)] as const);
    expect(last(recalled(sessions(...top, [3, work(60, 10, 2)])))).toBe('60 × 10, earned 2');
    expect(last(recalled(sessions(...top, [3, work(60, 10, 2)]), away(20, 5)))).toBe('60 × 10, earned 1');
  });
});

describe('done-quiet: a row left out again and again', () => {
  const day = (days: number, pressed: boolean): DoneSession => {
    const rows: readonly DoneRow[] = [
      aMarkedRow('chair', { sets: alike(3, { kg: 12, reps: 8 }), left: 2 }),
      aMarkedRow('press', pressed ? { sets: alike(3, { kg: 60, reps: 8 }), left: 2 } : {}),
    ];
    return aSessionDone(addDays(today, -days), rows);
  };
  const quiet = (...pressed: readonly boolean[]) =>
    recalled(aHistory(...pressed.map((one, index) => day(20 - index, one)))).findings.flatMap(({ rule, reason }) =>
      rule === 'done-quiet' ? reason.inputs.map(({ value }) => value) : [],
    );

  it('three times running', () => {
    expect(quiet(true, false, false)).toEqual([]);
    expect(quiet(true, false, false, false)).toEqual(['press', 3]);
    expect(quiet(false, false, false, true)).toEqual([]);
  });
});

describe('pain said of a session that ended before its first mark', () => {
  const ended = (where: 'shoulder' | 'elsewhere') =>
    recalled(
      aHistory(
        aSessionDone(addDays(today, -3), [aMarkedRow('press'), aMarkedRow('row')], { pain: [{ where, degree: 6 }] }),
      ),
    );

  it('is of what was planned', () => {
    for (const where of ['shoulder', 'elsewhere'] as const) {
      const { recalls } = ended(where);
      expect([...recalls.values()].map(({ leave }) => leave !== null)).toEqual([true, true]);
    }
  });
});

describe('the coach may set', () => {
  const easier = (days: number) => daysAgo(days, alike(3, { kg: 60, reps: 8, done: 'easier' }), { left: 2 });
  const top = sessions([9, work(60, 10, 2)], [5, work(60, 10, 2)]);
  const over = sessions([9, work(60, 8, 4)], [5, work(60, 8, 4)]);
  const hurt = aHistory(
    daysAgo(5, alike(3, { kg: 60, reps: 8 }), { left: 2, pain: [{ where: 'elsewhere', degree: 1 }] }),
  );

  test.each([
    ['done-days', 14, sessions([20, work(60, 8, 2)]), '60 × 8, earned 0', 'nothing'],
    ['done-earned', 1, top, '60 × 10, earned 2', '60 × 10, earned 1'],
    ['done-easier', 1, aHistory(easier(5)), 'nothing', '60 × 8, earned 0, 1 lighter, short'],
    [
      'done-missed',
      2,
      sessions([5, work(60, 5, 0)]),
      '60 × 5, earned 0, 1 lighter, short',
      '60 × 5, earned 0, 2 lighter, short',
    ],
    ['done-over-target', 30, over, '60 × 8, earned 2', '60 × 8, earned 0'],
  ] as const)('%s', (rule, value, history, as, set) => {
    expect(last(recalled(history))).toBe(as);
    expect(last(recalled(history, {}, [own(rule, value)]))).toBe(set);
  });

  it('pain-hold-days', () => {
    const until = (rules: readonly RuleOverride[]) => recallOf(recalled(hurt, {}, rules)).hold?.until;
    expect(until([])).toBe(addDays(today, 9));
    expect(until([own('pain-hold-days', 28)])).toBe(addDays(today, 23));
  });
});
