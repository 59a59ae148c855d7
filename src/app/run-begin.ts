/** `chalkleaf begin`: a first studio in an empty or new folder (hidden files aside), all of it or nothing. Reads and writes on this machine alone. */
import { readdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { compareIds } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { counted } from '../words/problems/said.js';
import { diskFaultCode, sayUnmade } from './disk-fault.js';
import { makeFolders } from './make-folders.js';
import { printReport } from './report.js';
import { gatherStarter, type StarterFile } from './starter-files.js';
import { projectFolder } from './web-sources.js';

export async function runBegin(folder: string, json: boolean): Promise<number> {
  const files = await gatherStarter(projectFolder(), folder);
  const fault = await writeStarter(resolve(folder), folder, files);
  const done = fault === undefined;
  const report = {
    problems: done ? [] : [fault],
    sourceOf: () => undefined,
    summary: done ? summarise(files, folder) : ['Nothing was written.'],
    facts: { command: 'begin', begun: done ? { folder, files: files.map(({ path }) => path) } : null },
  };
  return printReport(report, json);
}

function summarise(files: readonly StarterFile[], folder: string): readonly string[] {
  const count = (below: string, one: string): string =>
    counted(files.filter(({ path }) => path.startsWith(`content/${below}/`)).length, one);
  return [
    `Begun: ${count('exercises', 'exercise')}, ${count('programmes', 'programme')} and ${count('clients', 'invented client')}, in ${folder}.`,
    `Next: npx chalkleaf build --content ${join(folder, 'content')}`,
    `then open ${join(folder, 'output', 'private', 'desk', 'index.html')}, and read ${join(folder, 'README.md')}.`,
  ];
}

/** What the system or another program keeps in a folder out of sight is no work of the coach's. */
const isSeen = (name: string): boolean => !name.startsWith('.');

/**
 * Everything is written beside its place first and moved there at the end; what a fault leaves half done is taken away
 * again. Reports `begin-not-empty` and `begin-not-writable`.
 */
async function writeStarter(
  target: string,
  folder: string,
  files: readonly StarterFile[],
): Promise<Problem | undefined> {
  const stage = join(target, `.begin-${process.pid}`);
  const tops = [...new Set(files.map(({ path }) => path.split('/')[0] ?? path))];
  let made: string | undefined;
  let begun = false;
  try {
    made = await makeFolders(target);
    const [found] = (await readdir(target)).filter(isSeen).sort(compareIds);
    if (found !== undefined) {
      return { code: 'begin-not-empty', severity: 'error', scope: FOLDER, data: { folder, found } };
    }
    begun = true;
    for (const { path, text } of files) {
      const full = join(stage, path);
      await makeFolders(dirname(full));
      await writeFile(full, text, { flag: 'wx' });
    }
    for (const top of tops) await rename(join(stage, top), join(target, top));
    await rm(stage, { recursive: true });
    return undefined;
  } catch (fault) {
    if (diskFaultCode(fault) === undefined) throw fault;
    if (begun) await takeAway([stage, ...tops.map((top) => join(target, top))]);
    if (made !== undefined) await takeAway([made]);
    const data = { folder, why: sayUnmade(fault) };
    return { code: 'begin-not-writable', severity: 'error', scope: FOLDER, data };
  }
}

async function takeAway(paths: readonly string[]): Promise<void> {
  for (const path of paths) await rm(path, { recursive: true, force: true }).catch(() => undefined);
}
