/** A file of the program's own, written as a whole. */
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/**
 * Written beside its place, on disk, before it takes it: what stands there is the old file or the new one, never half
 * of one. Rejects with the system's fault; then the old one stands. `mode`: its rights, else what the system gives.
 */
export async function writeWhole(path: string, text: string | Uint8Array, mode?: number): Promise<void> {
  const fresh = join(dirname(path), `.new-${process.pid}-${basename(path)}`);
  try {
    const file = await open(fresh, 'w', mode);
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(fresh, path);
  } catch (fault) {
    await rm(fresh, { force: true }).catch(() => undefined);
    throw fault;
  }
}
