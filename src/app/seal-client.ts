/**
 * A client's public folder: the shell as it is, the client's part sealed in a page that says nothing of anybody, paper and
 * calendar sealed beside it. What was sealed of the same with the same key is taken as it was, from the state: the same
 * bytes lie in the folder until what they hold is another.
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readSealedParts, type SealedParts } from '../content/read-state.js';
import { BESIDE, type SealedBooklet, type SealedPart } from '../model/sealed.js';
import { MANIFEST, writeManifest } from '../publish/manifest.js';
import { nameOfKey, sealPart } from '../publish/seal-booklet.js';
import { FORM } from '../publish/seal-envelope.js';
import type { OutputFile } from '../web/render-booklet.js';
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
  /** What a host that reads such a file is to send with the folder's pages. */
  readonly headers: string;
  /** Absent where there is none. */
  readonly paper?: Uint8Array;
  readonly calendar?: Uint8Array;
}

const sumOf = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex');
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The files of the public folder. Rejects with the system's fault where the state cannot be written. */
export async function sealClient(
  state: string,
  { folder, lock }: Access,
  plain: Plain,
): Promise<readonly OutputFile[]> {
  const file = join(state, 'sealed', `${folder}.json`);
  const before = readSealedParts(await readFile(file, 'utf8').catch(() => ''));
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
    await makeFolders(resolve(state, 'sealed'), 0o700);
    await writeWhole(file, `${JSON.stringify({ schema: 1, parts: after })}\n`, 0o600);
  }
  const files = [
    ...shell,
    { path: plain.payload, bytes: page },
    ...beside,
    { path: '.htaccess', bytes: utf8(plain.headers) },
  ];
  const listed = files.map(({ path, bytes }) => ({ path, sha256: sumOf(bytes) }));
  return [...files, { path: MANIFEST, bytes: utf8(writeManifest(listed)) }];
}
