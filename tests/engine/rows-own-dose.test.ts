/** No more of an exercise on the side than the client works with (own-dose). */
import { expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  aWay,
  bodyweight,
} from './make-block.js';
import { itemsOf, today } from './rows-made.js';

const library = [
  anExercise('lying', { ...bodyweight, pattern: 'brace', easier: [aLink('leaning'), aWay('shorter')] }),
  anExercise('leaning', { ...bodyweight, way: 'mobility', pattern: 'brace' }),
];
const few = aRow('leaning', {
  dose: { kind: 'sets', sets: 2, reps: { min: 3, max: 5 }, eachSide: false },
});
const programme = aProgramme([aSession('A', aBlock([aRow('lying'), few]))]);

function easierReps(rule: number): readonly (number | undefined)[] {
  const rulesOverridden = rule === 1 ? [] : [{ rule: 'own-dose', value: rule, reason: 'tried', place: PLACE }];
  const client = aClient({ tests: [aTest('lying', 12)] });
  const of = aLibrary(library, programme);
  const { value, problems } = planBlock({ library: of, client, today, edition: 0, rulesOverridden });
  if (value === null) throw new Error(JSON.stringify(problems));
  const beside = itemsOf(value).find(({ exercise }) => exercise === 'lying')?.easier;
  const leaning = beside?.find(({ exercise }) => exercise === 'leaning');
  return [...new Set(leaning?.sets.map(({ reps }) => reps))];
}

test('an easier version has no more reps than the client’s own work in it; without the rule it would', () => {
  expect(easierReps(1)).toEqual([3]);
  expect(easierReps(0)[0]).toBeGreaterThan(3);
});
