/**
 * State: what must stand neither in content nor in output. The folder is for its owner alone (mode 0700).
 * Here: the opaque public folder name of each client who has an issued booklet.
 */
import { randomBytes } from 'node:crypto';
import { chmod, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readState } from '../content/read-state.js';
import { type ClientId, folderId } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { StudioState } from '../model/state.js';
import { diskFaultCode, sayUnmade } from './disk-fault.js';
import { makeFolders } from './make-folders.js';
import { writeWhole } from './write-whole.js';

const FILE = 'studio.json';
const EMPTY: StudioState = { schema: 1, folders: [], keys: [] };

async function loadState(folder: string): Promise<StudioState> {
  let text: string;
  try {
    text = await readFile(join(folder, FILE), 'utf8');
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return EMPTY;
    throw fault;
  }
  const state = readState(text);
  if ('why' in state) throw new Error(`${FILE} in it: ${state.why}`);
  return state;
}

/** Gives the client a public folder name, once. Reports `state-not-writable`. */
export async function keepFolderOf(state: string, client: ClientId, today: string): Promise<Problem | undefined> {
  try {
    await makeFolders(resolve(state), 0o700);
    await chmod(state, 0o700);
    const before = await loadState(state);
    if (before.folders.some((row) => row.client === client)) return undefined;
    const row = { client, folder: folderId(randomBytes(16).toString('hex')), since: today };
    const after: StudioState = { ...before, folders: [...before.folders, row] };
    await writeWhole(join(state, FILE), `${JSON.stringify(after, null, 1)}\n`, 0o600);
    return undefined;
  } catch (fault) {
    const data = { folder: state, why: sayUnmade(fault) };
    return { code: 'state-not-writable', severity: 'error', scope: FOLDER, data };
  }
}
