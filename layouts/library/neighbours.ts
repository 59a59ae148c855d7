/** Easier and harder versions of an exercise within one library: its own links and, derived, other exercises' links to it. */
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import { compareIds, type ExerciseId } from '../../src/model/identity.js';

export interface Neighbours {
  /** In the author's order; then those that name this one as harder, by id. */
  readonly easier: readonly Exercise[];
  /** In the author's order; then those of the same movement that lead here because they are too much, by id. */
  readonly harder: readonly Exercise[];
}

const linked = (versions: readonly Version[]): readonly ExerciseId[] =>
  versions.flatMap(({ to }) => (to.kind === 'exercise' ? [to.id] : []));

/**
 * What makes the one harder than the other, and not only other: a way round a sore joint, a missing bell or the floor is
 * no step up when it is gone back.
 */
const HARDER: ReadonlySet<Cause> = new Set<Cause>(['load', 'range', 'balance', 'speed']);

export function neighboursIn(exercises: readonly Exercise[]): (of: Exercise) => Neighbours {
  const byId = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const known = (ids: readonly ExerciseId[]): readonly Exercise[] =>
    [...new Set(ids)].flatMap((id) => {
      const found = byId.get(id);
      return found ? [found] : [];
    });
  const naming = (of: Exercise): readonly ExerciseId[] =>
    exercises
      .filter(({ words }) => linked(words.harder).includes(of.id))
      .map(({ id }) => id)
      .sort(compareIds);
  const easedTo = (of: Exercise): readonly ExerciseId[] =>
    exercises
      .filter(({ facts, words }) => {
        const up = words.easier.filter(({ causes }) => causes.some((cause) => HARDER.has(cause)));
        return facts.pattern === of.facts.pattern && linked(up).includes(of.id);
      })
      .map(({ id }) => id)
      .sort(compareIds);
  return (of) => ({
    easier: known([...linked(of.words.easier), ...naming(of)]),
    harder: known([...linked(of.words.harder), ...easedTo(of)]),
  });
}
