/**
 * State: what must stand neither in content nor in output. The folder is for its owner alone (mode 0700), and so is each of
 * its files (0600). `studio.json` says which opaque public folder is whose; what opens a folder stands in `keys/`
 * under the folder's name, the studio's own keys for marks there as `marks-1.json` and on.
 */
import { randomBytes } from 'node:crypto';
import { chmod, readdir, readFile, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readLock, readPair, readState } from '../content/read-state.js';
import { type ClientId, type FolderId, folderId } from '../model/identity.js';
import type { PublicKey } from '../model/marks-key.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { FolderRow, Lock, SealedBy, StudioState } from '../model/state.js';
import { makePair } from '../publish/key-pair.js';
import { closeLock, newKey } from '../publish/seal-booklet.js';
import type { PrivateKey } from '../publish/seal-marks.js';
import { chooseWords } from '../publish/seal-word-list.js';
import { diskFaultCode, sayUnmade } from './disk-fault.js';
import { stateAstray } from './lies-in.js';
import { makeFolders } from './make-folders.js';
import type { CommonOptions } from './options.js';
import { writeWhole } from './write-whole.js';

const FILE = 'studio.json';
const KEYS = 'keys';
const OWN = 0o600;
/** By gitignore(5), of the folder it stands in. */
const IGNORED = '.gitignore';
const EMPTY: StudioState = { schema: 1, folders: [], keys: [] };

const asText = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

/** A client's public folder, and what opens it. */
export interface Access {
  readonly client: ClientId;
  readonly folder: FolderId;
  readonly since: string;
  readonly lock: Lock;
}

export interface Held {
  /** By client; those without a folder, or without what opens it, are not in it. */
  readonly access: ReadonlyMap<ClientId, Access>;
  /** The studio's own keys for marks, newest first. */
  readonly pairs: readonly PrivateKey[];
}

async function textOf(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return undefined;
    throw fault;
  }
}

async function loadState(folder: string): Promise<StudioState> {
  const text = await textOf(join(folder, FILE));
  if (text === undefined) return EMPTY;
  const state = readState(text);
  if ('why' in state) throw new Error(`${FILE} in it: ${state.why}`);
  return state;
}

async function loadKey<Key extends object>(
  folder: string,
  name: string,
  read: (text: string) => Key | { readonly why: string },
): Promise<Key | undefined> {
  const text = await textOf(join(folder, KEYS, `${name}.json`));
  if (text === undefined) return undefined;
  const key = read(text);
  if ('why' in key) throw new Error(`${KEYS}/${name}.json in it: ${key.why}`);
  return key;
}

const isPair = (name: string): boolean => /^marks-\d+$/.test(name);

/** All that is held. Where nothing is, that is no fault. Reports `folder-misplaced`, `state-unreadable`. */
export async function readHeld(where: Pick<CommonOptions, 'content' | 'out' | 'state'>): Promise<Held | Problem> {
  const astray = await stateAstray(where);
  if (astray !== undefined) return astray;
  const folder = where.state;
  try {
    const state = await loadState(folder);
    const access = new Map<ClientId, Access>();
    for (const row of state.folders) {
      const lock = await loadKey(folder, row.folder, readLock);
      if (lock !== undefined) access.set(row.client, { ...row, lock });
    }
    const pairs: PrivateKey[] = [];
    for (const { name } of state.keys) {
      const pair = isPair(name) ? await loadKey(folder, name, readPair) : undefined;
      if (pair !== undefined) pairs.unshift(pair);
    }
    return { access, pairs };
  } catch (fault) {
    const data = { folder, why: sayUnmade(fault) };
    return { code: 'state-unreadable', severity: 'error', scope: FOLDER, data };
  }
}

/** The key that marks are sealed to from now on; `null` where the studio has none, and marks go as plain text. */
export function publicKeyOf({ pairs }: Held): PublicKey | null {
  const [pair] = pairs;
  return pair === undefined ? null : { crv: pair.crv, x: pair.x, y: pair.y };
}

async function writeState(folder: string, work: (state: StudioState) => Promise<StudioState>): Promise<null | Problem> {
  try {
    await makeFolders(resolve(folder), 0o700);
    await chmod(folder, 0o700);
    await makeFolders(resolve(folder, KEYS), 0o700);
    await chmod(join(folder, KEYS), 0o700);
    // A studio whose folder is under git shares everything in it but this.
    if ((await textOf(join(folder, IGNORED))) === undefined) await writeWhole(join(folder, IGNORED), '*\n', OWN);
    const before = await loadState(folder);
    const after = await work(before);
    if (after !== before) await writeWhole(join(folder, FILE), asText(after), OWN);
    return null;
  } catch (fault) {
    const data = { folder, why: sayUnmade(fault) };
    return { code: 'state-not-writable', severity: 'error', scope: FOLDER, data };
  }
}

async function writeKey(state: string, name: string, key: object): Promise<void> {
  await writeWhole(join(state, KEYS, `${name}.json`), asText({ schema: 1, ...key }), OWN);
}

/** By the link alone the link carries the folder's key; else the key lies in a lock. */
async function makeLock(by: SealedBy): Promise<Lock> {
  const key = newKey();
  if (by === 'link') return { by, key, link: key };
  const words = chooseWords();
  return closeLock(by === 'words' ? { by, key, words } : { by, key, words, link: newKey() });
}

const newFolder = (): FolderId => folderId(randomBytes(16).toString('hex'));

async function withAccess(folder: string, state: StudioState, row: FolderRow, by: SealedBy): Promise<StudioState> {
  await writeKey(folder, row.folder, await makeLock(by));
  const key = { name: row.folder, made: row.since };
  const others = state.folders.filter(({ client }) => client !== row.client);
  return { ...state, folders: [...others, row], keys: [...state.keys.filter(({ name }) => name !== key.name), key] };
}

/** Gives the client a public folder and what opens it, once. Reports `state-not-writable`. */
export function keepFolderOf(
  folder: string,
  client: ClientId,
  today: string,
  by: SealedBy = 'link',
): Promise<null | Problem> {
  return writeState(folder, async (state) => {
    const row = state.folders.find((one) => one.client === client);
    if (row !== undefined && (await loadKey(folder, row.folder, readLock)) !== undefined) return state;
    return withAccess(folder, state, row ?? { client, folder: newFolder(), since: today }, by);
  });
}

/**
 * Another folder and another key in place of those the client has: the old link and the old words open nothing that is
 * built from now on. As it was opened before, where `by` is not said. Reports `state-not-writable`.
 */
export function changeFolderOf(
  folder: string,
  client: ClientId,
  today: string,
  by: SealedBy | undefined,
): Promise<null | Problem> {
  return writeState(folder, async (state) => {
    const row = state.folders.find((one) => one.client === client);
    const lock = row === undefined ? undefined : await loadKey(folder, row.folder, readLock);
    const next = { client, folder: newFolder(), since: today };
    const after = await withAccess(folder, state, next, by ?? lock?.by ?? 'link');
    return forget(folder, after, row);
  });
}

/** The client has no public folder any more, and nobody has what opened it. Reports `state-not-writable`. */
export function endFolderOf(folder: string, client: ClientId): Promise<null | Problem> {
  return writeState(folder, async (state) => {
    const row = state.folders.find((one) => one.client === client);
    const folders = state.folders.filter((one) => one !== row);
    return row === undefined ? state : forget(folder, { ...state, folders }, row);
  });
}

async function forget(folder: string, state: StudioState, row: FolderRow | undefined): Promise<StudioState> {
  if (row === undefined) return state;
  // First the row, so that no row is without its key should anything fail between the two.
  const after = { ...state, keys: state.keys.filter(({ name }) => name !== row.folder) };
  await writeWhole(join(folder, FILE), asText(after), OWN);
  for (const path of [join(KEYS, `${row.folder}.json`), join('sealed', `${row.folder}.json`)]) {
    await rm(join(folder, path), { force: true });
  }
  return after;
}

/**
 * Another key of the studio's for marks; those before it stay, and open what was sealed to them. With `once` only where
 * there is none. Reports `state-not-writable`.
 */
export function addPair(folder: string, today: string, once: boolean): Promise<null | Problem> {
  return writeState(folder, async (state) => {
    const before = state.keys.filter(({ name }) => isPair(name));
    if (once && before.length > 0) return state;
    const last = Math.max(0, ...before.map(({ name }) => Number(name.slice('marks-'.length))));
    const name = `marks-${last + 1}`;
    await writeKey(folder, name, await makePair());
    return { ...state, keys: [...state.keys, { name, made: today }] };
  });
}

/** Every file that a backup holds, by its path below the folder. Rejects with the system's fault. */
export async function stateFiles(folder: string): Promise<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  const names = await readdir(join(folder, KEYS)).catch(() => []);
  for (const path of [FILE, ...names.filter((name) => /^[\w-]+\.json$/.test(name)).map((name) => `${KEYS}/${name}`)]) {
    const text = await textOf(join(folder, path));
    if (text !== undefined) files.set(path, text);
  }
  return files;
}

/** Puts the files of a backup where nothing stands. Reports `state-occupied`, `state-not-writable`. */
export async function restoreState(folder: string, files: ReadonlyMap<string, string>): Promise<null | Problem> {
  if ((await stateFiles(folder)).size > 0) {
    return { code: 'state-occupied', severity: 'error', scope: FOLDER, data: { folder } };
  }
  return writeState(folder, async (state) => {
    for (const [path, text] of files) if (path.startsWith(`${KEYS}/`)) await writeWhole(join(folder, path), text, OWN);
    const studio = readState(files.get(FILE) ?? '');
    return 'why' in studio ? state : studio;
  });
}
