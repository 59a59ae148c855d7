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
  anExercise('leaning', { ...bodyweight, way: 'hold', pattern: 'brace' }),
];
const hold = aRow('leaning', {
  dose: { kind: 'timed', sets: 2, seconds: { min: 5, max: 15 }, eachSide: false },
});
const programme = aProgramme([aSession('A', aBlock([aRow('lying'), hold]))]);

function easierSeconds(rule: number): readonly (number | undefined)[] {
  const rulesOverridden = rule === 1 ? [] : [{ rule: 'own-dose', value: rule, reason: 'tried', place: PLACE }];
  const client = aClient({ tests: [aTest('lying', 12)] });
  const of = aLibrary(library, programme);
  const { value, problems } = planBlock({ library: of, client, today, edition: 0, rulesOverridden });
  if (value === null) throw new Error(JSON.stringify(problems));
  const beside = itemsOf(value).find(({ exercise }) => exercise === 'lying')?.easier;
  const leaning = beside?.find(({ exercise }) => exercise === 'leaning');
  return [...new Set(leaning?.sets.map(({ seconds }) => seconds))];
}

test('an easier hold lasts no longer than the client’s own; without the rule it would', () => {
  expect(easierSeconds(1)).toEqual([5]);
  expect(easierSeconds(0)[0]).toBeGreaterThan(5);
});
