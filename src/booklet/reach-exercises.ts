/** Which exercises a booklet can lead its reader to; each has a page of its own. */
import type { Exercise } from '../model/exercise.js';
import type { Item } from '../model/plan.js';
import { invariant } from '../model/result.js';
import { pageOf } from './compose-easier.js';
import { type Subject, WORK_GROUPS } from './subject.js';

/**
 * Work in the order first trained; then what gates, tables and easier ways lead to, and the parts of combinations, in
 * the order met; last what only warms up and cools down.
 */
export function reachExercises({ plan, exercises }: Subject): readonly Exercise[] {
  const groups = plan.weeks.flatMap(({ sessions }) => sessions.flatMap((session) => session.groups));
  const itemsIn = (work: boolean): readonly Item[] =>
    groups.filter(({ kind }) => WORK_GROUPS.includes(kind) === work).flatMap(({ items }) => items);
  const [work, around] = [itemsIn(true), itemsIn(false)];
  const pages = new Map<string, Exercise>();
  const reach = (id: string): void => {
    // A way of doing an exercise stands on its page.
    const exercise = exercises.get(id.split('#')[0] ?? id);
    invariant(exercise !== undefined, `the plan names ${id}, which the library does not have`);
    if (pages.has(exercise.id)) return;
    pages.set(exercise.id, exercise);
    later.push(...exercise.facts.parts);
  };
  const later: string[] = [];
  for (const { exercise } of work) reach(exercise);
  for (const id of work.flatMap(ledTo)) reach(id);
  for (const { exercise } of around) later.push(exercise);
  for (const id of around.flatMap(ledTo)) later.push(id);
  // Grows while it is walked: a part may itself have parts.
  for (const id of later) reach(id);
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
