/** The generator must reach every rule of the walk often, or agreement over its strands would mean little. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { strands } from './generate-strand.js';
import { walkStrand } from './walk.js';

const SEED = 20_261_124;
const RUNS = 8000;

it('every rule of the walk fires on many generated strands', () => {
  const counts = new Map<string, number>();
  const count = (name: string) => counts.set(name, (counts.get(name) ?? 0) + 1);
  for (const strand of fc.sample(strands, { numRuns: RUNS, seed: SEED })) {
    const walk = walkStrand(strand);
    if (walk.kind === 'impossible') {
      count('impossible');
      continue;
    }
    const seen = new Set<string>();
    let trials = 0;
    for (const step of walk.steps) {
      seen.add(step.easy && step.relaxed ? `easy ${step.rule}` : step.rule);
      if (step.gate !== undefined && trials > 0) seen.add('gate after a trial');
      if (step.gate !== undefined && step.rule === 'harder-version') seen.add('gate to a harder version');
      if (step.trial !== undefined) trials += 1;
      if (step.otherwise !== undefined && step.easy) seen.add('otherwise in an easy week');
      if (step.otherwise !== undefined && step.otherwise.reps < strand.bottom) seen.add('otherwise below the range');
    }
    if (trials > 1) seen.add('trial repeated');
    for (const name of seen) count(name);
  }
  const table = [...counts].sort(([, a], [, b]) => b - a);
  console.info(`strands in which a rule fires, of ${RUNS} (seed ${SEED}):`);
  for (const [name, times] of table) console.info(`  ${String(times).padStart(5)}  ${name}`);
  const expected = [
    'stay',
    'back-up',
    'small-step',
    'big-step',
    'trial',
    'slower',
    'harder-version',
    'harder-trial',
    'fewer-reps',
    'normal-tempo',
    'lower-load',
    'easier-version',
    'easy-week',
    'easy lower-load',
    'easy easy-week',
    'easy easier-version',
    'gate after a trial',
    'gate to a harder version',
    'trial repeated',
    'otherwise in an easy week',
    'impossible',
  ];
  for (const name of expected) expect(counts.get(name) ?? 0, name).toBeGreaterThanOrEqual(5);
});
