/** Whose catalogue speaks for a language tag, and which way its lines run. It knows no catalogue itself. */
import { primaryLanguage } from '../model/languages.js';
import { isolated } from './spacing.js';

/** A language as one reader meets it, with as much of its catalogue as is needed. */
export interface Spoken<Words> {
  /** BCP 47, as the client's file gives it. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly words: Words;
  /** Keeps `3 × 8` as written in a line that runs from right to left. */
  readonly hold: (text: string) => string;
}

/** Scripts written from right to left (ISO 15924), and the languages usually written in one (ISO 639). */
const RTL_SCRIPTS = ['arab', 'hebr', 'thaa', 'syrc', 'nkoo', 'adlm', 'rohg', 'mand', 'samr'];
const RTL_LANGUAGES = [
  'ar',
  'arc',
  'ckb',
  'dv',
  'fa',
  'he',
  'iw',
  'ks',
  'ps',
  'sd',
  'syr',
  'ug',
  'ur',
  'yi',
  'ji',
  'azb',
];

/** `ltr` or `rtl` by the tag's script, else by its language. */
export function directionOf(tag: string): 'ltr' | 'rtl' {
  const [language = '', ...subtags] = tag.toLowerCase().split('-');
  const script = subtags.find((subtag) => /^[a-z]{4}$/.test(subtag));
  const rtl = script === undefined ? RTL_LANGUAGES.includes(language) : RTL_SCRIPTS.includes(script);
  return rtl ? 'rtl' : 'ltr';
}

/** The parts of a catalogue that a language goes by; at least one, which speaks where none is meant. */
export type Catalogues<Words> = readonly [Words, ...Words[]];

/**
 * The catalogue for a tag: the longest one that the tag begins with (RFC 4647, lookup), else one of the same language,
 * else the first. The direction follows the tag: the exercises are in the client’s language even where the interface is not.
 */
export function speakIn<Words extends { readonly language: string }>(
  tag: string,
  catalogues: Catalogues<Words>,
): Spoken<Words> {
  const words = lookUp(tag, catalogues) ?? catalogues[0];
  return spokenWith(words, tag, directionOf(tag));
}

/** Where it is known which catalogue speaks and which way its lines run. */
export const spokenWith = <Words>(words: Words, language: string, direction: 'ltr' | 'rtl'): Spoken<Words> => ({
  language,
  direction,
  words,
  hold: direction === 'rtl' ? isolated : (text) => text,
});

function lookUp<Words extends { readonly language: string }>(
  tag: string,
  catalogues: Catalogues<Words>,
): Words | undefined {
  const wanted = tag.toLowerCase().split('-');
  for (let length = wanted.length; length > 0; length -= 1) {
    const range = wanted.slice(0, length).join('-');
    const found = catalogues.find(({ language }) => language.toLowerCase() === range);
    if (found) return found;
  }
  const meant = primaryLanguage(tag);
  return catalogues.find(({ language }) => language.toLowerCase().split('-')[0] === meant);
}
