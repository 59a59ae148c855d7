/** Easier is easier one way only: for one cause, no exercise may lead back to itself. */
import type { Cause } from '../model/exercise.js';
import { compareIds } from '../model/identity.js';
import type { Place } from '../model/place.js';
import type { ReadExercise } from './read-exercise.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** `to` is said to be easier than `from`, in a line of `said`'s file. */
interface Step {
  readonly from: string;
  readonly to: string;
  readonly said: ReadExercise;
  readonly place: Place;
}

/** Links without a cause are for load, the first thing anybody means by easier. */
function stepsByCause(exercises: readonly ReadExercise[]): ReadonlyMap<Cause, readonly Step[]> {
  const byCause = new Map<Cause, Step[]>();
  for (const said of exercises) {
    for (const [versions, harder] of [
      [said.words.easier, false],
      [said.words.harder, true],
    ] as const) {
      for (const { to, causes, place } of versions) {
        if (to.kind !== 'exercise') continue;
        const [from, easier] = harder ? [to.id, said.id] : [said.id, to.id];
        for (const cause of causes.length > 0 ? causes : (['load'] as const)) {
          const steps = byCause.get(cause) ?? [];
          steps.push({ from, to: easier, said, place });
          byCause.set(cause, steps);
        }
      }
    }
  }
  return byCause;
}

function checkCircles({ exercises }: ReadThings): void {
  // One circle may be said for several causes: it is told once.
  const told = new Set<string>();
  for (const [cause, steps] of [...stepsByCause(exercises)].sort(([a], [b]) => compareIds(a, b))) {
    const easierThan = new Map<string, string[]>();
    for (const { from, to } of steps) easierThan.set(from, [...(easierThan.get(from) ?? []), to]);
    for (const step of steps) {
      const back = step.from === step.to ? [] : pathBetween(easierThan, step.to, step.from);
      if (back === undefined) continue;
      const circle = step.from === step.to ? [step.from] : [step.from, ...back];
      const name = [...new Set(circle)].sort(compareIds).join(' ');
      if (told.has(name)) continue;
      told.add(name);
      const path = circle.length === 1 ? circle : [cause, ...circle];
      step.said.file.report.add({ code: 'easier-in-a-circle', data: { path } }, step.place);
    }
  }
}

/** Ids from `start` to `goal` along the steps, the shortest way, both included. */
function pathBetween(
  easierThan: ReadonlyMap<string, readonly string[]>,
  start: string,
  goal: string,
): readonly string[] | undefined {
  const cameFrom = new Map<string, string>([[start, '']]);
  // Grows while it is walked.
  for (const at of cameFrom.keys()) {
    if (at === goal) {
      const path = [at];
      for (let before = cameFrom.get(at); before; before = cameFrom.get(before)) path.unshift(before);
      return path;
    }
    for (const to of easierThan.get(at) ?? []) if (!cameFrom.has(to)) cameFrom.set(to, at);
  }
  return undefined;
}

export const versionChecks: readonly FolderCheck[] = [
  { name: 'easier in a circle', codes: ['easier-in-a-circle'], check: checkCircles },
];
