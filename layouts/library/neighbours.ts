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

/** Links by the exercise they lead to, of those that lead there in order of id. */
type Back = ReadonlyMap<ExerciseId, readonly Link[]>;

function linksBack(exercises: readonly Exercise[], linksOf: (from: Exercise) => readonly Link[]): Back {
  const back = new Map<ExerciseId, Link[]>();
  for (const from of exercises) {
    for (const { id, causes } of linksOf(from)) {
      const link = { id: from.id, causes };
      const known = back.get(id);
      if (known === undefined) back.set(id, [link]);
      else known.push(link);
    }
  }
  return back;
}

/** Every easier exercise of the same movement, once, with all that makes this one harder; none where nothing does. */
function easings(from: Exercise, byId: ReadonlyMap<ExerciseId, Exercise>): readonly Link[] {
  const causes = new Map<ExerciseId, Set<Cause>>();
  for (const link of linked(from.words.easier)) {
    if (byId.get(link.id)?.facts.pattern !== from.facts.pattern) continue;
    const known = causes.get(link.id) ?? new Set();
    for (const cause of whatIsHarder(from, link)) known.add(cause);
    causes.set(link.id, known);
  }
  return [...causes].flatMap(([id, own]) => (own.size === 0 ? [] : [{ id, causes: [...own] }]));
}

/** Made once for a library: it takes as long as there are links in it. */
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
  const naming = linksBack(inOrder, ({ words }) => linked(words.harder));
  const easedTo = linksBack(inOrder, (from) => easings(from, byId));
  const harder = new Map(
    exercises.map((of) => [of.id, known([...linked(of.words.harder), ...(easedTo.get(of.id) ?? [])])] as const),
  );
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
    const onward = all.map(({ exercise }) => ({ id: exercise.id, leadsTo: beyond(exercise.id) }));
    const stay = onward.filter(
      ({ id, leadsTo }) =>
        own.has(id) ||
        // Two that lead to each other both stay.
        !onward.some((other) => other.id !== id && other.leadsTo.has(id) && !leadsTo.has(other.id)),
    );
    const staying = new Set(stay.map(({ id }) => id));
    return all.filter(({ exercise }) => staying.has(exercise.id));
  };
  return (of) => ({ easier: known([...linked(of.words.easier), ...(naming.get(of.id) ?? [])]), harder: nearest(of) });
}
