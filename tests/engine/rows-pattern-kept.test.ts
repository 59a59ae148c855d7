/** A row that names a pattern keeps the exercise it was filled with, whatever was marked in other rows. */
import { expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Day } from '../../src/model/day.js';
import type { History } from '../../src/model/history.js';
import type { Plan } from '../../src/model/plan.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { aLog, anEdition, doAsPlanned } from '../session/make-marks.js';
import { aBlock, aClient, aLibrary, anExercise, aProgramme, aRow, aSession, aTest, kg, on } from './make-block.js';

const exercises = ['high-pull', 'long-pull', 'wide-pull'].map((id) => anExercise(id, { pattern: 'pull' }));
const byPattern = aRow('pull', { target: { kind: 'pattern', pattern: 'pull' } });
const programme = aProgramme([aSession('A', aBlock([byPattern])), aSession('B', aBlock([aRow('wide-pull')]))]);
const load = kg('16');
const client = aClient({
  days: [1, 4],
  tests: [
    aTest('long-pull', 9, { load, date: on('2026-12-08') }),
    aTest('wide-pull', 9, { load, date: on('2026-12-01') }),
  ],
});

function planOn(today: Day, history?: History, more: Partial<typeof client> = {}): Plan {
  const input = { library: aLibrary(exercises, programme), client: { ...client, ...more }, today, edition: 1 };
  const { value } = planBlock(history === undefined ? input : { ...input, history });
  return sayPlan(value ?? expect.fail('no plan'));
}

const filledWith = (plan: Plan, occurrence: number): string | undefined =>
  plan.weeks
    .flatMap(({ sessions }) => sessions)
    .find((session) => session.occurrence === occurrence)
    ?.groups.flatMap(({ items }) => items)
    .find(({ row }) => row === 'pull')?.exercise;

test('marks of another exercise of the pattern do not change it; a test by the coach does', () => {
  const first = planOn(on('2026-12-28'));
  expect(filledWith(first, 3)).toBe('long-pull');
  const events = [1, 2].flatMap((occurrence) => doAsPlanned(first, occurrence));
  const history = gatherHistory([anEdition(first, 1)], [aLog(events)]).value;
  expect(filledWith(planOn(on('2027-01-08'), history), 3)).toBe('long-pull');
  const tests = [...client.tests, aTest('high-pull', 9, { load, date: on('2027-01-08') })];
  expect(filledWith(planOn(on('2027-01-08'), history, { tests }), 3)).toBe('high-pull');
});
