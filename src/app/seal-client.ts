/**
 * A client's public folder: the shell as it is, the client's part sealed in a page that says nothing of anybody, paper and
 * calendar sealed beside it. What was sealed of the same with the same key is taken as it was, from the state: the same
 * bytes lie in the folder until what they hold is another.
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readSealedParts, type SealedParts } from '../content/read-state.js';
import type { ClientId, FolderId } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { BESIDE, type SealedBooklet, type SealedPart } from '../model/sealed.js';
import { MANIFEST, writeManifest } from '../publish/manifest.js';
import { nameOfKey, sealPart } from '../publish/seal-booklet.js';
import { FORM } from '../publish/seal-envelope.js';
import type { OutputFile } from '../web/render-booklet.js';
import { SINGLE_NAMES } from './booklet-forms.js';
import { sayUnmade } from './disk-fault.js';
import type { DrawnFile } from './draw-client.js';
import type { Access } from './keep-state.js';
import { makeFolders } from './make-folders.js';
import { writeWhole } from './write-whole.js';

/** What goes into a folder, in plain. */
export interface Plain {
  /** The shell, and the client's part under its name. */
  readonly folder: readonly OutputFile[];
  /** A client's part in the folder, by its name. */
  readonly payload: string;
  /** The page that carries the sealed part. */
  readonly page: (sealed: SealedBooklet) => Uint8Array;
  /** Absent where there is none. */
  readonly paper?: Uint8Array;
  readonly calendar?: Uint8Array;
}

const fileOf = (state: string, folder: FolderId): string => join(state, 'sealed', `${folder}.json`);

/** What was sealed last for a folder, by part; nothing where that is not known any more. */
export const sealedBefore = async (state: string, folder: FolderId): Promise<SealedParts> =>
  readSealedParts(await readFile(fileOf(state, folder), 'utf8').catch(() => ''));

const sumOf = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex');
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/**
 * What of a client's files goes into the folder. A page that whoever trains beside the client is handed is no part of it, and
 * nor are pictures, which by their names would tell what is done: `alone` is the client's part with its pictures in it.
 */
export async function plainOf(
  client: ClientId,
  files: readonly DrawnFile[],
  alone: Uint8Array,
  language: string,
): Promise<Plain> {
  const { PAYLOAD } = await import('../web/shell-parts.js');
  const { PARTNER } = await import('../web/render-partner.js');
  const { PICTURES } = await import('../web/place-photographs.js');
  const { renderSealed } = await import('../web/render-sealed.js');
  const home = `private/clients/${client}/`;
  const bytesOf = (bytes: Uint8Array | string): Uint8Array => (typeof bytes === 'string' ? utf8(bytes) : bytes);
  const below = (folder: string): readonly OutputFile[] =>
    files.flatMap(({ path, bytes }) =>
      path.startsWith(folder) ? [{ path: path.slice(folder.length), bytes: bytesOf(bytes) }] : [],
    );
  const at = (name: string): Uint8Array | undefined => below(home).find(({ path }) => path === name)?.bytes;
  const paper = SINGLE_NAMES.map(at).find((bytes) => bytes !== undefined);
  const calendar = at(BESIDE.calendar.name);
  return {
    folder: below(`${home}booklet/`)
      .filter(({ path }) => path !== PARTNER && !path.startsWith(PICTURES))
      .map((file) => (file.path === PAYLOAD ? { ...file, bytes: alone } : file)),
    payload: PAYLOAD,
    page: (sealed) => renderSealed(sealed, language),
    ...(paper === undefined ? {} : { paper }),
    ...(calendar === undefined ? {} : { calendar }),
  };
}

/** The files of the public folder. Reports `state-not-writable`: what is sealed and not kept would be sealed anew each time. */
export async function sealClient(
  state: string,
  { folder, lock }: Access,
  plain: Plain,
): Promise<readonly OutputFile[] | Problem> {
  const file = fileOf(state, folder);
  const before = await sealedBefore(state, folder);
  const kid = await nameOfKey(lock.key);
  const after: Record<string, SealedParts[string]> = {};
  const seal = async (part: SealedPart, bytes: Uint8Array): Promise<string> => {
    const of = sumOf(`${kid} ${sumOf(bytes)}`);
    const known = before[part];
    const envelope = known?.of === of ? known.envelope : await sealPart(bytes, part, lock.key);
    after[part] = { of, envelope };
    return envelope;
  };
  const shell = plain.folder.filter(({ path }) => path !== plain.payload);
  const payload = plain.folder.find(({ path }) => path === plain.payload);
  if (payload === undefined) throw new Error('a booklet has a part of its client’s own');
  const booklet = await seal('booklet', payload.bytes);
  const beside: OutputFile[] = [];
  const parts: SealedBooklet['beside'][number][] = [];
  for (const part of ['paper', 'calendar'] as const) {
    const bytes = plain[part];
    if (bytes === undefined) continue;
    beside.push({ path: BESIDE[part].file, bytes: utf8(await seal(part, bytes)) });
    parts.push(part);
  }
  const { by, closed } = lock;
  const page = plain.page({
    form: FORM,
    by,
    booklet,
    beside: parts,
    ...(closed === undefined ? {} : { lock: closed }),
  });
  if (JSON.stringify(before) !== JSON.stringify(after)) {
    try {
      await makeFolders(resolve(state, 'sealed'), 0o700);
      await writeWhole(file, `${JSON.stringify({ schema: 1, parts: after })}\n`, 0o600);
    } catch (fault) {
      const data = { folder: state, why: sayUnmade(fault) };
      return { code: 'state-not-writable', severity: 'error', scope: FOLDER, data };
    }
  }
  const files = [...shell, { path: plain.payload, bytes: page }, ...beside];
  const listed = files.map(({ path, bytes }) => ({ path, sha256: sumOf(bytes) }));
  return [...files, { path: MANIFEST, bytes: utf8(writeManifest(listed)) }];
}
