/** Folders made one after the other, each below one that stands. */
import { mkdir, rmdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { diskFaultCode } from './disk-fault.js';

/**
 * Makes `path`, absolute, with the folders above it that are missing; the highest one made, if any. All or none of
 * them. A recursive `mkdir` would try for ever where the system denies that a folder which stands is there, as it does
 * among its own processes. `mode`: the rights of those made, else what the system gives.
 */
export async function makeFolders(path: string, mode?: number): Promise<string | undefined> {
  const missing: string[] = [];
  for (let at = path; !(await stands(at)); at = dirname(at)) missing.unshift(at);
  const made: string[] = [];
  try {
    for (const folder of missing) if (await make(folder, mode)) made.unshift(folder);
  } catch (fault) {
    for (const folder of made) await rmdir(folder).catch(() => undefined);
    throw fault;
  }
  return made.at(-1);
}

/** `false` where another program has made it meanwhile. */
async function make(folder: string, mode: number | undefined): Promise<boolean> {
  try {
    await mkdir(folder, { mode });
    return true;
  } catch (fault) {
    if (diskFaultCode(fault) === 'EEXIST' && (await stands(folder))) return false;
    throw fault;
  }
}

/** A folder does; where a file stands in its place, the fault is said. */
async function stands(path: string): Promise<boolean> {
  try {
    if ((await stat(path)).isDirectory()) return true;
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return false;
    throw fault;
  }
  await mkdir(path);
  return true;
}
