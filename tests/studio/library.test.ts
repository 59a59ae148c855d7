/** The demo's library hangs together: every loaded exercise leads, easier by easier, to one that needs no kit. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Exercise } from '../../src/model/exercise.js';
import { type ReadDemo, readDemo } from './demo-library.js';

let demo: ReadDemo;
beforeAll(async () => {
  demo = await readDemo();
});

const byId = (id: string): Exercise => {
  const found = demo.library.exercises.find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`no exercise ${id}`);
  return found;
};
const linked = (versions: Exercise['words']['easier']): readonly Exercise[] =>
  versions.flatMap(({ to }) => (to.kind === 'exercise' ? [byId(to.id)] : []));
const needsNothing = ({ facts }: Exercise): boolean => facts.kit.load.length === 0 && facts.kit.things.length === 0;

function easierThan(exercise: Exercise): ReadonlySet<Exercise> {
  const reached = new Set<Exercise>();
  const waiting = [exercise];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const easier of linked(next.words.easier)) {
      if (reached.has(easier)) continue;
      reached.add(easier);
      waiting.push(easier);
    }
  }
  return reached;
}

describe('the library', () => {
  test('twelve exercises at least', () => {
    expect(demo.library.exercises.length).toBeGreaterThanOrEqual(12);
  });

  test('every loaded exercise reaches one that needs no kit', () => {
    for (const exercise of demo.library.exercises.filter(({ facts }) => facts.kit.load.length > 0)) {
      expect([...easierThan(exercise)].some(needsNothing), exercise.id).toBe(true);
    }
  });

  test('every link resolves, and none leads in a circle', () => {
    for (const exercise of demo.library.exercises) {
      linked([...exercise.words.easier, ...exercise.words.harder]);
      expect(easierThan(exercise).has(exercise), exercise.id).toBe(false);
    }
  });

  test('harder on one page is never also easier on the way back round', () => {
    for (const exercise of demo.library.exercises) {
      for (const harder of linked(exercise.words.harder)) {
        expect(easierThan(exercise).has(harder), `${exercise.id} → ${harder.id}`).toBe(false);
      }
    }
  });

  test('no exercise stands alone', () => {
    const joined = new Set(
      demo.library.exercises.flatMap((exercise) => linked(exercise.words.easier).map(({ id }) => id)),
    );
    for (const exercise of demo.library.exercises) {
      expect(exercise.words.easier.length, exercise.id).toBeGreaterThan(0);
      const links = linked([...exercise.words.easier, ...exercise.words.harder]).length;
      if (links === 0 && !joined.has(exercise.id)) expect(exercise.facts.pattern, exercise.id).toBe('brace');
    }
  });

  test('overhead and double bells are seen before they go home', () => {
    const asked = demo.library.exercises.filter(({ facts }) => facts.signOff).map(({ id }) => id);
    expect(asked).toEqual(['double-front-squat', 'overhead-press']);
  });

  test('what an exercise needs no other exercise for is said on its own page', () => {
    const ways = demo.library.exercises.filter(({ words }) => words.easier.some(({ to }) => to.kind === 'way'));
    expect(ways.length).toBeGreaterThanOrEqual(demo.library.exercises.length - 2);
  });

  test('every row of a programme is either never cut or has its place among what goes first', () => {
    for (const { id, sessions, neverCut, cutFirst } of demo.library.programmes) {
      const rows = new Set(
        sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.rows.map((row) => row.id))),
      );
      expect(new Set([...neverCut, ...cutFirst]), id).toEqual(rows);
      expect(neverCut.length + cutFirst.length, id).toBe(rows.size);
    }
  });
});
