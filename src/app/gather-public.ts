/** Reads every file of a built public folder, as bytes that are then checked and written: nothing is read twice. */
import { createHash } from 'node:crypto';
import { lstat, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { isPlainPath, type Listed } from '../publish/manifest.js';

export interface PublicFile extends Listed {
  readonly bytes: Uint8Array;
}

export const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/**
 * In order of path. Rejects with the system's fault where a folder or file cannot be read. Reports `public-unreadable` for
 * links, special files, and names that no list can carry.
 */
export async function gatherPublic(root: string): Promise<Result<readonly PublicFile[]>> {
  const files: PublicFile[] = [];
  const problems: Problem[] = [];
  const refuse = (path: string, why: 'link' | 'special' | 'name'): void => {
    problems.push({ code: 'public-unreadable', severity: 'error', scope: FOLDER, data: { path, why } });
  };
  const walk = async (below: string): Promise<void> => {
    // What a system keeps out of sight in every folder that is looked at is no part of a build, and is not let out.
    const names = (await readdir(join(root, below))).filter((name) => !name.startsWith('.')).sort(compareIds);
    for (const name of names) {
      const path = below === '' ? name : `${below}/${name}`;
      const stat = await lstat(join(root, path));
      if (!isPlainPath(path)) refuse(path, 'name');
      else if (stat.isSymbolicLink()) refuse(path, 'link');
      else if (stat.isDirectory()) await walk(path);
      else if (!stat.isFile()) refuse(path, 'special');
      else {
        const bytes = new Uint8Array(await readFile(join(root, path)));
        files.push({ path, bytes, sha256: sha256(bytes) });
      }
    }
  };
  await walk('');
  return { value: files, problems };
}
