/** Easier and harder versions of an exercise within one library: its own links and, derived, other exercises' links to it. */
import type { Exercise, Version } from '../../src/model/exercise.js';
import { compareIds, type ExerciseId } from '../../src/model/identity.js';

export interface Neighbours {
  /** In the author's order; then those that name this one, by id. */
  readonly easier: readonly Exercise[];
  readonly harder: readonly Exercise[];
}

const linked = (versions: readonly Version[]): readonly ExerciseId[] =>
  versions.flatMap(({ to }) => (to.kind === 'exercise' ? [to.id] : []));

export function neighboursIn(exercises: readonly Exercise[]): (of: Exercise) => Neighbours {
  const byId = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const known = (ids: readonly ExerciseId[]): readonly Exercise[] =>
    [...new Set(ids)].flatMap((id) => {
      const found = byId.get(id);
      return found ? [found] : [];
    });
  const naming = (of: Exercise, side: 'easier' | 'harder'): readonly ExerciseId[] =>
    exercises
      .filter(({ words }) => linked(words[side]).includes(of.id))
      .map(({ id }) => id)
      .sort(compareIds);
  return (of) => ({
    easier: known([...linked(of.words.easier), ...naming(of, 'harder')]),
    harder: known([...linked(of.words.harder), ...naming(of, 'easier')]),
  });
}
