/** Plans with the facts of their exercises: silent where all is well, and each check speaks up on a fault planted for it. */
import { describe, expect, it } from 'vitest';
import { auditFacts } from './audit-facts.js';
import { auditWords } from './audit-words.js';
import { bell, changed, exercises, type Fault, itemOf, planOf } from './plan-of-case.js';

const caution = (what: string, degree: string) => ({
  ...{ what, degree, side: 'both' as const },
  ...{ from: '2026-01-01', by: 'Coach' },
});

const OF_FACTS: readonly Fault[] = [
  [
    'what must be avoided',
    /asks hip, which is to be avoided/,
    'rpe-row',
    (plan) => void plan.inputs.cautions.push(caution('hip', 'avoid')),
  ],
  [
    'much of what wants care',
    /asks much of speed, which wants care/,
    'swing-strong',
    (plan) => void plan.inputs.cautions.push(caution('speed', 'take care')),
  ],
  [
    'what a fact of health forbids',
    /asks knee, which is to be avoided/,
    'rpe-row',
    (plan) => void plan.inputs.standing.derived.push({ rule: 'made-up', what: 'knee', degree: 'avoid' }),
  ],
  [
    'a test in pregnancy',
    /tested too soon/,
    'rpe-row',
    (plan) => {
      plan.inputs.standing.health.push({ fact: 'pregnancy', value: 'due' });
      const [set] = itemOf(plan, 'straight').sets;
      if (set !== undefined) set.kind = 'test';
    },
  ],
  [
    'a load lifted from the floor',
    /goblet-squat: lifts 8 kg from the floor/,
    'bone-density',
    (plan) =>
      void plan.inputs.standing.derived.push({ rule: 'made-up', what: 'lifting from the floor', degree: 'avoid' }),
  ],
  [
    'what a part of a combination asks',
    /clean-and-press: asks wrist, which is to be avoided/,
    'combo-weakest-part',
    (plan) => void plan.inputs.cautions.push(caution('wrist', 'avoid')),
  ],
  [
    'an easier way that must be avoided',
    /chair-squat: asks hip/,
    'rpe-row',
    (plan) => void plan.inputs.cautions.push({ ...caution('hip', 'avoid'), from: '2026-12-31' }),
  ],
  [
    'no sign-off at all',
    /two-hand-swing: was never signed off/,
    'swing-strong',
    (plan) => void plan.inputs.signOffs.splice(0),
  ],
  [
    'a heavier bell than passed',
    /24 kg is above what was signed off/,
    'swing-strong',
    (plan) =>
      void plan.inputs.signOffs.splice(0, 1, {
        exercise: 'two-hand-swing',
        grams: 16_000,
        date: '2026-12-10',
        by: 'Coach',
      }),
  ],
  [
    'a sign-off long ago',
    /not seen since 2026-01-01/,
    'swing-strong',
    (plan) =>
      void plan.inputs.signOffs.splice(0, 1, {
        exercise: 'two-hand-swing',
        grams: 32_000,
        date: '2026-01-01',
        by: 'Coach',
      }),
  ],
  [
    'a heavier bell to end with',
    /28 kg is above what was signed off/,
    'swing-main-and-next',
    (plan) => {
      const then = itemOf(plan, 'straight').sets[0]?.then;
      if (then !== undefined) then.load = bell('bell-4', 28_000);
      plan.inputs.signOffs.splice(0, 1, { exercise: 'two-hand-swing', grams: 24_000, date: '2026-12-10', by: 'Coach' });
    },
  ],
  [
    'a thing that is not there',
    /needs a chair, and there is none/,
    'tests-older',
    (plan) => {
      plan.inputs.kit = plan.inputs.kit.filter(({ kind }) => kind !== 'chair');
    },
  ],
  [
    'a low ceiling',
    /needs 2500 mm of height/,
    'combo-weakest-part',
    (plan) => void Object.assign(plan.inputs.room, { ceilingMillimetres: 2400 }),
  ],
  [
    'an unequal pair',
    /not done with .* of 2 bell/,
    'carry-uneven-pair',
    () =>
      changed('uneven-carry', {
        kit: { load: [{ kind: 'bell', count: 2, unequal: false }], unloaded: false, things: [] },
      }),
  ],
  [
    'a bell for a band',
    /not done with .* of 1 bell/,
    'rpe-row',
    () => changed('goblet-squat', { kit: { load: [{ kind: 'band' }], unloaded: false, things: [] } }),
  ],
  [
    'a load held otherwise',
    /held total, not per-hand/,
    'rpe-row',
    () => changed('goblet-squat', { holds: 'per-hand' }),
  ],
  [
    'more reps than keep their quality',
    /reps in a set, and it keeps its quality for 2/,
    'swing-strong',
    () => changed('two-hand-swing', { mostReps: 2 }),
  ],
  [
    'fast work in a moderate plan',
    /fast work in a moderate plan/,
    'swing-strong',
    (plan) => {
      plan.inputs.standing.moderate = true;
    },
  ],
  [
    'an exercise nobody knows',
    /leap is not in the library/,
    'rpe-row',
    (plan) => {
      itemOf(plan, 'straight').exercise = 'leap';
    },
  ],
  [
    'the forbidden among the easier',
    /one-hand-swing: was never signed off/,
    'rpe-row',
    (plan) => {
      for (const easier of itemOf(plan, 'straight').easier) easier.exercise = 'one-hand-swing';
    },
  ],
  [
    'the forbidden among the answers',
    /snatch: was never signed off/,
    'hold-with-bell',
    (plan) => {
      const [first] = itemOf(plan, 'straight').sets;
      if (first !== undefined) first.choose = [{ left: { min: 0, max: 99 }, exercise: 'snatch', reps: 5, reserve: 30 }];
    },
  ],
  [
    'the forbidden otherwise',
    /snatch: was never signed off/,
    'rpe-row',
    (plan) => {
      const [first] = itemOf(plan, 'straight').sets;
      if (first !== undefined) first.otherwise = [{ exercise: 'snatch', reps: 5, tempo: 'normal', sets: 3 }];
    },
  ],
  [
    'the forbidden in a warm-up',
    /snatch: was never signed off/,
    'rpe-row',
    (plan) => {
      itemOf(plan, 'warm-up').exercise = 'snatch';
    },
  ],
];

describe('an audit of words', () => {
  const without = (id: string, words: 'cues' | 'stopIf') =>
    exercises.map((one) => (one.id === id ? { ...one, words: { ...one.words, [words]: [] } } : one));

  it('sees cues, stop signs and easier sets that are missing', () => {
    const plan = planOf('rpe-row');
    expect(auditWords(plan, exercises)).toEqual([]);
    expect(auditWords(plan, without('goblet-squat', 'cues'))).toEqual(['goblet-squat has no cues']);
    expect(auditWords(plan, without('chair-squat', 'stopIf'))).toEqual(['chair-squat has no stop sign']);
    itemOf(plan, 'straight').easier[0]?.sets.pop();
    expect(auditWords(plan, exercises).join()).toMatch(/for 2 sets, of 3/);
    const [own] = itemOf(plan, 'straight').sets;
    const more = {
      exercise: itemOf(plan, 'straight').exercise,
      say: 'more',
      for: [],
      sets: [{ ...own, load: undefined, reps: 99 }],
    };
    Object.assign(itemOf(plan, 'straight'), { easier: [more] });
    expect(auditWords(plan, exercises).join()).toMatch(/for more reps than its own/);
    itemOf(plan, 'straight').easier = [];
    expect(auditWords(plan, exercises).join()).toMatch(/nothing easier/);
  });
});

const NO_TESTS = { tests: [] };

describe('an audit with the facts of the exercises', () => {
  it.each([...new Set(OF_FACTS.map(([, , of]) => of))])('finds nothing in %s', (name) => {
    const plan = planOf(name);
    expect(auditFacts(plan, exercises, NO_TESTS)).toEqual([]);
  });

  it.each(OF_FACTS)('sees %s', (_name, found, of, spoil) => {
    const plan = planOf(of);
    const facts = spoil(plan) ?? exercises;
    expect(auditFacts(plan, facts, NO_TESTS).join('\n')).toMatch(found);
  });
});
