/** One version in the place of several exercises of a session (refuge-once). */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import { aBlock, aClient, aLibrary, aLink, anExercise, aProgramme, aRow, aSession } from './make-block.js';
import { itemsOf, today } from './rows-made.js';

/** Both need a sign-off that nobody has. */
const library = [
  anExercise('squat', { signOff: true, easier: [aLink('other')] }),
  anExercise('lunge', { signOff: true, easier: [aLink('other')] }),
  anExercise('other'),
  anExercise('press', { pattern: 'push' }),
];
function planOf(names: readonly string[], programme: Partial<Programme> = {}, most = 1): Plan {
  const session = aSession('A', aBlock(names.map((name) => aRow(name))));
  const rulesOverridden = most === 1 ? [] : [{ rule: 'refuge-once', value: most, reason: 'tried', place: PLACE }];
  const of = aLibrary(library, aProgramme([session], programme));
  const { value, problems } = planBlock({ library: of, client: aClient(), today, edition: 0, rulesOverridden });
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}
const rowsOf = (plan: Plan) => [...new Set(itemsOf(plan).map(({ row }) => row))];
const told = (plan: Plan) =>
  plan.findings
    .filter(({ rule }) => rule === 'refuge-once')
    .map(({ row, weeks, reason }) => [row, weeks.length, sayReason(reason, 'coach', speechOf('en-GB'))]);

describe('one version in the place of several', () => {
  test('is done in the first of them; the coach is told of the others', () => {
    const plan = planOf(['squat', 'press', 'lunge']);
    expect(rowsOf(plan)).toEqual(['squat', 'press']);
    expect(told(plan)).toEqual([
      ['lunge', 6, 'The lunge is left out: the other stands in this session already, for the squat.'],
    ]);
  });

  test('in the row that was written for it before any other, wherever it stands', () => {
    const plan = planOf(['squat', 'lunge', 'other']);
    expect(rowsOf(plan)).toEqual(['other']);
    expect(told(plan).map(([row]) => row)).toEqual(['squat', 'lunge']);
  });

  test('says so where the programme never cuts the row', () => {
    const plan = planOf(['squat', 'lunge'], { neverCut: [aRow('lunge').id] });
    expect(rowsOf(plan)).toEqual(['squat']);
    expect(told(plan)[0]?.[2]).toContain('never cut');
  });

  test('as often as the coach says, and never where each has a version of its own', () => {
    expect(rowsOf(planOf(['squat', 'lunge'], {}, 2))).toEqual(['squat', 'lunge']);
    expect(rowsOf(planOf(['squat', 'press']))).toEqual(['squat', 'press']);
    expect(told(planOf(['squat', 'press']))).toEqual([]);
  });
});
