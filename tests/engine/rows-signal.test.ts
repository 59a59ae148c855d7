/** What is done at a signal: rest between, never more than half of what could be done, and nothing heavy at a swing's pace. */
import { describe, expect, test } from 'vitest';
import type { Dose } from '../../src/model/dose.js';
import type { Plan } from '../../src/model/plan.js';
import { sayProblem } from '../../src/words/say-problem.js';
import { aLink, anExercise, aSignOff, aTest, bells, kg, type MadeExercise } from './make-block.js';
import { codes, itemsOf, made, planOf, withRow } from './rows-made.js';

const signals = (reps: number, everySeconds: number): Dose => ({ kind: 'every', minutes: 6, reps, everySeconds });
const told = (plan: Plan, rule: string) =>
  plan.findings.filter((finding) => finding.rule === rule).map(({ reason }) => reason.inputs.map(({ value }) => value));
const swings: MadeExercise = { way: 'swing' };
const each: MadeExercise = { sides: 'each' };

describe('signal-work: as much rest as work', () => {
  const errors = (dose: Dose, exercise: MadeExercise = {}) =>
    codes(withRow({ dose }), { signOffs: [aSignOff('squat', { upTo: kg('16') })] }, [anExercise('squat', exercise)]);

  test('reps that take more than half of the time to the next signal are an error of the row', () => {
    // Three seconds a rep: five fit in half of 30 s, ten in half of a minute.
    expect(errors(signals(5, 30))).toEqual([]);
    expect(errors(signals(6, 30))).toEqual(['signal-too-short']);
    expect(errors(signals(11, 60))).toEqual(['signal-too-short']);
  });

  test('and the coach reads how many fit', () => {
    const [problem] = made(withRow({ dose: signals(10, 30) })).problems;
    expect(problem?.data).toEqual({ row: 'squat', exercise: 'squat', reps: 10, everySeconds: 30, fits: 5 });
    expect(problem === undefined ? '' : sayProblem(problem).hint).toBe('5 reps at most, or signals further apart');
    const [none] = made(withRow({ dose: signals(3, 5) })).problems;
    expect(none === undefined ? '' : sayProblem(none).hint).toBe('signals further apart');
  });

  test('swings are counted up to their cap, one hand at a signal where one is done at a time', () => {
    expect(errors(signals(30, 5), swings)).toEqual(['signal-too-short']);
    expect(errors(signals(10, 60), swings)).toEqual([]);
    expect(errors(signals(20, 90), swings)).toEqual([]);
    expect(errors(signals(10, 60), { ...swings, ...each })).toEqual([]);
    expect(errors(signals(10, 20), { ...swings, ...each })).toEqual(['signal-too-short']);
    expect(errors(signals(10, 60), each)).toEqual([]);
  });

  test('a version in its place does as many as fit, and the coach is told', () => {
    const slow = { tempo: { lower: 5, bottom: 0, lift: 1, top: 0 } } as const;
    const asked = anExercise('squat', { signOff: true, easier: [aLink('other')] });
    const plan = planOf(withRow({ dose: signals(10, 60) }), { tests: [] }, [asked, anExercise('other', slow)]);
    expect(itemsOf(plan)[0]?.asked).toMatchObject({ min: 5, max: 5 });
    expect(told(plan, 'signal-work')).toEqual([['other', 5]]);
  });
});

describe('a version of another way of working', () => {
  const plan = planOf(
    withRow({ dose: signals(10, 60), restSeconds: 30 }),
    { tests: [aTest('other', 10, { load: kg('16') })] },
    [anExercise('squat', { ...swings, signOff: true, easier: [aLink('other')] }), anExercise('other')],
  );

  test('is never done at a swing’s pace: plain sets, rested as long as the signals were apart', () => {
    expect(itemsOf(plan)[0]).toMatchObject({ exercise: 'other', restSeconds: 60 });
    expect(itemsOf(plan)[0]?.asked).toMatchObject({ min: 5, max: 10, sets: 5 });
    const groups = plan.weeks.flatMap((week) => week.sessions.flatMap((session) => session.groups));
    expect(groups.some(({ everySeconds }) => everySeconds !== undefined)).toBe(false);
    expect(told(plan, 'dose-of-version')).toEqual([['other', 'every', 5]]);
  });
});

describe('floor-signal: half of what could be done', () => {
  const strong = [aTest('squat', 10, { load: kg('16') })];
  const plan = planOf(withRow({ dose: signals(8, 60) }), { tests: strong, kit: bells('8', '12', '16') });

  test('the load falls until it is so', () => {
    // 12 to failure at 16 kg: a signal of eight wants sixteen, and 12 kg gives 26.
    for (const item of itemsOf(plan)) {
      for (const { kind, reps, reserve } of item.sets) {
        if (kind === 'work') expect(reserve).toBeGreaterThanOrEqual(10 * (reps ?? 0));
      }
    }
    expect(itemsOf(plan)[0]?.sets.find(({ kind }) => kind === 'work')?.load?.label).toBe('12 kg');
    expect(itemsOf(plan)[0]?.reasons.map(({ rule }) => rule)).toContain('floor-signal');
  });

  test('and each line of a feeler set’s table', () => {
    const [item] = itemsOf(planOf(withRow({ dose: signals(8, 60) }), { tests: [], kit: bells('8', '12', '16') }));
    for (const { reps, reserve } of item?.sets[0]?.choose ?? []) expect(reserve).toBeGreaterThanOrEqual(10 * reps);
  });
});
