/**
 * Reads an author's folder from disk, within bounds: no file too large, no endless folders, no links followed.
 * What the files mean is for `content`.
 */
import { lstat, open, readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { clientId, compareIds } from '../model/identity.js';
import { FOLDER, ofClient, type Problem, type Scope } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { sayDiskFault } from './disk-fault.js';

/** Bounds far beyond any real studio: a page of Markdown is a few thousand bytes. */
export const BOUNDS = { bytesInAFile: 2 * 1024 * 1024, files: 50_000, depth: 8 } as const;

export interface GatheredFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

interface Found {
  readonly files: GatheredFile[];
  readonly problems: Problem[];
  full: boolean;
}

/**
 * Every Markdown file below `folder`, in order of path. Editions and logs are left to those who read them.
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
    if (isHidden(name) || isKeptElsewhere(path)) continue;
    if (isLink) {
      found.problems.push(wholeFile(path, { code: 'link-not-followed', data: { path } }));
    } else if (isFolder) {
      await gatherBelow(root, path, depth + 1, found);
    } else if (name.endsWith('.md')) {
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
    const bytes = await readBounded(join(root, path));
    if (typeof bytes === 'number') {
      const megabytes = Math.ceil(bytes / 1024 / 1024);
      const data = { path, megabytes, mostMegabytes: BOUNDS.bytesInAFile / 1024 / 1024 };
      found.problems.push(wholeFile(path, { code: 'file-too-large', data }));
    } else {
      found.files.push({ path, bytes });
    }
  } catch (fault) {
    found.problems.push(wholeFile(path, { code: 'file-unreadable', data: { path, why: sayDiskFault(fault) } }));
  }
}

/** The file's bytes, or its size where that is beyond the bound. Special files (pipes, devices) are not opened. */
async function readBounded(path: string): Promise<Uint8Array | number> {
  const entry = await lstat(path);
  if (!entry.isFile()) throw new Error('it is not an ordinary file');
  if (entry.size > BOUNDS.bytesInAFile) return entry.size;
  const handle = await open(path, 'r');
  try {
    // One byte more than allowed: a file that grows while it is read is caught as well.
    const buffer = new Uint8Array(Math.min(entry.size + 1024, BOUNDS.bytesInAFile + 1));
    let filled = 0;
    while (filled < buffer.length) {
      const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled);
      if (bytesRead === 0) break;
      filled += bytesRead;
    }
    return filled > BOUNDS.bytesInAFile ? filled : buffer.subarray(0, filled);
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
