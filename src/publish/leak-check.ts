/**
 * Looks for a client in files that anybody may read. Words count as the same whatever their case, their normal form and
 * what stands between them; they must be whole. There is no list of exceptions: what is found is refused.
 * How a file is made into texts is for `read-texts`.
 */
import type { PrivateKind, PrivateWord } from './private-words.js';
import { foldText, wordsIn } from './word-runs.js';

/** Where in a file a text was found. */
export type Inside = 'its path' | 'its bytes' | 'its text' | 'its metadata' | 'what is written into it';

export interface FileText {
  readonly inside: Inside;
  readonly text: string;
  /** Bytes of something else, read as if they were text: short words turn up there by chance and are not looked for. */
  readonly byChance?: true;
}

export interface PublicText {
  readonly path: string;
  readonly texts: readonly FileText[];
}

export interface Leak {
  readonly word: PrivateWord;
  readonly path: string;
  readonly inside: Inside;
}

/** Signs in a word from which on it does not turn up among random bytes: once in some hundred gigabytes at six. */
const NOT_BY_CHANCE = 6;
/** Digits at the end of a telephone number that tell it whatever code of country or place stands before. */
const OWN_DIGITS = 9;
const BETWEEN_DIGITS = '[ ()./\\u00a0\\u2010-\\u2015-]{0,3}';

interface Sought {
  readonly word: PrivateWord;
  readonly words: readonly string[];
  readonly length: number;
}

export type Look = (file: PublicText) => readonly Leak[];

/** Made once for all files. Each word is told once of a file. */
export function lookFor(words: readonly PrivateWord[]): Look {
  const byFirst = new Map<string, Sought[]>();
  const numbers: { readonly word: PrivateWord; readonly pattern: RegExp }[] = [];
  for (const word of words) {
    if (word.kind === 'phone') {
      numbers.push({ word, pattern: patternOf(word.text) });
      continue;
    }
    for (const run of ordersOf(word)) {
      const [first = ''] = run;
      byFirst.set(first, [...(byFirst.get(first) ?? []), { word, words: run, length: run.join('').length }]);
    }
  }
  return ({ path, texts }) => {
    const found = new Map<PrivateWord, Leak>();
    const tell = (word: PrivateWord, inside: Inside): void => {
      if (!found.has(word)) found.set(word, { word, path, inside });
    };
    for (const { inside, text, byChance } of texts) {
      const run = wordsIn(text);
      run.forEach((first, at) => {
        for (const { word, words: sought, length } of byFirst.get(first) ?? []) {
          if (byChance && length < NOT_BY_CHANCE) continue;
          if (sought.every((one, index) => run[at + index] === one)) tell(word, inside);
        }
      });
      if (numbers.length === 0) continue;
      const folded = foldText(text);
      for (const { word, pattern } of numbers) if (pattern.test(folded)) tell(word, inside);
    }
    return [...found.values()];
  };
}

/**
 * A name is found with any of its words in front, since lists put the last of them there; and without what stands between
 * the first and the last, by which many go.
 */
function ordersOf({ kind, text }: PrivateWord): readonly (readonly string[])[] {
  const run = wordsIn(text);
  if (kind !== 'name') return [run];
  const turned = run.map((_, at) => [...run.slice(at), ...run.slice(0, at)]);
  const parts = text
    .split(/\s+/)
    .map(wordsIn)
    .filter(({ length }) => length > 0);
  const [first, last] = [parts[0], parts.at(-1)];
  if (parts.length < 3 || first === undefined || last === undefined) return turned;
  return [...turned, [...first, ...last], [...last, ...first]];
}

function patternOf(phone: string): RegExp {
  const digits = foldText(phone).replace(/\D/g, '');
  const own = digits.slice(-OWN_DIGITS);
  const before = own.length === OWN_DIGITS ? '' : '(?<!\\d)';
  return new RegExp(`${before}${[...own].join(BETWEEN_DIGITS)}(?!\\d)`);
}

/** In which order kinds are told: who it is before what is theirs. */
const RANK: Readonly<Record<PrivateKind, number>> = {
  mark: 0,
  key: 0,
  name: 1,
  'file-name': 2,
  'e-mail': 3,
  phone: 4,
  opaque: 5,
  note: 6,
};

export interface ToldLeak extends Leak {
  /** Further files with the same. */
  readonly others: number;
}

/** Each private word once, with the first file that holds it. */
export function gatherLeaks(leaks: readonly Leak[]): readonly ToldLeak[] {
  const files = new Map<PrivateWord, Leak[]>();
  for (const leak of leaks) files.set(leak.word, [...(files.get(leak.word) ?? []), leak]);
  return [...files.values()]
    .flatMap((same): ToldLeak[] => {
      const [first] = same;
      return first === undefined ? [] : [{ ...first, others: same.length - 1 }];
    })
    .sort((a, b) => RANK[a.word.kind] - RANK[b.word.kind]);
}
