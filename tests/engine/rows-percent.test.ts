/** A part of a maximum as a ceiling on loads, and where it cannot be kept. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anExercise, aTest, bells, bodyweight, kg } from './make-block.js';
import { codes, itemsOf, made, planOf, squat, withRow } from './rows-made.js';

const at = (percent: number) => withRow({ effort: { kind: 'percent', percent } });
const loads = (percent: number, client: Parameters<typeof planOf>[1] = {}, exercises = [squat]) =>
  planOf(at(percent), client, exercises).inputs.strands[0]?.versions[0]?.loads.map(({ label }) => label);

describe('percent-of-maximum', () => {
  // 16 kg × 10 with 2 left: K = 16,000 × 420 = 6,720,000, over 310 a maximum of 21.677 kg.
  test.each([
    [100, ['8 kg', '12 kg', '16 kg', '20 kg']],
    [93, ['8 kg', '12 kg', '16 kg', '20 kg']],
    [92, ['8 kg', '12 kg', '16 kg']],
    [74, ['8 kg', '12 kg', '16 kg']],
    [73, ['8 kg', '12 kg']],
    [37, ['8 kg']],
  ] as const)('at %i %% nothing above it', (percent, labels) => {
    expect(loads(percent)).toEqual(labels);
  });

  test('counts the part of the body that is lifted', () => {
    const share = { share: 878, standing: 'published', source: 'Dempster, in Winter' } as const;
    const bodyMass = { mass: kg('70') };
    // R = 16,000 + 61,460; K / 310 = 77,460 × 420 / 310 = 104,946. 75 % is 78,709, less the body 17,249.
    expect(loads(75, { bodyMass }, [anExercise('squat', { bodyShare: share })])).toEqual(['8 kg', '12 kg', '16 kg']);
    expect(loads(70, { bodyMass }, [anExercise('squat', { bodyShare: share })])).toEqual(['8 kg', '12 kg']);
  });

  test('the curve’s reserve still holds, reps are the walk’s, and no finding asks for a heavier bell', () => {
    const plan = planOf(at(60));
    // 12 kg: 6,720,000 / 12,000 − 300 = 26 reps to failure; the range ends at ten.
    expect(itemsOf(plan)[0]?.asked.reserve).toBe(30);
    expect(itemsOf(plan)[0]?.sets.at(-1)).toMatchObject({ reps: 10, load: { label: '12 kg' }, reserve: 160 });
    for (const item of itemsOf(plan)) for (const { load } of item.sets) expect(load?.grams).toBeLessThanOrEqual(12_000);
    expect(plan.findings.map(({ rule }) => rule)).not.toContain('kit-too-light');
    expect(plan.findings.map(({ rule }) => rule)).not.toContain('to-earn-a-try');
  });

  test('in a feeler set each answer has its own ceiling', () => {
    const choose = itemsOf(planOf(at(80), { tests: [] }))[0]?.sets[0]?.choose ?? [];
    // 8 kg × 6 and 2 left: 80 % of 8 × 380 / 310 is 7.85 kg, so the easier way; 3 left: 8.05; 10 left: 9.50.
    expect(choose.map(({ load }) => load?.label ?? 'easier')).toEqual([
      'easier',
      'easier',
      'easier',
      ...Array(4).fill('8 kg'),
    ]);
    const rising = itemsOf(planOf(withRow({}), { tests: [], kit: bells('8', '9') }))[0]?.sets[0]?.choose ?? [];
    expect(rising.at(-1)?.load?.label).toBe('9 kg');
    const capped = itemsOf(planOf(at(70), { tests: [], kit: bells('8', '9') }))[0]?.sets[0]?.choose ?? [];
    expect(capped.at(-1)?.load?.label).toBe('8 kg');
  });

  test('where it cannot be kept the client is withheld', () => {
    expect(made(at(36)).problems).toMatchObject([
      { code: 'percent-not-kept', data: { why: 'too heavy', percent: 36 } },
    ]);
    const share = { share: 878, standing: 'published', source: 'Dempster, in Winter' } as const;
    expect(made(at(80), {}, [anExercise('squat', { bodyShare: share })]).problems).toMatchObject([
      { code: 'percent-not-kept', data: { why: 'not counted' } },
    ]);
    expect(codes(at(80), {}, [anExercise('squat', bodyweight)])).toEqual(['effort-for-way']);
  });

  test('no work set is above its part, whatever was tested', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 100 }), fc.integer({ min: 1, max: 12 }), (percent, reps) => {
        const { value } = made(at(percent), { tests: [aTest('squat', reps, { load: kg('16') })] });
        const most = (percent * 16_000 * (300 + 10 * reps + 20)) / 31_000;
        for (const item of value === null ? [] : itemsOf(value)) {
          for (const { load } of item.sets) expect(load?.grams ?? 0).toBeLessThanOrEqual(most);
        }
      }),
      { numRuns: 60 },
    );
  });
});
