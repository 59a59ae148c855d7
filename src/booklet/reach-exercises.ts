/** Which exercises a booklet can lead its reader to; each has a page of its own. */
import type { Exercise } from '../model/exercise.js';
import type { Item } from '../model/plan.js';
import { invariant } from '../model/result.js';
import { pageOf } from './compose-easier.js';
import type { Subject } from './subject.js';

/** Planned ones in the order first trained, then what gates, tables and easier ways lead to, in the order met. */
export function reachExercises({ plan, exercises }: Subject): readonly Exercise[] {
  const items = plan.weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)),
  );
  const ids = [...items.map(({ exercise }) => exercise), ...items.flatMap(ledTo)];
  const pages = new Map<string, Exercise>();
  for (const id of ids) {
    const exercise = exercises.get(id);
    invariant(exercise !== undefined, `the plan names ${id}, which the library does not have`);
    pages.set(exercise.id, exercise);
  }
  return [...pages.values()];
}

function ledTo({ sets, easier }: Item): readonly string[] {
  const bySets = sets.flatMap(({ exercise, gate, otherwise, choose }) => [
    ...(exercise === undefined ? [] : [exercise]),
    ...(gate === undefined ? [] : [gate.needs.exercise]),
    ...(otherwise ?? []).map(({ exercise }) => exercise),
    ...(choose ?? []).map(({ exercise }) => exercise),
  ]);
  return [...bySets, ...easier.flatMap((way) => pageOf(way) ?? [])];
}
