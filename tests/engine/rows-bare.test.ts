/** The body as the lightest load, where a load may be added to it: with or without its mass on file. */
import { expect, test } from 'vitest';
import { anExercise, aTest, bells } from './make-block.js';
import { itemsOf, planOf, withRow } from './rows-made.js';

test('who was tested empty-handed begins so, by reps and reserve, and no load is hung on', () => {
  const pull = anExercise('squat', {
    holds: 'added',
    bodyShare: { share: 1000, standing: 'practice', source: 'made up' },
    kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: true, things: [] },
  });
  const dose = { kind: 'sets', sets: 3, reps: { min: 3, max: 6 }, eachSide: false } as const;
  const plan = planOf(withRow({ dose }), { kit: bells('8', '12'), tests: [aTest('squat', 6)] }, [pull]);
  expect(plan.inputs.bodyMass).toBeNull();
  for (const { sets } of itemsOf(plan)) {
    for (const { kind, load } of sets) expect([kind, load?.grams ?? 0]).not.toContain('feeler');
    for (const { load } of sets) expect(load?.grams ?? 0).toBe(0);
  }
  // 6 with 2 left are 8: five leave three in week 1.
  expect(itemsOf(plan)[0]?.sets.find(({ kind }) => kind === 'work')).toMatchObject({ reps: 5, reserve: 30 });
});
