/**
 * Since when each exercise of the library says what it says, for its feed and its map. Kept in the state, so that the same
 * content, state and day give the same bytes; nothing of a client is in it.
 */
import { createHash } from 'node:crypto';
import { chmod, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Exercise } from '../model/exercise.js';
import { type ExerciseId, exerciseId } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { sayUnmade } from './disk-fault.js';
import { makeFolders } from './make-folders.js';
import { writeWhole } from './write-whole.js';

const FILE = 'library.json';

interface Kept {
  readonly digest: string;
  /** ISO date. */
  readonly since: string;
}

export interface Changed {
  /** ISO dates, by exercise. */
  readonly since: ReadonlyMap<ExerciseId, string>;
  /** What is to be kept once the build stands. */
  readonly text: string;
}

/** Of all that is read of an exercise, but for where on its page it stood. */
const digestOf = ({ name, facts, words, poses, drawingSaid, ownPicture }: Exercise): string =>
  createHash('sha256')
    .update(
      JSON.stringify({ name, facts, words, poses, drawingSaid, ownPicture }, (key, value) =>
        key === 'place' || key === 'cells' ? undefined : value,
      ),
    )
    .digest('hex');

const isKept = (value: unknown): value is Kept =>
  typeof value === 'object' &&
  value !== null &&
  'digest' in value &&
  typeof value.digest === 'string' &&
  'since' in value &&
  typeof value.since === 'string' &&
  /^\d{4}-\d\d-\d\d$/.test(value.since);

/** What cannot be read is as good as never kept: the exercise then counts as new today, and nothing is lost but a date. */
async function readKept(state: string): Promise<ReadonlyMap<string, Kept>> {
  try {
    const read: unknown = JSON.parse(await readFile(join(state, FILE), 'utf8'));
    if (typeof read !== 'object' || read === null) return new Map();
    return new Map(Object.entries(read).flatMap(([id, kept]) => (isKept(kept) ? [[id, kept] as const] : [])));
  } catch {
    return new Map();
  }
}

/** `today` is an ISO date. */
export async function changedSince(state: string, exercises: readonly Exercise[], today: string): Promise<Changed> {
  const before = await readKept(state);
  const now = exercises.map((of): readonly [string, Kept] => {
    const digest = digestOf(of);
    const known = before.get(of.id);
    return [of.id, known?.digest === digest ? known : { digest, since: today }];
  });
  return {
    since: new Map(now.map(([id, { since }]) => [exerciseId(id), since])),
    text: `${JSON.stringify(Object.fromEntries(now), null, 1)}\n`,
  };
}

/** Reports `state-not-writable`. */
export async function keepChanged(state: string, { text }: Changed): Promise<Problem | undefined> {
  try {
    await makeFolders(resolve(state), 0o700);
    await chmod(state, 0o700);
    await writeWhole(join(state, FILE), text, 0o600);
    return undefined;
  } catch (fault) {
    const data = { folder: state, why: sayUnmade(fault) };
    return { code: 'state-not-writable', severity: 'error', scope: FOLDER, data };
  }
}
