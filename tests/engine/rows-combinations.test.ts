/** Combinations by their weakest part (weakest-part). Figures worked out by hand from the definition. */
import { describe, expect, test } from 'vitest';
import type { Test } from '../../src/model/client.js';
import { aLink, anExercise, aSignOff, aTest, aWay, kg, type MadeExercise } from './make-block.js';
import { codes, itemsOf, planOf, withRow } from './rows-made.js';

const clean = anExercise('clean', { pattern: 'hinge' });
const press = anExercise('press', { pattern: 'push' });
const both = (facts: MadeExercise = {}) =>
  anExercise('both', { way: 'combination', parts: [clean.id, press.id], ...facts });
const tested = (cleans: number, presses: number): readonly Test[] => [
  aTest('clean', cleans, { load: kg('24') }),
  aTest('press', presses, { load: kg('16') }),
];
const planned = (tests: readonly Test[], exercises = [both(), clean, press]) =>
  planOf(withRow({}, 'both'), { tests }, exercises);

describe('a combination', () => {
  test('carries the capacity of its weakest part, weakly, and begins one load lighter', () => {
    // For 6 reps with 3 left, less 0.2, 388: press 16,000 × 420 / 388 = 17.3 kg; clean 24,000 × 380 / 388 = 23.5 kg.
    const plan = planned(tested(6, 10));
    const strand = plan.inputs.strands[0];
    expect(strand?.way).toBe('combination');
    expect(strand?.capacity).toMatchObject({ resisted: 16_000, reps: 120, weak: true });
    // Up to the 16 kg pressed, and one lighter.
    expect(strand?.start?.load).toBe(12_000);
    expect(itemsOf(plan)[0]?.reasons.map(({ rule }) => rule)).toContain('weakest-part');
    expect(plan.inputs.capacities.map(({ exercise }) => exercise)).toEqual(['press']);
  });

  test('whichever part that is; of equal ones the first', () => {
    expect(planned(tested(1, 10)).inputs.strands[0]?.capacity).toMatchObject({ resisted: 16_000 });
    const weak = [aTest('clean', 3, { load: kg('12') }), aTest('press', 10, { load: kg('16') })];
    expect(planned(weak).inputs.strands[0]?.capacity).toMatchObject({ resisted: 12_000, reps: 50 });
    const alike = [aTest('press', 10, { load: kg('16') }), aTest('clean', 10, { load: kg('16') })];
    expect(planned(alike).inputs.capacities.map(({ exercise }) => exercise)).toEqual(['clean']);
  });

  test('never begins above what any part was tested with', () => {
    const strong = [aTest('clean', 20, { load: kg('12') }), aTest('press', 20, { load: kg('24') })];
    expect(planned(strong).inputs.strands[0]?.start?.load).toBe(8000);
  });

  test('its own test goes before its parts', () => {
    const own = [...tested(6, 10), aTest('both', 8, { load: kg('20') })];
    const strand = planned(own).inputs.strands[0];
    expect(strand?.capacity).toMatchObject({ resisted: 20_000, reps: 100, weak: false });
    expect(strand?.start?.load).toBe(20_000);
  });

  test.each([
    ['a part was not tested', tested(6, 10).slice(0, 1), [both(), clean, press]],
    [
      'a part is done on other sides',
      tested(6, 10),
      [both(), clean, anExercise('press', { pattern: 'push', sides: 'each' })],
    ],
    [
      'a part fills both hands',
      tested(6, 10),
      [
        both(),
        clean,
        anExercise('press', {
          pattern: 'push',
          kit: { load: [{ kind: 'bell', count: 2, unequal: true }], unloaded: false, things: [] },
        }),
      ],
    ],
  ])('a feeler set where %s', (_, tests, exercises) => {
    const plan = planned(tests, exercises);
    expect(plan.inputs.strands[0]?.start).toBeNull();
    expect(itemsOf(plan)[0]?.sets[0]?.kind).toBe('feeler');
  });

  test('a part tested held otherwise: the reason of the feeler set says that it cannot speak for it', () => {
    const part = (sides: 'both' | 'each') => anExercise('press', { pattern: 'push', sides });
    const partsIn = (tests: Parameters<typeof planned>[0], sides: 'both' | 'each') =>
      itemsOf(planned(tests, [both(), clean, part(sides)]))[0]
        ?.reasons.filter(({ rule, audience }) => rule === 'feeler-rise' && audience === 'coach')
        .flatMap(({ inputs }) => inputs.flatMap(({ name, value }) => (name === 'part' ? [value] : [])));
    expect(partsIn(tested(6, 10), 'each')).toEqual(['press']);
    expect(partsIn(tested(6, 10).slice(0, 1), 'both')).toEqual([]);
  });

  test('lifts the part of the body its weakest part does', () => {
    const share = { share: 878, standing: 'published', source: 'Dempster, in Winter' } as const;
    const squats = anExercise('press', { bodyShare: share });
    const plan = planOf(
      withRow({}, 'both'),
      {
        tests: [aTest('clean', 20, { load: kg('24') }), aTest('press', 8, { load: kg('8') })],
        bodyMass: { mass: kg('70') },
      },
      [both(), clean, squats],
    );
    expect(plan.inputs.strands[0]?.versions[0]?.share).toBe(878);
    expect(plan.inputs.strands[0]?.capacity?.resisted).toBe(69_460);
  });

  test('no capacity passes to or from it: it stands alone in its chain, and easier exercises claim no load', () => {
    const linked = both({ easier: [aLink('press', [], 1000), aWay('slower')] });
    const plan = planned(tested(6, 10), [linked, clean, press]);
    expect(plan.inputs.strands[0]?.versions).toHaveLength(1);
    const easier = itemsOf(plan)[0]?.easier.find((one) => one.exercise === 'press');
    expect(easier?.sets[0]?.load).toBeUndefined();
    const relative = planOf(withRow({}, 'press'), { tests: [aTest('both', 8, { load: kg('20') })] }, [
      linked,
      clean,
      press,
    ]);
    expect(relative.inputs.strands[0]?.start).toBeNull();
  });

  test('asks every sign-off of its parts', () => {
    const signed = anExercise('press', { pattern: 'push', signOff: true });
    const exercises = [both(), clean, signed];
    expect(codes(withRow({}, 'both'), { tests: tested(6, 10) }, exercises)).toEqual(['no-version-allowed']);
    const plan = planOf(
      withRow({}, 'both'),
      { tests: tested(6, 10), signOffs: [aSignOff('press', { upTo: kg('12') })] },
      exercises,
    );
    expect(plan.inputs.strands[0]?.versions[0]?.loads.map(({ label }) => label)).toEqual(['8 kg', '12 kg']);
  });
});
