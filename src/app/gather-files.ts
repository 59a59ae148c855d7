/**
 * Reads an author's folder from disk, within bounds: no file too large, no endless folders, no links followed.
 * What the files mean is for `content`.
 */
import { lstat, open, readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { clientId, compareIds } from '../model/identity.js';
import { isPicturePath } from '../model/picture-kind.js';
import { FOLDER, ofClient, type Problem, type Scope } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { sayDiskFault } from './disk-fault.js';

/** Bounds far beyond any real studio: a page of Markdown is a few thousand bytes. */
export const BOUNDS = { bytesInAFile: 2 * 1024 * 1024, files: 50_000, depth: 8 } as const;

/** A photograph as a camera of today writes it is a quarter of this. */
export const PICTURE_BOUND_BYTES = 20 * 1024 * 1024;
/** What is read of a picture while the folder is gathered: its kind can be told by it. */
const PICTURE_BEGINNING_BYTES = 4096;

export interface GatheredFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  /** Of a picture its beginning alone. */
  readonly bytes: Uint8Array;
}

interface Found {
  readonly files: GatheredFile[];
  readonly problems: Problem[];
  full: boolean;
}

/**
 * Every Markdown file below `folder` and every picture beside the exercises, in order of path. Editions and logs are left to those who read them.
 * Reports `content-missing`, `file-unreadable`, `file-too-large`, `too-many-files`, `folder-too-deep`, `link-not-followed`.
 */
export async function gatherFiles(folder: string): Promise<Result<readonly GatheredFile[]>> {
  const found: Found = { files: [], problems: [], full: false };
  try {
    if (!(await stat(folder)).isDirectory()) throw new Error('not a folder');
  } catch {
    const problem: Problem = { code: 'content-missing', severity: 'error', scope: FOLDER, data: { folder } };
    return { value: [], problems: [problem] };
  }
  await gatherBelow(folder, '', 0, found);
  return { value: found.files, problems: found.problems };
}

async function gatherBelow(root: string, below: string, depth: number, found: Found): Promise<void> {
  if (depth > BOUNDS.depth) {
    found.problems.push(wholeFile(below, { code: 'folder-too-deep', data: { path: below, most: BOUNDS.depth } }));
    return;
  }
  let names: { name: string; isFolder: boolean; isLink: boolean }[];
  try {
    const entries = await readdir(join(root, below), { withFileTypes: true });
    names = entries.map((entry) => ({
      name: entry.name,
      isFolder: entry.isDirectory(),
      isLink: entry.isSymbolicLink(),
    }));
  } catch (fault) {
    found.problems.push(wholeFile(below, { code: 'file-unreadable', data: { path: below, why: sayDiskFault(fault) } }));
    return;
  }
  names.sort((a, b) => compareIds(a.name, b.name));
  for (const { name, isFolder, isLink } of names) {
    if (found.full) return;
    const path = below === '' ? name : `${below}/${name}`;
    if (isHidden(name)) continue;
    if (isLink) {
      found.problems.push(wholeFile(path, { code: 'link-not-followed', data: { path } }));
    } else if (isKeptElsewhere(path)) {
    } else if (isFolder) {
      await gatherBelow(root, path, depth + 1, found);
    } else if (name.endsWith('.md') || isPicturePath(path)) {
      await gatherOne(root, path, found);
    }
  }
}

async function gatherOne(root: string, path: string, found: Found): Promise<void> {
  if (found.files.length >= BOUNDS.files) {
    found.full = true;
    found.problems.push(wholeFile('', { code: 'too-many-files', data: { most: BOUNDS.files } }));
    return;
  }
  try {
    const picture = isPicturePath(path);
    const most = picture ? PICTURE_BOUND_BYTES : BOUNDS.bytesInAFile;
    const bytes = await readBounded(join(root, path), most, picture ? PICTURE_BEGINNING_BYTES : most);
    if (typeof bytes === 'number') {
      const megabytes = Math.ceil(bytes / 1024 / 1024);
      const data = { path, megabytes, mostMegabytes: most / 1024 / 1024 };
      found.problems.push(wholeFile(path, { code: 'file-too-large', data }));
      // It is there all the same: nobody is told that it is missing.
      if (picture) found.files.push({ path, bytes: await beginningOf(join(root, path)) });
    } else {
      found.files.push({ path, bytes });
    }
  } catch (fault) {
    found.problems.push(wholeFile(path, { code: 'file-unreadable', data: { path, why: sayDiskFault(fault) } }));
  }
}

/**
 * The file's bytes up to `wanted` of them, or its size where that is beyond `most`. Special files (pipes, devices) are
 * not opened, and nor are links.
 */
export async function readBounded(path: string, most: number, wanted = most): Promise<Uint8Array | number> {
  const entry = await lstat(path);
  if (!entry.isFile()) throw new Error('it is not an ordinary file');
  if (entry.size > most) return entry.size;
  // One byte more than allowed: a file that grows while it is read is caught as well.
  const bytes = await readFrom(path, Math.min(entry.size + 1024, wanted < most ? wanted : most + 1));
  return bytes.length > most ? bytes.length : bytes;
}

const beginningOf = (path: string): Promise<Uint8Array> => readFrom(path, PICTURE_BEGINNING_BYTES);

async function readFrom(path: string, most: number): Promise<Uint8Array> {
  const handle = await open(path, 'r');
  try {
    const buffer = new Uint8Array(most);
    let filled = 0;
    while (filled < buffer.length) {
      const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled);
      if (bytesRead === 0) break;
      filled += bytesRead;
    }
    return buffer.subarray(0, filled);
  } finally {
    await handle.close();
  }
}

const isHidden = (name: string): boolean => name.startsWith('.') || name === 'node_modules';

/** Marks that came back and issued booklets are read by those who need them, one client at a time. */
const isKeptElsewhere = (path: string): boolean => /^clients\/[^/]+\/(log|editions)$/.test(path);

function scopeOf(path: string): Scope {
  const client = /^clients\/([^/]+)(\/|$)/.exec(path)?.[1];
  return client === undefined ? FOLDER : ofClient(clientId(client));
}

type DiskProblem = Extract<
  Problem,
  { code: 'file-unreadable' | 'file-too-large' | 'too-many-files' | 'folder-too-deep' | 'link-not-followed' }
>;
type Coded<P extends DiskProblem = DiskProblem> = P extends DiskProblem ? Pick<P, 'code' | 'data'> : never;

function wholeFile(path: string, coded: Coded): Problem {
  const place = path === '' ? {} : { place: { file: path, line: 1, column: 1, length: 1 } };
  return { ...coded, severity: 'error', scope: scopeOf(path), ...place } as Problem;
}
