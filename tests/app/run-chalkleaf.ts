/** Runs the compiled program as a coach does, in a process of its own, and small folders for it to work on. */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

export const TOP = resolve(import.meta.dirname, '..', '..');
const MAIN = join(TOP, 'dist', 'src', 'app', 'main.js');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function chalkleaf(
  args: readonly string[],
  options: { cwd?: string; env?: NodeJS.ProcessEnv; uid?: number; seconds?: number } = {},
): Ran {
  const done = spawnSync(process.execPath, [MAIN, ...args], {
    encoding: 'utf8',
    timeout: (options.seconds ?? 60) * 1000,
    cwd: options.cwd ?? TOP,
    env: { ...process.env, ...options.env },
    ...(options.uid === undefined ? {} : { uid: options.uid }),
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

/** A folder to work in; remove it with `away`. */
export function workFolder(): { readonly path: string; away(): void } {
  const path = mkdtempSync(join(tmpdir(), 'chalkleaf-test-'));
  return { path, away: () => rmSync(path, { recursive: true, force: true }) };
}

/** The smallest studio there can be: five pages, by their paths below a content folder. */
export function smallStudio(): ReadonlyMap<string, string> {
  const pages = ['studio.md', 'exercises/goblet-squat.md', 'exercises/chair-squat.md'];
  const more = ['programmes/first-six-weeks.md', 'clients/ash-venn/client.md'];
  const folder = join(import.meta.dirname, 'small-studio');
  return new Map([...pages, ...more].map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
}

export function writeFiles(folder: string, files: Iterable<readonly [string, string | Uint8Array]>): void {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

export function copyDemo(folder: string): void {
  cpSync(join(TOP, 'content'), folder, { recursive: true });
}

/** Every file and link below a folder, each with its bytes, in one order: two folders are equal if these are. */
export function bytesBelow(folder: string, below = ''): readonly (readonly [string, string])[] {
  return readdirSync(join(folder, below), { withFileTypes: true })
    .flatMap((entry): (readonly [string, string])[] => {
      const path = join(below, entry.name);
      if (entry.isSymbolicLink()) return [[path, `-> ${readlinkSync(join(folder, path))}`]];
      if (entry.isDirectory()) return [...bytesBelow(folder, path)];
      return [[path, readFileSync(join(folder, path)).toString('base64')]];
    })
    .sort(([a], [b]) => (a < b ? -1 : 1));
}
