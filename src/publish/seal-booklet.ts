/**
 * A client's part, sealed. Every file of a folder is sealed with one key of its own. By the link alone the link carries
 * that key. By words the key lies in a lock, an envelope that words open. By both, that envelope lies in another one, which
 * the link opens: whoever reads the message with the link reads nothing else.
 */
import { base64url, type CryptoKey, calculateJwkThumbprint } from 'jose';
import type { SealedBooklet, SealedPart } from '../model/sealed.js';
import type { Lock } from '../model/state.js';
import { BY_KEY, BY_WORDS, type EnvelopeFault, FORM, headerOf, openEnvelope, sealEnvelope } from './seal-envelope.js';
import { frame, STEP_BYTES, unframe } from './seal-frame.js';
import { bytesOfWords } from './seal-words.js';

/** Before the key in a link: what stands behind a `#` is sent to no host (RFC 9110, section 4.2.5). */
const OPENS = 'open=';

/** `address` is the folder's, and ends in `/`; `link` what the link is to carry. */
export const writeLink = (address: string, link: string | undefined): string =>
  link === undefined ? address : `${address}#${OPENS}${link}`;

/** What a link carries, wherever it stands in what was put in. */
export const keyInLink = (text: string): string | undefined => /open=([\w-]{43})(?![\w-])/.exec(text)?.[1];

const KEY_BYTES = 32;
const LOCK = 'lock';
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const ofUtf8 = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

export const newKey = (): string => base64url.encode(crypto.getRandomValues(new Uint8Array(KEY_BYTES)));

/** Which key it is, and nothing of it (RFC 7638). */
export const nameOfKey = (key: string): Promise<string> => calculateJwkThumbprint({ kty: 'oct', k: key });

/** The key's bytes; `null` where the text is none. */
function bytesOfKey(key: string): Uint8Array | null {
  if (!/^[\w-]{43}$/.test(key)) return null;
  try {
    const bytes = base64url.decode(key);
    return bytes.length === KEY_BYTES ? bytes : null;
  } catch {
    return null;
  }
}

function wanted(key: string | undefined): Uint8Array {
  const bytes = key === undefined ? null : bytesOfKey(key);
  if (bytes === null) throw new Error('a key is 32 bytes in base64url');
  return bytes;
}

/** Closed once, and kept so: the same words over again would give other bytes. */
export async function closeLock(lock: Omit<Lock, 'closed'>, count?: number): Promise<Lock> {
  if (lock.by === 'link') return lock;
  const inner = await sealEnvelope(wanted(lock.key), {
    key: bytesOfWords(lock.words ?? ''),
    terms: BY_WORDS,
    marked: { part: LOCK },
    ...(count === undefined ? {} : { count }),
  });
  if (lock.by === 'words') return { ...lock, closed: inner };
  const marked = { part: LOCK, kid: await nameOfKey(lock.link ?? '') };
  return { ...lock, closed: await sealEnvelope(utf8(inner), { key: wanted(lock.link), terms: BY_KEY, marked }) };
}

export async function sealPart(bytes: Uint8Array, part: SealedPart, key: string): Promise<string> {
  const marked = { part, kid: await nameOfKey(key) };
  return sealEnvelope(frame(bytes, STEP_BYTES), { key: wanted(key), terms: BY_KEY, marked });
}

export type OpeningFault =
  /** Not whole, changed on the way, or not ours. */
  'damaged' | 'newer' | 'older' | 'wrong link' | 'wrong words';

export type OpenedPart = { readonly bytes: Uint8Array } | { readonly fault: OpeningFault };

/** The key of a folder's files as a phone may keep it: it opens, and nobody gets it out again. */
export interface FolderKey {
  readonly opens: CryptoKey;
  readonly kid: string;
}

export async function holdKey(key: string): Promise<FolderKey> {
  const bytes = new Uint8Array(wanted(key));
  const opens = await crypto.subtle.importKey('raw', bytes, 'AES-GCM', false, ['decrypt']);
  return { opens, kid: await nameOfKey(key) };
}

export async function openPart(text: string, part: SealedPart, { opens, kid }: FolderKey): Promise<OpenedPart> {
  const header = headerOf(text);
  const opened = await openEnvelope(text, opens, BY_KEY, part);
  if ('fault' in opened) return { fault: faultOf(opened.fault) };
  const inside = header?.kid === kid ? unframe(opened.plain) : null;
  return inside === null ? { fault: 'damaged' } : { bytes: inside };
}

/** Whether it is the key of this booklet; not so any more once the coach has changed it. */
export const isKeyOf = ({ kid }: FolderKey, { booklet }: SealedBooklet): boolean => headerOf(booklet)?.kid === kid;

const faultOf = (fault: EnvelopeFault): OpeningFault => (fault === 'newer' || fault === 'older' ? fault : 'damaged');

export interface Given {
  /** What the link carries. */
  readonly link?: string;
  readonly words?: string;
}

export type OpenedKey = { readonly key: string } | { readonly fault: OpeningFault };

/** The key of the folder's files, from what the client has; whether it is the right one is known before anything is opened. */
export async function openLock(sealed: SealedBooklet, given: Given): Promise<OpenedKey> {
  const wrongForm = formOf(sealed.form);
  if (wrongForm !== null) return { fault: wrongForm };
  const header = headerOf(sealed.booklet);
  if (header === null) return { fault: 'damaged' };
  const found = await keyOf(sealed, given);
  if ('fault' in found) return found;
  if (header.kid === (await nameOfKey(found.key))) return found;
  return { fault: sealed.by === 'link' ? 'wrong link' : 'damaged' };
}

const formOf = (form: number): 'newer' | 'older' | null => (form === FORM ? null : form > FORM ? 'newer' : 'older');

async function keyOf({ by, lock = '' }: SealedBooklet, { link = '', words = '' }: Given): Promise<OpenedKey> {
  if (by === 'link') return bytesOfKey(link) === null ? { fault: 'wrong link' } : { key: link };
  let inner = lock;
  if (by === 'both') {
    const bytes = bytesOfKey(link);
    const header = headerOf(lock);
    if (header === null) return { fault: 'damaged' };
    if (bytes === null || header.kid !== (await nameOfKey(link))) return { fault: 'wrong link' };
    const outer = await openEnvelope(lock, bytes, BY_KEY, LOCK);
    if ('fault' in outer) return { fault: faultOf(outer.fault) };
    inner = ofUtf8(outer.plain);
  }
  const opened = await openEnvelope(inner, bytesOfWords(words), BY_WORDS, LOCK);
  if ('plain' in opened) return { key: base64url.encode(opened.plain) };
  return { fault: opened.fault === 'not opened' ? 'wrong words' : faultOf(opened.fault) };
}

/** What a page carries, read; `null` where it is not of this sort. */
export function readSealed(text: string): SealedBooklet | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof value !== 'object' || value === null) return null;
  const { form, by, lock, booklet, beside } = value as Record<string, unknown>;
  if (typeof form !== 'number' || typeof booklet !== 'string') return null;
  if (by !== 'link' && by !== 'words' && by !== 'both') return null;
  if (lock !== undefined && typeof lock !== 'string') return null;
  const parts = Array.isArray(beside) ? (['paper', 'calendar'] as const).filter((part) => beside.includes(part)) : [];
  return { form, by, booklet, beside: parts, ...(lock === undefined ? {} : { lock }) };
}
