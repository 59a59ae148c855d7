/** The coach's own pictures: read from the folder, looked through by `check`, prepared by `build`. */
import { join } from 'node:path';
import type { Exercise, OwnPicture } from '../model/exercise.js';
import type { ExerciseId } from '../model/identity.js';
import type { Photograph, Photographs } from '../model/picture.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import type { PictureFault } from '../pictures/prepare-picture.js';
import { PICTURE_BOUND_BYTES, readBounded } from './gather-files.js';

interface Asked {
  readonly id: ExerciseId;
  readonly picture: OwnPicture;
}

/** Of a picture that is not there, or is not what its name says, that was told when the folder was read. */
function askedIn(exercises: readonly Exercise[], told: readonly Problem[]): readonly Asked[] {
  const isTold = ({ file, place }: OwnPicture): boolean =>
    told.some(({ place: at }) => at?.file === file || (at?.file === place.file && at.line === place.line));
  return exercises.flatMap(({ id, ownPicture: picture }) =>
    picture === undefined || isTold(picture) ? [] : [{ id, picture }],
  );
}

/** What cannot be read any more is as unreadable as what is damaged. */
async function bytesOf(content: string, { file }: OwnPicture): Promise<Uint8Array | PictureFault> {
  try {
    const bytes = await readBounded(join(content, file), PICTURE_BOUND_BYTES);
    return typeof bytes === 'number' ? { fault: 'unreadable' } : bytes;
  } catch {
    return { fault: 'unreadable' };
  }
}

const nameOf = ({ file }: OwnPicture): string => file.slice(file.lastIndexOf('/') + 1);

function problemOf(picture: OwnPicture, fault: PictureFault, mostMegapixels: number): Problem {
  const at = { severity: 'error', scope: FOLDER, place: picture.place } as const;
  const file = nameOf(picture);
  return fault.fault === 'unreadable'
    ? { ...at, code: 'picture-unreadable', data: { file } }
    : { ...at, code: 'picture-too-large', data: { file, megapixels: fault.megapixels, mostMegapixels } };
}

/** `told`: what is known to be wrong already. Reports `picture-unreadable`, `picture-too-large`. */
export async function lookThroughPictures(
  content: string,
  exercises: readonly Exercise[],
  told: readonly Problem[],
): Promise<readonly Problem[]> {
  const asked = askedIn(exercises, told);
  // Loaded only where there is a picture: it is a large library.
  if (asked.length === 0) return [];
  const { lookThrough, MOST_MEGAPIXELS } = await import('../pictures/prepare-picture.js');
  const problems: Problem[] = [];
  for (const { picture } of asked) {
    const bytes = await bytesOf(content, picture);
    const fault = 'fault' in bytes ? bytes : await lookThrough(bytes, nameOf(picture));
    if (fault !== undefined) problems.push(problemOf(picture, fault, MOST_MEGAPIXELS));
  }
  return problems;
}

/** In every width, by exercise; otherwise as above. */
export async function preparePictures(
  content: string,
  exercises: readonly Exercise[],
  told: readonly Problem[],
): Promise<Result<Photographs>> {
  const asked = askedIn(exercises, told);
  if (asked.length === 0) return { value: new Map(), problems: [] };
  const { preparePicture, MOST_MEGAPIXELS } = await import('../pictures/prepare-picture.js');
  const photographs = new Map<ExerciseId, Photograph>();
  const problems: Problem[] = [];
  for (const { id, picture } of asked) {
    const bytes = await bytesOf(content, picture);
    const prepared = 'fault' in bytes ? bytes : await preparePicture(bytes, nameOf(picture), id);
    if ('fault' in prepared) problems.push(problemOf(picture, prepared, MOST_MEGAPIXELS));
    else photographs.set(id, { said: picture.said, ...prepared });
  }
  return { value: photographs, problems };
}
