/**
 * An envelope: JSON Web Encryption in its compact form (RFC 7516), by algorithms of RFC 7518. Sealing and opening are
 * the library's; here stands what is let in at all. It knows nothing of what is inside.
 */
import { CompactEncrypt, type CryptoKey, compactDecrypt, decodeProtectedHeader } from 'jose';

/** How the key is come by, and how the content is sealed, as RFC 7518, sections 4.1 and 5.1, name them. */
export interface Terms {
  readonly alg: string;
  readonly enc: string;
}

/** A key that both hold (RFC 7518, section 4.5). */
export const BY_KEY: Terms = { alg: 'dir', enc: 'A256GCM' };
/** Words that both know (section 4.8). */
export const BY_WORDS: Terms = { alg: 'PBES2-HS512+A256KW', enc: 'A256GCM' };
/** To the holder of a private key (section 4.6). */
export const TO_HOLDER: Terms = { alg: 'ECDH-ES', enc: 'A256GCM' };

/**
 * How often words are stirred: PBKDF2 with HMAC-SHA-512, OWASP Password Storage Cheat Sheet, 210 000 since January 2023.
 * RFC 7518, section 4.8.1.2, asks for 1000 at least.
 */
export const WORDS_COUNT = 210_000;
/** More than this no phone is made to work for: room for the count to be raised, and none for mischief. */
const MOST_WORDS_COUNT = 2_000_000;

/** The form of what is sealed; counted up when an older page could not read what a newer one seals. */
export const FORM = 1;

export type EnvelopeKey = CryptoKey | Uint8Array;

export interface Marked {
  /** What it is a part of: none can be put in another's place. */
  readonly part: string;
  /** Which key opens it. */
  readonly kid?: string;
}

export type EnvelopeFault =
  /** Not an envelope, or not the whole of one. */
  | 'broken'
  /** An envelope, but not sealed on these terms, or of another part. */
  | 'foreign'
  /** Of a form that is not known yet, or no more. */
  | 'newer'
  | 'older'
  /** Another key opens it, or somebody changed it. */
  | 'not opened';

export type Opened = { readonly plain: Uint8Array } | { readonly fault: EnvelopeFault };

export interface Sealing {
  readonly key: EnvelopeKey;
  readonly terms: Terms;
  readonly marked: Marked;
  /** For words alone. */
  readonly count?: number;
}

/** A fresh nonce each time, and for words a fresh salt: the same twice gives other bytes. */
export async function sealEnvelope(plain: Uint8Array, { key, terms, marked, count }: Sealing): Promise<string> {
  const sealing = new CompactEncrypt(plain).setProtectedHeader({ ...terms, ...marked, chalkleaf: FORM });
  if (terms.alg.startsWith('PBES2')) sealing.setKeyManagementParameters({ p2c: count ?? WORDS_COUNT });
  return sealing.encrypt(key);
}

type Header = Readonly<Record<string, unknown>>;

/** What stands on the outside, which nobody has vouched for yet; `null` where it is no envelope. */
export function headerOf(text: string): Header | null {
  if (!/^[\w-]+\.[\w-]*\.[\w-]+\.[\w-]*\.[\w-]+$/.test(text)) return null;
  try {
    return { ...decodeProtectedHeader(text) };
  } catch {
    return null;
  }
}

/** Opened on these terms and no others; who seals does not choose how it is opened. */
export async function openEnvelope(text: string, key: EnvelopeKey, terms: Terms, part: string): Promise<Opened> {
  const header = headerOf(text);
  if (header === null) return { fault: 'broken' };
  const { chalkleaf: form } = header;
  if (typeof form !== 'number' || header.part !== part) return { fault: 'foreign' };
  if (form !== FORM) return { fault: form > FORM ? 'newer' : 'older' };
  return openAnybodys(text, key, terms);
}

/** The same for an envelope that anybody sealed, whatever else it says of itself. */
export async function openAnybodys(text: string, key: EnvelopeKey, { alg, enc }: Terms): Promise<Opened> {
  const header = headerOf(text);
  if (header === null) return { fault: 'broken' };
  if (header.alg !== alg || header.enc !== enc) return { fault: 'foreign' };
  try {
    const { plaintext } = await compactDecrypt(text, key, {
      keyManagementAlgorithms: [alg],
      contentEncryptionAlgorithms: [enc],
      maxPBES2Count: MOST_WORDS_COUNT,
    });
    return { plain: plaintext };
  } catch (fault) {
    return { fault: codeOf(fault) === 'ERR_JWE_DECRYPTION_FAILED' ? 'not opened' : 'broken' };
  }
}

const codeOf = (fault: unknown): unknown => (fault instanceof Error && 'code' in fault ? fault.code : undefined);
