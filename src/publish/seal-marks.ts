/**
 * Marks on their way to the studio, sealed to its key, as words that a message can carry. A message breaks lines where it
 * likes and puts signs of its own before them: between the two lines that say what it is only the letters of the
 * envelope count.
 */
import { calculateJwkThumbprint, importJWK, type JWK } from 'jose';
import type { PublicKey } from '../model/marks-key.js';
import { headerOf, openEnvelope, sealEnvelope, TO_HOLDER } from './seal-envelope.js';
import { frame, MARKS_STEP_BYTES, unframe } from './seal-frame.js';

export interface PrivateKey extends PublicKey {
  readonly d: string;
}

const BEGINS = 'Chalkleaf marks, sealed';
const ENDS = 'End of sealed marks';
const PART = 'marks';
/** Short enough for any message. */
const LINE = 64;
/** Of one message. */
const MOST_BYTES = 16 * 1024 * 1024;

const jwkOf = <Key extends PublicKey>(key: Key): JWK => ({ kty: 'EC', ...key });

/** Which key it is (RFC 7638). */
const nameOfPublicKey = ({ crv, x, y }: PublicKey): Promise<string> => calculateJwkThumbprint(jwkOf({ crv, x, y }));

export async function sealMarks(text: string, { crv, x, y }: PublicKey): Promise<string> {
  const key = await importJWK(jwkOf({ crv, x, y }), TO_HOLDER.alg);
  const marked = { part: PART, kid: await nameOfPublicKey({ crv, x, y }) };
  const plain = frame(new TextEncoder().encode(text), MARKS_STEP_BYTES);
  const envelope = await sealEnvelope(plain, { key, terms: TO_HOLDER, marked });
  return `${[BEGINS, ...(envelope.match(new RegExp(`.{1,${LINE}}`, 'g')) ?? []), ENDS].join('\n')}\n`;
}

const pattern = (words: string): string => words.replaceAll(' ', '\\s+');
const BLOCK = new RegExp(`${pattern(BEGINS)}([\\s\\S]*?)${pattern(ENDS)}`, 'gi');

export const looksSealed = (text: string): boolean => new RegExp(pattern(BEGINS), 'i').test(text);

export type MarksFault =
  /** Its beginning is there and its end is not, or letters are missing. */
  | 'cut short'
  | 'foreign'
  | 'newer'
  | 'older'
  /** Sealed to a key that is not here. */
  | 'no key';

export type OpenedMarks = { readonly text: string } | { readonly fault: MarksFault };

/** Every sealed part of a message opened, one after the other; of one that cannot be opened, none is. */
export async function openMarks(message: string, keys: readonly PrivateKey[]): Promise<OpenedMarks> {
  const begun = message.match(new RegExp(pattern(BEGINS), 'gi')) ?? [];
  const blocks = [...message.matchAll(BLOCK)].map(([, block = '']) => block.replace(/[^\w.-]+/g, ''));
  if (blocks.length === 0 || blocks.length < begun.length) return { fault: 'cut short' };
  const texts: string[] = [];
  for (const block of blocks) {
    const opened = await openOne(block, keys);
    if ('fault' in opened) return opened;
    texts.push(opened.text);
  }
  return { text: texts.join('\n') };
}

async function openOne(block: string, keys: readonly PrivateKey[]): Promise<OpenedMarks> {
  const header = headerOf(block);
  if (header === null) return { fault: 'cut short' };
  for (const { crv, x, y, d } of keys) {
    if ((await nameOfPublicKey({ crv, x, y })) !== header.kid) continue;
    const key = await importJWK(jwkOf({ crv, x, y, d }), TO_HOLDER.alg);
    const opened = await openEnvelope(block, key, TO_HOLDER, PART);
    if ('fault' in opened) return { fault: marksFaultOf(opened.fault) };
    const inside = unframe(opened.plain, MOST_BYTES);
    return inside === null ? { fault: 'foreign' } : { text: new TextDecoder().decode(inside) };
  }
  return { fault: header.part === PART ? 'no key' : 'foreign' };
}

const marksFaultOf = (fault: 'broken' | 'foreign' | 'newer' | 'older' | 'not opened'): MarksFault =>
  fault === 'broken' || fault === 'not opened' ? 'cut short' : fault;
