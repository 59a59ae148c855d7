/**
 * Puts the folder to upload in place, whole and at once: it is written beside its place under a name made from its
 * bytes, and a link is then turned to it by one rename. Where links cannot be had it is moved in, the old one aside.
 */
import { mkdir, open, readdir, readFile, readlink, rename, rm, symlink } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { diskFaultCode, sayUnmade } from './disk-fault.js';
import type { PublicFile } from './gather-public.js';
import { sha256 } from './gather-public.js';
import { makeFolders } from './make-folders.js';

const KEPT = '.uploads';
/** Stands in a folder that was moved in where links cannot be had. */
const MADE_HERE = '.made-by-chalkleaf';

export interface Uploading {
  readonly changed: boolean;
  /** What stood there before and does no more: of a sealed folder its name and `/`, of other files their paths. */
  readonly gone: readonly string[];
}

type Placed = Uploading | Problem;

/** `to` is a path. Reports `output-occupied`, `output-not-writable`; then what stood there stands. */
export async function placeUpload(to: string, files: readonly Omit<PublicFile, 'sha256'>[]): Promise<Placed> {
  const place = resolve(to);
  const kept = join(dirname(place), KEPT);
  const name = nameOf(files);
  const stage = join(kept, `new-${process.pid}`);
  try {
    if (await isTheCoachs(place)) {
      return { code: 'output-occupied', severity: 'error', scope: FOLDER, data: { path: to } };
    }
    const before = await pathsBelow(place);
    if ((await targetOf(place)) === join(KEPT, name) && (await isAsWritten(place, before, files))) {
      return { changed: false, gone: [] };
    }
    const gone = goneFrom(before, new Set(files.map(({ path }) => path)));
    await makeFolders(kept);
    await rm(stage, { recursive: true, force: true });
    await mkdir(stage);
    for (const { path, bytes } of files) await writeNew(join(stage, path), bytes);
    await rm(join(kept, name), { recursive: true, force: true });
    await rename(stage, join(kept, name));
    await turn(place, name, kept);
    for (const old of await readdir(kept)) {
      if (/^[0-9a-f]{32}$/.test(old) && old !== name && !(await isPointedAt(dirname(place), old))) {
        await rm(join(kept, old), { recursive: true, force: true });
      }
    }
    return { changed: true, gone };
  } catch (fault) {
    await rm(stage, { recursive: true, force: true }).catch(() => undefined);
    return {
      code: 'output-not-writable',
      severity: 'error',
      scope: FOLDER,
      data: { folder: to, why: sayUnmade(fault) },
    };
  }
}

const nameOf = (files: readonly Omit<PublicFile, 'sha256'>[]): string =>
  sha256(new TextEncoder().encode(files.map(({ path, bytes }) => `${path}\0${sha256(bytes)}\n`).join(''))).slice(0, 32);

async function pathsBelow(folder: string, below = ''): Promise<readonly string[]> {
  const entries = await readdir(join(folder, below), { withFileTypes: true }).catch(() => []);
  const paths = await Promise.all(
    entries.map((entry) => {
      const path = below === '' ? entry.name : `${below}/${entry.name}`;
      return entry.isDirectory() ? pathsBelow(folder, path) : [path];
    }),
  );
  return paths.flat();
}

/** What was laid there by hand since would be uploaded with the rest. */
async function isAsWritten(
  place: string,
  there: readonly string[],
  files: readonly Omit<PublicFile, 'sha256'>[],
): Promise<boolean> {
  if (there.length !== files.length) return false;
  for (const { path, bytes } of files) {
    const held = await readFile(join(place, path)).catch(() => undefined);
    if (held === undefined || !held.equals(bytes)) return false;
  }
  return true;
}

/** A folder that goes as a whole is told as one. */
function goneFrom(before: readonly string[], now: ReadonlySet<string>): readonly string[] {
  const folders = new Set([...now].map((path) => path.split('/')[0]));
  const gone = before
    .filter((path) => !now.has(path) && path !== MADE_HERE)
    .map((path) =>
      path.replace(/^([0-9a-f]{32}\/).*$/, (whole, folder) => (folders.has(folder.slice(0, -1)) ? whole : folder)),
    );
  return [...new Set(gone)].sort(compareIds);
}

async function writeNew(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const file = await open(path, 'wx', 0o644);
  try {
    await file.writeFile(bytes);
  } finally {
    await file.close();
  }
}

async function turn(place: string, name: string, kept: string): Promise<void> {
  const fresh = join(kept, `link-${process.pid}`);
  try {
    await rm(fresh, { force: true });
    await symlink(join(KEPT, name), fresh, 'dir');
    await rename(fresh, place);
  } catch (fault) {
    if (!['EPERM', 'ENOTSUP', 'EISDIR'].includes(diskFaultCode(fault) ?? '')) throw fault;
    const aside = join(kept, `new-${process.pid}-aside`);
    await rename(place, aside).catch(() => undefined);
    await rename(join(kept, name), place);
    await writeNew(join(place, MADE_HERE), new Uint8Array());
    await rm(aside, { recursive: true, force: true });
  }
}

async function targetOf(path: string): Promise<string | undefined> {
  return readlink(path).catch(() => undefined);
}

/** Anything that stands there and was not put there by this program. */
async function isTheCoachs(place: string): Promise<boolean> {
  const target = await targetOf(place);
  if (target !== undefined) return !target.startsWith(`${KEPT}/`) && !target.startsWith(`${KEPT}\\`);
  try {
    const names = await readdir(place);
    return names.length > 0 && !names.includes(MADE_HERE);
  } catch (fault) {
    return diskFaultCode(fault) !== 'ENOENT';
  }
}

/** Another upload beside this one may still be served from there. */
async function isPointedAt(folder: string, name: string): Promise<boolean> {
  const names = await readdir(folder);
  const targets = await Promise.all(names.map((one) => targetOf(join(folder, one))));
  return targets.some((target) => target !== undefined && basename(target) === name);
}
