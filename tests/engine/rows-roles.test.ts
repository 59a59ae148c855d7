/** Bells by their role: main, lighter, next up. Figures worked out by hand from the definition. */
import { describe, expect, test } from 'vitest';
import type { MainBell } from '../../src/model/client.js';
import type { BellRole } from '../../src/model/dose.js';
import type { Pattern } from '../../src/model/exercise.js';
import { PLACE } from './generate-exercises.js';
import { aCaution, anExercise, ask, aTest, bells, kg, on } from './make-block.js';
import { itemsOf, planOf, squat, tests, withRow, workOf } from './rows-made.js';

const mainBell = (pattern: Pattern, figure: string): MainBell => ({ pattern, mass: kg(figure), place: PLACE });
const begins = (bell: BellRole, client: Parameters<typeof planOf>[1] = {}, exercises = [squat]) =>
  planOf(withRow({ bell }), client, exercises).inputs.strands[0];

describe('the main bell (main-bell)', () => {
  test('is what the coach says for the movement pattern', () => {
    expect(begins('main', { mainBells: [mainBell('squat', '12')] })?.start?.load).toBe(12_000);
    expect(begins('main', { mainBells: [mainBell('hinge', '12')] })?.start?.load).toBe(16_000);
  });

  test('else what was tested last in the exercise, else in the pattern', () => {
    expect(begins('main')?.start?.load).toBe(16_000);
    const other = anExercise('other');
    const later = aTest('other', 10, { load: kg('24'), date: on('2026-12-10') });
    expect(begins('lighter', { tests: [...tests, later] }, [squat, other])?.start?.load).toBe(12_000);
    // Nothing known of the squat itself: the row begins with a feeler set, among the loads of the role.
    const unknown = begins('lighter', { tests: [later] }, [squat, other]);
    expect(unknown?.start).toBeNull();
    expect(unknown?.versions[0]?.loads.map(({ label }) => label)).toEqual(['8 kg', '12 kg', '16 kg', '20 kg']);
  });

  test('and the heaviest that can be made below it', () => {
    expect(begins('main', { mainBells: [mainBell('squat', '14')] })?.start?.load).toBe(12_000);
  });

  test('of two bells counted together is what one hand holds', () => {
    const pair = anExercise('squat', {
      kit: { load: [{ kind: 'bell', count: 2, unequal: false }], unloaded: false, things: [] },
    });
    const kit = bells('8', '8', '12', '12', '16', '16');
    const tested = [aTest('squat', 10, { load: kg('32') })];
    const strand = begins('main', { kit, tests: tested, mainBells: [mainBell('squat', '12')] }, [pair]);
    expect(strand?.start?.load).toBe(24_000);
  });
});

describe('its neighbours', () => {
  test('lighter-bell: never above the one below the main one, however well it goes', () => {
    const plan = planOf(withRow({ bell: 'lighter' }), { tests: [aTest('squat', 10, { load: kg('16'), reserve: 20 })] });
    // 26 reps to failure at 12 kg, and the range ends at ten.
    expect(itemsOf(plan).map((item) => workOf(item)[0])).toEqual(Array.from({ length: 6 }, () => '12 kg × 10'));
    for (const item of itemsOf(plan)) {
      for (const { load } of item.sets) expect(load?.grams ?? 0).toBeLessThanOrEqual(12_000);
    }
    expect(plan.findings.map(({ rule }) => rule)).not.toContain('kit-too-light');
    expect(itemsOf(plan)[0]?.reasons.map(({ rule }) => rule)).toContain('lighter-bell');
  });

  test('lighter-bell: the lightest there is has none below it', () => {
    expect(begins('lighter', { kit: bells('16', '20') })?.start?.load).toBe(16_000);
  });

  test('next-up-bell: the one above, and the walk’s own falls where it leaves too little', () => {
    // K = 16 × 400 = 6400; 20 kg leaves 6400 / 20 − 300 = 20, two reps: nothing there leaves two more.
    const strand = begins('next up', { tests: [aTest('squat', 8, { load: kg('16') })] });
    expect(strand?.start?.load).toBe(20_000);
    const plan = planOf(withRow({ bell: 'next up' }), { tests: [aTest('squat', 8, { load: kg('16') })] });
    expect(workOf(itemsOf(plan)[0])[0]).toBe('16 kg × 7');
    expect(itemsOf(plan)[0]?.relaxed).toContain('walk-lower-load');
  });

  test.each([
    ['a weak estimate', { tests: [aTest('squat', 12, { load: kg('16') })] }, squat],
    [
      'a caution met',
      { cautions: [aCaution('knee', { degree: 'take care' })] },
      anExercise('squat', { asks: [ask('knee')] }),
    ],
  ] as const)('next-up-bell: with %s it begins with the main one', (_, client, exercise) => {
    const sound = [aTest('squat', 8, { load: kg('16') })];
    expect(begins('next up', { tests: sound, ...client }, [exercise])?.start?.load).toBe(16_000);
  });

  test('a relative’s strength begins where it would anyway', () => {
    const box = anExercise('box', { harder: [{ ...LINK }] });
    const strand = begins('next up', { tests: [aTest('box', 10, { load: kg('16') })] }, [squat, box]);
    expect(strand?.start?.load).toBe(12_000);
  });
});

const LINK = {
  to: { kind: 'exercise', id: squat.id },
  say: squat.words.setUp[0] ?? [],
  causes: [],
  place: PLACE,
} as const;
