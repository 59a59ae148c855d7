/**
 * What every web booklet has in common: style, script and faces, with the digests a content-security policy names.
 * Made once by `prepareShell`; nothing in it knows a client.
 */
import type { BookletLanguage } from '../model/languages.js';
import { type LetterSet, unicodeRangeOf } from './letters.js';

/** The client's part of a folder. */
export const PAYLOAD = 'payload.html';

export interface FontFile {
  readonly family: string;
  readonly weight: 400 | 600 | 700;
  readonly letters: LetterSet;
  /** `literata-400-latin.woff2`; a name only, without folders. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface Hashed {
  readonly text: string;
  /** A source expression of a content-security policy, with its quotes: `'sha256-…'`. */
  readonly source: string;
}

export interface ShellParts {
  /** The book's style, minified. */
  readonly style: Hashed;
  /** Rules for the faces of each set of letters, with the faces inside as data; a page carries those it needs. */
  readonly facesInside: Readonly<Record<LetterSet, Hashed>>;
  /** Rules for all faces, as files in `fonts/`. */
  readonly facesBeside: Hashed;
  /** Shows leaves; in the page. */
  readonly script: Hashed;
  /** Keeps marks and shows the training screens, in one language; a file of the folder, or after the first in a page of its own. */
  readonly training: Readonly<Record<BookletLanguage, Hashed>>;
  /** Plans the rest again; only where the client's plan lets it. */
  readonly planAgain: Hashed;
  /** Opens what is sealed, and seals marks; only where there is anything of the kind. */
  readonly sealing: Hashed;
  /** Keeps a folder readable without a network; what the folder holds is written before it. */
  readonly worker: string;
  readonly fonts: readonly FontFile[];
  readonly icons: readonly IconFile[];
}

/** The sign of a booklet on a home screen. */
export interface IconFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What becomes of a face that comes late: it takes the place of another, and lines move; or it is there for the next page. */
export type LateFaces = 'swap' | 'optional';

/** Only the characters of its set are asked of a file; text is never held back for it. */
export function fontFaceRules(
  fonts: readonly FontFile[],
  addressOf: (font: FontFile) => string,
  late: LateFaces = 'swap',
): string {
  return fonts
    .map(
      (font) =>
        `@font-face{font-family:"${font.family}";font-weight:${font.weight};font-style:normal;font-display:${late};` +
        `src:url("${addressOf(font)}") format("woff2");unicode-range:${unicodeRangeOf(font.letters)}}`,
    )
    .join('');
}

export function base64Of(bytes: Uint8Array): string {
  let binary = '';
  for (let i = 0; i < bytes.length; i += 0x8000) binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary);
}

export async function digestOf(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  return new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
}

/** SHA-256 in hexadecimal figures of several texts and bytes, each with its length, so that none runs into the next. */
export async function digestOfAll(all: readonly Uint8Array[]): Promise<string> {
  const lengths = new TextEncoder().encode(all.map(({ length }) => length).join(' '));
  const whole = new Uint8Array(all.reduce((sum, { length }) => sum + length, lengths.length));
  whole.set(lengths);
  let at = lengths.length;
  for (const bytes of all) {
    whole.set(bytes, at);
    at += bytes.length;
  }
  return [...(await digestOf(whole))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** SHA-256 of the UTF-8 text, as Content Security Policy Level 3, section 2.3.1, writes a hash source. */
export async function hashSource(text: string): Promise<string> {
  return `'sha256-${base64Of(await digestOf(new TextEncoder().encode(text)))}'`;
}
