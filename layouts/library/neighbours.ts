/** Easier and harder versions of an exercise within one library: its own links and, derived, other exercises' links to it. */
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import { compareIds, type ExerciseId } from '../../src/model/identity.js';

export interface Neighbour {
  readonly exercise: Exercise;
  /** What going there is for, as the link that leads there or back has it; of a derived harder one only what makes it so. */
  readonly causes: readonly Cause[];
}

export interface Neighbours {
  /** In the author's order; then those that name this one as harder, by id. */
  readonly easier: readonly Neighbour[];
  /**
   * In the author's order; then those of the same movement that lead here because they are too much, by id, but for those
   * that a nearer harder one leads to.
   */
  readonly harder: readonly Neighbour[];
}

interface Link {
  readonly id: ExerciseId;
  readonly causes: readonly Cause[];
}

const linked = (versions: readonly Version[]): readonly Link[] =>
  versions.flatMap(({ to, causes }) => (to.kind === 'exercise' ? [{ id: to.id, causes }] : []));

const asksBalance = ({ facts }: Exercise): boolean => facts.asks.some(({ of }) => of === 'balance');

/**
 * What makes the one harder than the other, and not only other: a way round a sore joint, a missing bell or the floor is
 * no step up when it is gone back. What a link says of balance counts where the one does ask for it: a leg that
 * wobbles is also sent to something else altogether, lying down.
 */
const HARDER: readonly Cause[] = ['load', 'range', 'balance', 'speed'];

const whatIsHarder = (from: Exercise, { causes }: Link): readonly Cause[] =>
  causes.includes('kit')
    ? []
    : causes.filter((cause) => HARDER.includes(cause) && (cause !== 'balance' || asksBalance(from)));

export function neighboursIn(exercises: readonly Exercise[]): (of: Exercise) => Neighbours {
  const byId = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const inOrder = [...exercises].sort((a, b) => compareIds(a.id, b.id));
  const known = (links: readonly Link[]): readonly Neighbour[] => {
    const first = new Map<ExerciseId, Neighbour>();
    for (const { id, causes } of links) {
      const exercise = byId.get(id);
      if (exercise !== undefined && !first.has(id)) first.set(id, { exercise, causes });
    }
    return [...first.values()];
  };
  const naming = (of: Exercise): readonly Link[] =>
    inOrder.flatMap(({ id, words }) =>
      linked(words.harder).flatMap((link) => (link.id === of.id ? [{ id, causes: link.causes }] : [])),
    );
  const easedTo = (of: Exercise): readonly Link[] =>
    inOrder.flatMap((from) => {
      if (from.facts.pattern !== of.facts.pattern) return [];
      const causes = linked(from.words.easier).flatMap((link) => (link.id === of.id ? whatIsHarder(from, link) : []));
      return causes.length === 0 ? [] : [{ id: from.id, causes: [...new Set(causes)] }];
    });
  const harder = new Map(exercises.map((of) => [of.id, known([...linked(of.words.harder), ...easedTo(of)])] as const));
  /** Everything that going on from one exercise, again and again, leads to. */
  const beyond = (id: ExerciseId): ReadonlySet<ExerciseId> => {
    const reached = new Set<ExerciseId>();
    const open = [id];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      for (const { exercise } of harder.get(next) ?? []) {
        if (reached.has(exercise.id)) continue;
        reached.add(exercise.id);
        open.push(exercise.id);
      }
    }
    return reached;
  };
  const nearest = (of: Exercise): readonly Neighbour[] => {
    const all = harder.get(of.id) ?? [];
    const own = new Set(linked(of.words.harder).map(({ id }) => id));
    return all.filter(
      ({ exercise: { id } }) =>
        own.has(id) ||
        // Two that lead to each other both stay.
        !all.some(
          (other) =>
            other.exercise.id !== id && beyond(other.exercise.id).has(id) && !beyond(id).has(other.exercise.id),
        ),
    );
  };
  return (of) => ({ easier: known([...linked(of.words.easier), ...naming(of)]), harder: nearest(of) });
}
