/** Where the sources of web pages lie on this machine, and where what is slow to make is kept. It renders nothing. */
import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { invariant } from '../model/result.js';
import type { WebSources } from '../web/prepare-shell.js';

/** The project's own folder, whether this runs from source or compiled: the one that holds the styles. */
export function projectFolder(): string {
  let folder = import.meta.dirname;
  while (!existsSync(join(folder, 'layouts', 'page.css'))) {
    const above = dirname(folder);
    invariant(above !== folder, 'the layouts stand in a folder above this file');
    folder = above;
  }
  return folder;
}

async function writeFileWithFolders(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
}

export function webSources(): WebSources {
  const project = projectFolder();
  const kept = join(project, 'dist', 'faces');
  const { resolve } = createRequire(import.meta.url);
  return {
    layouts: join(project, 'layouts'),
    phone: join(import.meta.dirname, '..', 'phone'),
    search: join(import.meta.dirname, '..', 'search'),
    readLayout: (path) => readFile(join(project, 'layouts', path)),
    readFace: (path) => readFile(resolve(`@expo-google-fonts/${path}`)),
    readKept: (name) => readFile(join(kept, name)).catch(() => undefined),
    keep: async (name, bytes) => {
      const partial = join(kept, `${name}.${process.pid}`);
      await writeFileWithFolders(partial, bytes)
        .then(() => rename(partial, join(kept, name)))
        .catch(() => undefined);
    },
    write: writeFileWithFolders,
  };
}
