/** Easier is easier one way only: for one cause, no exercise may lead back to itself. */
import type { Cause } from '../model/exercise.js';
import { compareIds } from '../model/identity.js';
import type { Place } from '../model/place.js';
import { circlesIn, type Step } from './circles.js';
import type { ReadExercise } from './read-exercise.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** `to` is said to be easier than `from`, in a line of `said`'s file. */
interface SaidStep extends Step {
  readonly said: ReadExercise;
  readonly place: Place;
}

/** Links without a cause are for load, the first thing anybody means by easier. */
function stepsByCause(exercises: readonly ReadExercise[]): ReadonlyMap<Cause, readonly SaidStep[]> {
  const byCause = new Map<Cause, SaidStep[]>();
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
    for (const { step, ids } of circlesIn(steps)) {
      const name = [...ids].sort(compareIds).join(' ');
      if (told.has(name)) continue;
      told.add(name);
      const path = ids.length === 1 ? ids : [cause, ...ids, step.from];
      step.said.file.report.add({ code: 'easier-in-a-circle', data: { path } }, step.place);
    }
  }
}

export const versionChecks: readonly FolderCheck[] = [
  { name: 'easier in a circle', codes: ['easier-in-a-circle'], check: checkCircles },
];
