/** One page of a coach's, written anew as a whole: beside its place and then renamed there, with the rights it had. */
import { access, chmod, constants, lstat, open, readFile, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { bytesOf, type EditedPage } from '../content/edit/apply-edits.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';

/**
 * `undefined` once it is written, or where there was nothing to write. Reports `page-changed`, where the page is no
 * longer what was read, and `page-not-writable`; then the page is as it was.
 */
export async function writePage(content: string, { path, before, after }: EditedPage): Promise<Problem | undefined> {
  if (before === after) return undefined;
  const page = join(content, ...path.split('/'));
  const fresh = join(dirname(page), `.${basename(page)}.new-${process.pid}`);
  const asRead = async (): Promise<boolean> => (await readFile(page)).equals(bytesOf(before));
  const changed = { code: 'page-changed', severity: 'error', scope: FOLDER, data: { path } } as const;
  try {
    const is = await lstat(page);
    if (!is.isFile() || !(await asRead())) return changed;
    // Renaming asks only for the folder's rights: a page its owner made read-only stays so.
    await access(page, constants.W_OK);
    const file = await open(fresh, 'wx', 0o600);
    try {
      await file.writeFile(bytesOf(after));
      await file.sync();
    } finally {
      await file.close();
    }
    await chmod(fresh, is.mode & 0o7777);
    if (await asRead()) {
      await rename(fresh, page);
      return undefined;
    }
    await rm(fresh, { force: true });
    return changed;
  } catch (fault) {
    if (diskFaultCode(fault) !== 'EEXIST') await rm(fresh, { force: true }).catch(() => undefined);
    if (diskFaultCode(fault) === 'ENOENT') return changed;
    const why = sayDiskFault(fault);
    return { code: 'page-not-writable', severity: 'error', scope: FOLDER, data: { path, why } };
  }
}
