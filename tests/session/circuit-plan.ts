/** Two sessions a week, planned: a squat alone, then a row of each side and a press turn about. */
import { expect } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Plan } from '../../src/model/plan.js';
import { sayPlan } from '../../src/words/say-plan.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  kg,
  on,
} from '../engine/make-block.js';

const exercises = [
  anExercise('squat'),
  anExercise('row', { pattern: 'pull', sides: 'each' }),
  anExercise('press', { pattern: 'push' }),
];
const round = aBlock([aRow('row'), aRow('press')], { kind: 'circuit', rounds: 3, name: 'Round' });
const programme = aProgramme([aSession('A', aBlock([aRow('squat')]), round), aSession('B', aBlock([aRow('squat')]))]);
const tests = [
  aTest('squat', 10, { load: kg('16') }),
  aTest('row', 10, { load: kg('12') }),
  aTest('press', 9, { load: kg('12') }),
];
const { value } = planBlock({
  library: aLibrary(exercises, programme),
  client: aClient({ days: [1, 4], tests }),
  today: on('2026-12-20'),
  edition: 1,
});

/** From Monday, 4 January 2027. */
export const circuitPlan: Plan = sayPlan(value ?? expect.fail('no plan'));
