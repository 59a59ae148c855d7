/**
 * What every web booklet has in common: style, script and faces, with the digests a content-security policy names.
 * Made once by `prepareShell`; nothing in it knows a client.
 */
import { type LetterSet, unicodeRangeOf } from './letters.js';

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
  readonly script: Hashed;
  readonly fonts: readonly FontFile[];
}

/** Only the characters of its set are asked of a file; text is never held back for it. */
export function fontFaceRules(fonts: readonly FontFile[], addressOf: (font: FontFile) => string): string {
  return fonts
    .map(
      (font) =>
        `@font-face{font-family:"${font.family}";font-weight:${font.weight};font-style:normal;font-display:swap;` +
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

/** SHA-256 of the UTF-8 text, as Content Security Policy Level 3, section 2.3.1, writes a hash source. */
export async function hashSource(text: string): Promise<string> {
  return `'sha256-${base64Of(await digestOf(new TextEncoder().encode(text)))}'`;
}
