/**
 * Puts a whole build in place at once. Everything is written to a staging folder first; `public` and `private`
 * are fixed links into `.builds/current`, itself a link that is renamed once. Until that one rename
 * the last output stands byte for byte; a build that fails leaves nothing behind.
 *
 * Where the system has no links (or the user may not make them) the two folders are moved aside and the new
 * ones moved in: two renames each, so a reader may for an instant find nothing, but never half a build.
 */
import { createHash } from 'node:crypto';
import { copyFile, link, lstat, mkdir, open, readdir, readlink, rename, rm, symlink, unlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { diskFaultCode, sayDiskFault, sayUnmade } from './disk-fault.js';
import { liesIn, realOf } from './lies-in.js';
import { makeFolders } from './make-folders.js';

const HALVES = ['public', 'private'] as const;
const BUILDS = '.builds';
const CURRENT = 'current';

/** A build under way. */
export interface Stage {
  readonly out: string;
  /** Where other writers (the page builder) may put files. */
  readonly folder: string;
}

/** What is written must not lie among what is read, nor what is read among it. Reports `output-in-content`. */
export async function outInContent(out: string, content: string): Promise<Problem | undefined> {
  if (!(await liesIn(out, content)) && !(await liesIn(content, out))) return undefined;
  return { code: 'output-in-content', severity: 'error', scope: FOLDER, data: { folder: out } };
}

/** Opens a staging folder below `out`. Reports `output-in-content`, `output-occupied`, `output-not-writable`. */
export async function openStage(out: string, content: string): Promise<Stage | Problem> {
  const inside = await outInContent(out, content);
  if (inside !== undefined) return inside;
  const outFull = await realOf(out);
  try {
    const builds = join(outFull, BUILDS);
    await makeFolders(builds);
    for (const half of HALVES) {
      if (await isTheCoachs(join(outFull, half))) {
        return { code: 'output-occupied', severity: 'error', scope: FOLDER, data: { path: join(out, half) } };
      }
    }
    await clearAbandoned(builds);
    const folder = join(builds, `new-${process.pid}`);
    await rm(folder, { recursive: true, force: true });
    await mkdir(folder, { mode: 0o755 });
    for (const half of HALVES) await mkdir(join(folder, half), { mode: half === 'private' ? 0o700 : 0o755 });
    return { out: outFull, folder };
  } catch (fault) {
    return {
      code: 'output-not-writable',
      severity: 'error',
      scope: FOLDER,
      data: { folder: out, why: sayUnmade(fault) },
    };
  }
}

/** Writes one file of the build. Rejects with the system's fault: the caller abandons the stage. */
export async function writeStaged(stage: Stage, path: string, bytes: Uint8Array | string): Promise<void> {
  const full = join(stage.folder, path);
  await mkdir(dirname(full), { recursive: true });
  const handle = await open(full, 'wx');
  try {
    await handle.writeFile(bytes);
  } finally {
    await handle.close();
  }
}

/** Takes a folder of the last build into this one as it is; `false` where the last build had none. */
export async function carryOver(stage: Stage, path: string): Promise<boolean> {
  const from = join(stage.out, BUILDS, CURRENT, path);
  let files: readonly string[];
  try {
    files = await filesBelow(from, '');
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return false;
    throw fault;
  }
  for (const file of files) await linkFile(join(from, file), join(stage.folder, path, file));
  return true;
}

/** Takes one file of the last build into this one as it is; `false` where the last build had none. */
export async function carryFile(stage: Stage, path: string): Promise<boolean> {
  try {
    await linkFile(join(stage.out, BUILDS, CURRENT, path), join(stage.folder, path));
    return true;
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return false;
    throw fault;
  }
}

/** A second name for the same bytes costs nothing; builds are never written to again. */
async function linkFile(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  await link(from, to).catch(() => copyFile(from, to));
}

export async function abandonStage(stage: Stage): Promise<void> {
  await rm(stage.folder, { recursive: true, force: true }).catch(() => undefined);
}

/** Makes the stage the output. Reports `output-not-writable`; then the last output still stands. */
export async function publishStage(stage: Stage): Promise<{ readonly changed: boolean } | Problem> {
  try {
    const name = await nameOfBuild(stage.folder);
    const builds = join(stage.out, BUILDS);
    const link = join(builds, CURRENT);
    const target = join(builds, name);
    const stands = (await linkTarget(link)) === name && (await isAsBuilt(target, stage.folder, link));
    if (stands) await abandonStage(stage);
    else {
      // Where something was done to it by hand, the same build takes its own place: a reader may for an instant find nothing.
      await rm(target, { recursive: true, force: true });
      await rename(stage.folder, target);
    }
    try {
      if (!stands) await turnLink(link, name);
      for (const half of HALVES) await ensureLink(join(stage.out, half), join(BUILDS, CURRENT, half));
    } catch (fault) {
      if (diskFaultCode(fault) !== 'EPERM' && diskFaultCode(fault) !== 'ENOTSUP') throw fault;
      for (const half of HALVES) await moveIn(join(target, half), join(stage.out, half), builds);
    }
    if (stands) return { changed: false };
    await removeOldBuilds(builds, name);
    return { changed: true };
  } catch (fault) {
    await abandonStage(stage);
    return notWritable(stage.out, fault);
  }
}

export function notWritable(folder: string, fault: unknown): Problem {
  return { code: 'output-not-writable', severity: 'error', scope: FOLDER, data: { folder, why: sayDiskFault(fault) } };
}

/** Whether nobody added, took away or wrote to a file since the link was turned to it. To read them all takes as long as to write them. */
async function isAsBuilt(folder: string, fresh: string, link: string): Promise<boolean> {
  const [there, wanted] = [await filesBelow(folder, ''), await filesBelow(fresh, '')];
  if (there.join('\n') !== wanted.join('\n')) return false;
  const { mtimeMs: turned } = await lstat(link);
  for (const path of there) {
    const [is, was] = [await lstat(join(folder, path)), await lstat(join(fresh, path))];
    if (is.size !== was.size || is.mtimeMs > turned) return false;
  }
  return true;
}

/** A build is named for its bytes, so the same content, state and day give the same folder. */
async function nameOfBuild(folder: string): Promise<string> {
  const whole = createHash('sha256');
  for (const path of await filesBelow(folder, '')) {
    const one = createHash('sha256');
    const handle = await open(join(folder, path), 'r');
    try {
      for await (const chunk of handle.createReadStream({ autoClose: false })) one.update(chunk);
    } finally {
      await handle.close();
    }
    whole.update(`${path}\0${one.digest('hex')}\n`);
  }
  return whole.digest('hex').slice(0, 32);
}

async function filesBelow(root: string, below: string): Promise<readonly string[]> {
  const entries = await readdir(join(root, below), { withFileTypes: true });
  entries.sort((a, b) => compareIds(a.name, b.name));
  const paths: string[] = [];
  for (const entry of entries) {
    const path = below === '' ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory()) paths.push(...(await filesBelow(root, path)));
    else paths.push(path);
  }
  return paths;
}

async function turnLink(link: string, target: string): Promise<void> {
  const fresh = `${link}-new-${process.pid}`;
  await rm(fresh, { force: true });
  await symlink(target, fresh, 'dir');
  await rename(fresh, link);
}

async function ensureLink(link: string, target: string): Promise<void> {
  if ((await linkTarget(link)) === target) return;
  await turnLink(link, target);
}

async function linkTarget(link: string): Promise<string | undefined> {
  try {
    return await readlink(link);
  } catch {
    return undefined;
  }
}

/** Marks a folder that this program made where links could not be had. */
const MADE_HERE = '.made-by-chalkleaf';

async function moveIn(from: string, to: string, builds: string): Promise<void> {
  const aside = join(builds, `new-${process.pid}-aside`);
  await rm(aside, { recursive: true, force: true });
  const marker = await open(join(from, MADE_HERE), 'w');
  await marker.close();
  await rename(to, aside).catch(() => undefined);
  await rename(from, to);
  await rm(aside, { recursive: true, force: true });
}

/** True for anything that stands at the path and was not put there by a build. */
async function isTheCoachs(path: string): Promise<boolean> {
  try {
    const stat = await lstat(path);
    if (stat.isSymbolicLink()) return !(await readlink(path)).startsWith(BUILDS);
    const names = stat.isDirectory() ? await readdir(path) : [''];
    return names.length > 0 && !names.includes(MADE_HERE);
  } catch {
    return false;
  }
}

const A_DAY = 86_400_000;

/** Staging folders of builds that were killed: their process is gone, or they are too old to be anybody's. */
async function clearAbandoned(builds: string): Promise<void> {
  for (const name of await readdir(builds)) {
    const pid = /^new-(\d+)/.exec(name)?.[1];
    if (pid === undefined) continue;
    const left = isRunning(Number(pid)) && Date.now() - (await lstat(join(builds, name))).mtimeMs < A_DAY;
    if (!left) await rm(join(builds, name), { recursive: true, force: true });
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (fault) {
    return diskFaultCode(fault) === 'EPERM';
  }
}

async function removeOldBuilds(builds: string, keep: string): Promise<void> {
  for (const name of await readdir(builds)) {
    if (/^[0-9a-f]{32}$/.test(name) && name !== keep) await rm(join(builds, name), { recursive: true, force: true });
    else if (name.startsWith(`${CURRENT}-new-`)) await unlink(join(builds, name)).catch(() => undefined);
  }
}
