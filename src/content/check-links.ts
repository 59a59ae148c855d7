/** Every link leads somewhere: to a file that is there and may be linked to, or to an address. */
import { idIn, resolveTarget } from './link-target.js';
import { nearestOf } from './nearest.js';
import { linksOf } from './open-file.js';
import type { FolderCheck, ReadThings } from './read-things.js';
import type { Finding } from './read-value.js';

function checkLinks(things: ReadThings): void {
  for (const file of things.files) {
    for (const { target, place } of linksOf(file)) {
      const led = resolveTarget(file.path, target);
      if (led.kind === 'outside') file.report.add({ code: 'link-elsewhere', data: { target, to: 'page' } }, place);
      else if (led.kind === 'file' && !things.paths.has(led.path)) {
        file.report.add(missing(things, led.path, target), place);
      }
    }
  }
}

/** A path that is no file: as near to what was meant as can be told. */
function missing(things: ReadThings, path: string, target: string): Finding {
  const exercise = idIn('exercises', path);
  if (exercise !== undefined) return unknownExercise(things, exercise);
  const programme = idIn('programmes', path);
  if (programme !== undefined) {
    const nearest = nearestOf(
      programme,
      things.programmes.map(({ id }) => id),
    );
    return { code: 'unknown-programme', data: { id: programme, nearest } };
  }
  return { code: 'broken-link', data: { target, nearest: nearestOf(path, things.paths) } };
}

const unknownExercise = (things: ReadThings, id: string): Finding => ({
  code: 'unknown-exercise',
  data: { id, nearest: likelyExercise(things, id) },
});

/** The exercise that an id nobody goes by is likely to mean: one that went by it before, else the nearest; else empty. */
export function likelyExercise({ exercises }: ReadThings, id: string): string {
  const renamed = exercises.find(({ exercise }) => exercise?.formerIds.some((former) => former === id));
  const ids = exercises.map((exercise) => exercise.id);
  return renamed?.id ?? nearestOf(id, ids);
}

/** Exercises, programmes and the studio may be public; a client's page never is. */
function checkPublicLinks(things: ReadThings): void {
  for (const file of things.files) {
    if (file.path.startsWith('clients/')) continue;
    for (const { target, place } of linksOf(file)) {
      const led = resolveTarget(file.path, target);
      if (led.kind === 'file' && led.path.startsWith('clients/')) {
        file.report.add({ code: 'link-to-client', data: { target } }, place);
      }
    }
  }
}

export const linkChecks: readonly FolderCheck[] = [
  {
    name: 'links lead somewhere',
    codes: ['unknown-exercise', 'unknown-programme', 'broken-link', 'link-elsewhere'],
    check: checkLinks,
  },
  { name: 'no link to a client', codes: ['link-to-client'], check: checkPublicLinks },
];
