/** Gentle advice on how exercises hang together: an easier version without kit, and a way for a client to get there. */
import type { Exercise } from '../model/exercise.js';
import type { RowTarget } from '../model/programme.js';
import { placeOfName } from './open-file.js';
import type { ReadExercise } from './read-exercise.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** What stands in every house, as for a warm-up. */
const IN_EVERY_HOUSE: readonly string[] = ['chair', 'wall', 'mat'];

const needsNoKit = ({ facts: { kit } }: Exercise): boolean =>
  (kit.load.length === 0 || kit.unloaded) && kit.things.every((thing) => IN_EVERY_HOUSE.includes(thing));

/** From each id to the ids one step away, said on either page. */
function stepsBetween(
  exercises: readonly ReadExercise[],
  pairsOf: (read: ReadExercise) => readonly (readonly [string, string])[],
): ReadonlyMap<string, readonly string[]> {
  const steps = new Map<string, string[]>();
  for (const [from, to] of exercises.flatMap(pairsOf)) steps.set(from, [...(steps.get(from) ?? []), to]);
  return steps;
}

/** Every id the steps lead to, the first ones included. */
function reachedFrom(first: readonly string[], steps: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set(first);
  // Grows while it is walked.
  for (const id of reached) for (const to of steps.get(id) ?? []) reached.add(to);
  return reached;
}

const linked = (versions: Exercise['words']['easier']): readonly string[] =>
  versions.flatMap(({ to }) => (to.kind === 'exercise' ? [to.id] : []));

/** What hangs together can be told only once nothing is wrong: a page not read or a link astray would look like a gap. */
const isWhole = ({ exercises }: ReadThings): boolean =>
  exercises.every(({ exercise, file }) => exercise !== undefined && file.report.errors() === 0);

function checkWithoutKit(things: ReadThings): void {
  if (!isWhole(things)) return;
  const easier = stepsBetween(things.exercises, ({ id, words }) => [
    ...linked(words.easier).map((to) => [id, to] as const),
    ...linked(words.harder).map((from) => [from, id] as const),
  ]);
  const kitless = new Set<string>(
    things.exercises.flatMap(({ id, exercise }) => (exercise && needsNoKit(exercise) ? [id] : [])),
  );
  for (const { id, sections, file } of things.exercises) {
    if ([...reachedFrom([id], easier)].some((reached) => kitless.has(reached))) continue;
    const place = sections.get('Easier')?.place ?? placeOfName(file, 'name');
    file.report.add({ code: 'easier-needs-kit', data: {} }, place);
  }
}

const targetsIn = ({ programmes }: ReadThings): readonly RowTarget[] =>
  programmes.flatMap(({ sessions }) =>
    sessions.flatMap(({ blocks }) => blocks.flatMap(({ rows }) => rows.map(({ target }) => target))),
  );

/** An exercise that a row names, or that a row may be filled with, or that stands in a warm-up, a cool-down or a test. */
function isAskedFor({ id, facts }: Exercise, targets: readonly RowTarget[]): boolean {
  if (facts.rehearses.length > 0 || facts.cools || facts.measure !== undefined) return true;
  return targets.some((target) =>
    target.kind === 'exercise'
      ? target.id === id
      : target.pattern === facts.pattern && (target.plane === undefined || target.plane === facts.plane),
  );
}

function checkUnreached(things: ReadThings): void {
  const { exercises, programmes } = things;
  if (programmes.length === 0 || !isWhole(things)) return;
  const beside = stepsBetween(exercises, ({ id, words, exercise }) =>
    [...linked(words.easier), ...linked(words.harder), ...(exercise?.facts.parts ?? [])].flatMap((to) => [
      [id, to] as const,
      [to, id] as const,
    ]),
  );
  const targets = targetsIn(things);
  const asked = exercises.flatMap(({ exercise }) => (exercise && isAskedFor(exercise, targets) ? [exercise.id] : []));
  const reached = reachedFrom(asked, beside);
  for (const { id, file } of exercises) {
    if (!reached.has(id)) file.report.add({ code: 'exercise-unreached', data: {} }, placeOfName(file, 'name'));
  }
}

export const linkAdvice: readonly FolderCheck[] = [
  { name: 'an easier version without kit', codes: ['easier-needs-kit'], check: checkWithoutKit },
  { name: 'an exercise nobody reaches', codes: ['exercise-unreached'], check: checkUnreached },
];
