/** Every plan the engine makes, audited from its JSON: the demo studio's, the cases', and those of made-up studios. */
import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { isoOfDay } from '../../src/model/day.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import type { Library } from '../../src/model/studio.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';
import { runs } from '../deep.js';
import { type Breadth, generateStudio } from '../engine/generate-studio.js';
import { planDemo } from '../studio/demo-plans.js';
import { auditPlan } from './audit.js';
import { auditEasierDoses, type TimedRow } from './audit-easier.js';
import { auditFacts } from './audit-facts.js';
import { auditMuscles } from './audit-muscles.js';
import { auditSessions } from './audit-sessions.js';
import { auditWords } from './audit-words.js';
import { planSchema } from './plan-json.js';

/** Thousands in `npm run verify:deep`. */
const SEEDS = runs(50, 4000);

/** From the file alone, then with the facts of the exercises it names. */
function findIn(plan: Plan, { exercises, programmes }: Pick<Library, 'exercises' | 'programmes'>, client: Client) {
  const json: unknown = JSON.parse(JSON.stringify(plan));
  const found = auditPlan(json);
  const parsed = planSchema.safeParse(json);
  if (!parsed.success) return found;
  const tests = client.tests.map(({ exercise, date }) => ({ exercise, date: isoOfDay(date) }));
  return [
    ...found,
    ...auditFacts(parsed.data, exercises, { tests }),
    ...auditSessions(parsed.data, exercises),
    ...auditMuscles(parsed.data, exercises),
    ...auditEasierDoses(
      parsed.data,
      exercises,
      programmes.filter(({ id }) => id === client.programme).flatMap(timedRows),
    ),
  ];
}

/** What the programme itself asks of an exercise by the clock. */
const timedRows = ({ sessions }: Programme): readonly TimedRow[] =>
  sessions.flatMap(({ blocks }) =>
    blocks.flatMap(({ rows }) =>
      rows.flatMap(({ target, dose }) =>
        target.kind === 'exercise' && dose.kind === 'timed' ? [{ exercise: target.id, longest: dose.seconds.max }] : [],
      ),
    ),
  );

const wordsIn = (plan: Plan, exercises: readonly Exercise[]): readonly string[] =>
  auditWords(planSchema.parse(JSON.parse(JSON.stringify(plan))), exercises);

it("finds nothing in the demo studio's plans", async () => {
  const { plans, library, clients } = await planDemo();
  expect(plans.size).toBeGreaterThan(0);
  for (const client of clients) {
    const plan = plans.get(client.id);
    if (plan === undefined) continue;
    expect(findIn(plan, library, client), client.id).toEqual([]);
    expect(wordsIn(plan, library.exercises), client.id).toEqual([]);
  }
});

it('finds nothing in the plans of the cases', () => {
  const exercises = readLibrary();
  const files = readdirSync(new URL('../cases', import.meta.url)).filter((file) => file.endsWith('.case.txt'));
  const found = files.flatMap((file) => {
    const name = file.replace('.case.txt', '');
    const { library, client, today } = readCaseFile(name, exercises);
    const { value } = planBlock({ library, client, today, edition: 0 });
    const all = value === null ? [] : [...findIn(value, library, client), ...wordsIn(value, exercises)];
    return all.map((text) => `${name}: ${text}`);
  });
  expect(found).toEqual([]);
});

it.each<Breadth>(['walked', 'everything'])(
  `finds nothing in the plans of made-up studios: %s, ${SEEDS} seeds`,
  (breadth) => {
    let planned = 0;
    const found: string[] = [];
    for (let seed = 1; seed <= SEEDS; seed += 1) {
      const made = generateStudio(seed, breadth);
      const { value } = planBlock({ ...made, edition: 0 });
      if (value === null) continue;
      planned += 1;
      const findings = findIn(value, made.library, made.client);
      for (const finding of findings.slice(0, 3)) found.push(`seed ${seed}: ${finding}`);
    }
    expect(planned).toBeGreaterThan(SEEDS / 10);
    expect(found).toEqual([]);
  },
);
