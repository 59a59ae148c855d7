/**
 * What every web booklet has in common: style, script and faces, with the digests a content-security policy names.
 * Made once by `prepareShell`; nothing in it knows a client.
 */
export interface FontFile {
  readonly family: string;
  readonly weight: 400 | 600 | 700;
  /** `literata-400.woff2`; a name only, without folders. */
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
  /** Rules for the faces, with the faces inside as data. */
  readonly facesInside: Hashed;
  /** Rules for the faces, with the faces as files in `fonts/`. */
  readonly facesBeside: string;
  readonly script: Hashed;
  readonly fonts: readonly FontFile[];
}

/** Latin with its extensions for the languages of Europe west of Greek and Cyrillic, and what typography needs. */
const LATIN = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x218, 0x21b],
  [0x2010, 0x2015],
  [0x2018, 0x201e],
] as const;
const SINGLE = [
  0x2009, 0x2022, 0x2026, 0x202f, 0x2030, 0x2032, 0x2033, 0x2039, 0x203a, 0x2044, 0x20ac, 0x2212,
] as const;
const SIGNS = [0x2248, 0x2264, 0x2265] as const;

/** Every character the faces are cut down to. `×` and `÷` stand in Latin 1. */
export function facedCharacters(): string {
  const ranges = LATIN.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
  return String.fromCodePoint(...ranges, ...SINGLE, ...SIGNS);
}

/** Only these characters are asked of the faces; any other letter falls to the phone's own. */
export function unicodeRange(): string {
  const hex = (n: number): string => n.toString(16).toUpperCase();
  return [
    ...LATIN.map(([from, to]) => `U+${hex(from)}-${hex(to)}`),
    ...[...SINGLE, ...SIGNS].map((one) => `U+${hex(one)}`),
  ].join(',');
}

export function fontFaceRules(fonts: readonly FontFile[], addressOf: (font: FontFile) => string): string {
  const range = unicodeRange();
  return fonts
    .map(
      (font) =>
        `@font-face{font-family:"${font.family}";font-weight:${font.weight};font-style:normal;font-display:swap;` +
        `src:url("${addressOf(font)}") format("woff2");unicode-range:${range}}`,
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
