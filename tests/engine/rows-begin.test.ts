/** Where a row begins: its own test, a relative's, or a feeler set and what each answer leads to. */
import { describe, expect, test } from 'vitest';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { aLink, anExercise, aTest, aWay, bells, bodyweight, kg, on, oneSession } from './make-block.js';
import { codes, itemsOf, planOf, squat } from './rows-made.js';

describe('where a row begins', () => {
  const begins = (client: Partial<Client>, exercises: readonly Exercise[] = [squat]) =>
    planOf(oneSession('squat'), client, exercises).inputs.strands[0];

  test('with the load tested, or the heaviest that can be made below it', () => {
    expect(begins({})?.start?.load).toBe(16_000);
    expect(begins({ kit: bells('8', '12', '20') })?.start?.load).toBe(12_000);
  });

  test('a test is weak above 12 reps and reserve, above 5 in reserve, or from a circuit', () => {
    const weak = (reps: number, more: Parameters<typeof aTest>[2] = {}) =>
      begins({ tests: [aTest('squat', reps, { load: kg('16'), ...more })] })?.capacity?.weak;
    expect(weak(10)).toBe(false);
    expect(weak(11)).toBe(true);
    expect(weak(6, { reserve: 50 })).toBe(false);
    expect(weak(6, { reserve: 51 })).toBe(true);
    expect(weak(8, { inCircuit: true })).toBe(true);
  });

  test('the latest test counts', () => {
    const dated = [
      aTest('squat', 6, { load: kg('20'), date: on('2026-12-10') }),
      aTest('squat', 12, { load: kg('12'), date: on('2026-11-10') }),
    ];
    expect(begins({ tests: dated })?.capacity).toMatchObject({ resisted: 20_000, reps: 80 });
  });

  test('a new movement begins one bell lighter than its relative’s strength allows', () => {
    const box = [anExercise('squat', { easier: [aLink('box'), aWay('half')] }), anExercise('box')];
    const strand = begins({ tests: [aTest('box', 10, { load: kg('16') })] }, box);
    expect(strand?.capacity).toMatchObject({ resisted: 16_000, reps: 120, weak: true });
    // Reps to failure 12 at 16 kg and 3.6 at 20: 16 leaves three at six reps, so 12 it is.
    expect(strand?.start?.load).toBe(12_000);
    expect(begins({ tests: [] }, box)?.start).toBeNull();
  });

  test('a new movement never begins above the heaviest load its relative was tested with', () => {
    const box = [anExercise('squat', { easier: [aLink('box')] }), anExercise('box')];
    const tested = [aTest('box', 30, { load: kg('12'), reserve: 50 })];
    // 35 at 12 kg: K = 12 × 650 = 7800, 9 to failure at 20 kg, so that one bell lighter would be 16: never held so far.
    expect(begins({ tests: tested }, box)?.start?.load).toBe(8000);
    const none = begins({ kit: bells('16', '20'), tests: tested }, box);
    expect(none?.start).toBeNull();
  });

  test('a feeler set finds the load; on the body alone, the reps', () => {
    const said = (exercise: Exercise) => {
      const [item] = itemsOf(planOf(oneSession('squat'), { tests: [] }, [exercise]));
      const reasons = (item?.reasons ?? []).filter(({ rule }) => rule === 'feeler-rise');
      return reasons.map((reason) => sayReason(reason, reason.audience, speechOf('en-GB')));
    };
    expect(said(squat).join(' ')).toMatch(/finds the load.*finds the load/);
    expect(said(anExercise('squat', bodyweight)).join(' ')).toMatch(/finds the reps.*finds the reps/);
    expect(said(anExercise('squat', bodyweight)).join(' ')).not.toContain('load');
  });

  test('nothing known: a feeler set with the lightest bell, and a line for each answer', () => {
    const plan = planOf(oneSession('squat'), { tests: [] });
    const [one, two] = itemsOf(plan);
    const [feeler, ...work] = one?.sets ?? [];
    expect(feeler).toMatchObject({ kind: 'feeler', reps: 6, load: { label: '8 kg' } });
    expect(feeler?.choose?.map(({ left }) => [left.min, left.max])).toEqual([
      [0, 0],
      [1, 1],
      [2, 2],
      [3, 3],
      [4, 4],
      [5, 9],
      [10, 99],
    ]);
    expect(work.map(({ kind, load }) => [kind, load])).toEqual([
      ['work', undefined],
      ['work', undefined],
      ['work', undefined],
    ]);
    expect(two?.sets.map(({ kind }) => kind)).toEqual(['work', 'work', 'work']);
    expect(two?.sets[0]?.choose).toHaveLength(7);
    // By hand, week 1 leaves 3: none left is 6 to failure, 4 leave 2; 3 left is 9 to failure, 6 leave 3.
    expect(feeler?.choose?.[0]).toMatchObject({ reps: 4, reserve: 20, load: { label: '8 kg' } });
    expect(feeler?.choose?.[3]).toMatchObject({ reps: 6, reserve: 30, load: { label: '8 kg' } });
    for (const choice of feeler?.choose ?? []) {
      expect(choice.load?.grams ?? 0).toBeLessThanOrEqual(12_000);
      expect(choice.reserve).toBeGreaterThanOrEqual(20);
    }
    expect(one?.capacity).toBeNull();
  });

  test('the body alone has a feeler set too, by counting', () => {
    const plan = planOf(oneSession('squat'), { tests: [] }, [anExercise('squat', bodyweight)]);
    expect(itemsOf(plan)[0]?.sets[0]).toMatchObject({ kind: 'feeler', reps: 6 });
    expect(itemsOf(plan)[0]?.sets[0]?.load).toBeUndefined();
  });

  test('one lighter set goes before the first loaded row of a pattern', () => {
    const [one] = itemsOf(planOf(oneSession('squat')));
    expect(one?.sets[0]).toMatchObject({ kind: 'warm-up', reps: 6, load: { label: '12 kg' } });
    expect(one?.sets[0]?.reserve ?? 0).toBeGreaterThan(one?.sets[1]?.reserve ?? 0);
    const [alone] = itemsOf(planOf(oneSession('squat'), { kit: bells('16') }));
    expect(alone?.sets[0]?.kind).toBe('work');
  });

  test('where nothing leaves the floor the client is withheld', () => {
    expect(
      codes(oneSession('squat'), { kit: bells('16'), tests: [aTest('squat', 3, { load: kg('16'), reserve: 0 })] }),
    ).toEqual(['nothing-leaves-the-floor']);
  });
});
