/** Runs the compiled program as a coach does, and small folders for it to work on. */
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
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import type { Asked } from './kept-program.js';

export const TOP = resolve(import.meta.dirname, '..', '..');
const MAIN = join(TOP, 'dist', 'src', 'app', 'main.js');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

let kept: Worker | undefined;

/** How long a command may take, in seconds: builds on a busy machine are slow. */
const PATIENCE = 240;

/** Waits for the command to end, as for a process. */
export function chalkleaf(args: readonly string[]): Ran {
  if (kept === undefined) {
    kept = new Worker(join(TOP, 'dist', 'tests', 'app', 'kept-program.js'));
    // What is kept for more commands holds up nobody's end.
    kept.unref();
  }
  const done = new Int32Array(new SharedArrayBuffer(4));
  const { port1, port2 } = new MessageChannel();
  const asked: Asked = { args, done, answer: port2 };
  kept.postMessage(asked, [port2]);
  const waited = Atomics.wait(done, 0, 0, PATIENCE * 1000);
  const answer: { readonly message: Ran } | undefined = receiveMessageOnPort(port1);
  port1.close();
  if (answer === undefined) throw new Error(`${waited} after ${PATIENCE} seconds: chalkleaf ${args.join(' ')}`);
  return answer.message;
}

/** In a process of its own: for what a process alone has, and to see that it ends as it should. */
export function chalkleafAlone(
  args: readonly string[],
  options: { cwd?: string; env?: NodeJS.ProcessEnv; uid?: number } = {},
): Ran {
  const done = spawnSync(process.execPath, [MAIN, ...args], {
    encoding: 'utf8',
    timeout: PATIENCE * 1000,
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
