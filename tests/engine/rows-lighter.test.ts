/** One heavy bell: an easier version takes the place of what is too heavy by its own test, before anybody is kept back. */
import { describe, expect, test } from 'vitest';
import type { Exercise } from '../../src/model/exercise.js';
import { aLink, anExercise, aTest, bells, bodyweight, kg } from './make-block.js';
import { codes, itemsOf, planOf, withRow } from './rows-made.js';

const squats: readonly Exercise[] = [
  anExercise('squat', { easier: [aLink('chair')] }),
  anExercise('chair', bodyweight),
];
const heavy = { kit: bells('48'), tests: [aTest('squat', 8, { load: kg('16') })] };

describe('begin-lighter', () => {
  test('the nearest easier version is done, felt first where nobody tested it, and both are told', () => {
    const plan = planOf(withRow({}), heavy, squats);
    const [item] = itemsOf(plan);
    expect(item?.exercise).toBe('chair');
    expect(item?.sets[0]?.kind).toBe('feeler');
    const told = plan.findings.filter(({ rule }) => rule === 'begin-lighter');
    expect(told[0]?.reason.inputs.map(({ value }) => value)).toEqual(['chair', 'squat']);
  });

  test('from its test where it has one', () => {
    const tests = [...heavy.tests, aTest('chair', 12)];
    const [item] = itemsOf(planOf(withRow({}), { ...heavy, tests }, squats));
    expect([item?.exercise, item?.sets[0]?.kind]).toEqual(['chair', 'work']);
  });

  test('never felt with more in hand than was ever held', () => {
    const box = anExercise('box', { easier: [aLink('chair')] });
    const of = [anExercise('squat', { easier: [aLink('box')] }), box, anExercise('chair', bodyweight)];
    expect(itemsOf(planOf(withRow({}), heavy, of))[0]?.exercise).toBe('chair');
  });

  test('a bell that leaves enough changes nothing; without an easier version the client is kept back', () => {
    expect(itemsOf(planOf(withRow({}), { ...heavy, kit: bells('16', '48') }, squats))[0]?.exercise).toBe('squat');
    expect(codes(withRow({}), heavy)).toContain('nothing-leaves-the-floor');
  });
});
