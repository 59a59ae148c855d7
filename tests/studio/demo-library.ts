/** The demo studio read as a command would read it. Planning is left to `demo-plans.ts`. */
import { gatherFiles } from '../../src/app/gather-files.js';
import { readFolder } from '../../src/content/read-folder.js';
import type { Problem } from '../../src/model/problem.js';
import type { Content } from '../../src/model/studio.js';
import { DEMO } from './demo-words.js';

export interface ReadDemo extends Content {
  readonly problems: readonly Problem[];
}

let read: Promise<ReadDemo> | undefined;
/** Read once for all files of a worker: nobody changes what was read. */
export function readDemo(): Promise<ReadDemo> {
  read ??= readAnew();
  return read;
}

async function readAnew(): Promise<ReadDemo> {
  const gathered = await gatherFiles(DEMO);
  const { value, problems } = readFolder(gathered.value);
  return { ...value, problems: [...gathered.problems, ...problems] };
}
