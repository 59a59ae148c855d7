/**
 * What of a client may never stand outside a sealed file: who they are, how they are reached, what their folder is
 * called, whatever is opaque in their files, and the coach's own notes. It is taken from the text of the page itself,
 * so that a page which cannot be read in full still keeps its secrets.
 */
import type { ClientId } from '../model/identity.js';
import { wordsIn } from './word-runs.js';

const PRIVATE_KINDS = ['name', 'file-name', 'e-mail', 'phone', 'opaque', 'note', 'key', 'mark'] as const;
export type PrivateKind = (typeof PRIVATE_KINDS)[number];

export interface PrivateWord {
  readonly kind: PrivateKind;
  /** Absent for what is of the studio's private side as a whole. */
  readonly client?: ClientId;
  readonly text: string;
}

export interface PrivatePage {
  readonly client: ClientId;
  /** The page as written, and whatever else lies beside it. */
  readonly text: string;
  /** The full name as read, where it could be. */
  readonly name?: string;
  /** What else goes by no name: booklet, folder and device ids. */
  readonly opaque?: readonly string[];
  /** What opens the client's booklet. */
  readonly keys?: readonly string[];
  /** Words the client sent. */
  readonly sent?: readonly string[];
}

const E_MAIL = /[\p{L}\p{N}._%+-]+@[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+/gu;
const FIGURES = /(?<![\p{L}\p{N}-])\+?\(?\d[\d ()./\u00a0\u2010-\u2015-]{5,}\d(?![\p{L}\p{N}])/gu;
/** However it is typed: a page with a slip in it is not read, and has a name all the same. */
const NAMED = /^["']?name["']?[ \t]*[:=][ \t]*(.+)$/gim;
const DAY = /\d{4}-\d{2}-\d{2}/;
/** Digits of a telephone number: the most by ITU-T E.164; the least, common practice, no source. */
const PHONE = { least: 7, most: 15 } as const;
/** A word of letters and figures mixed, from this many signs on, is nobody's prose. */
const OPAQUE_FROM = 6;
/** Fewer words than this may be anybody's. */
const NOTE_FROM = 5;

const digitsOf = (text: string): string => text.replace(/\D/g, '');

const phonesIn = (text: string): readonly string[] =>
  (text.match(FIGURES) ?? []).filter((found) => {
    const { length } = digitsOf(found);
    return !DAY.test(found) && length >= PHONE.least && length <= PHONE.most;
  });

const isOpaque = (word: string): boolean =>
  word.length >= OPAQUE_FROM && /\p{L}/u.test(word) && /\p{N}/u.test(word) && !/^\d+\p{L}{1,3}$/u.test(word);

/** The lines under a heading of the page, of its second rank. */
function under(heading: string, text: string): readonly string[] {
  const from = text.search(new RegExp(`^##[ \\t]+${heading}[ \\t]*$`, 'im'));
  if (from < 0) return [];
  const [, ...lines] = text.slice(from).split(/\r?\n/);
  const end = lines.findIndex((line) => /^#{1,2}\s/.test(line));
  return end < 0 ? lines : lines.slice(0, end);
}

const sentencesIn = (lines: readonly string[]): readonly string[] =>
  lines
    .join('\n')
    .split(/\n\s*\n|\n(?=[-*] )|[.!?]\s/)
    .filter((sentence) => wordsIn(sentence).length >= NOTE_FROM);

/** Of one client, each once. */
export function privateWordsOf({
  client,
  text,
  name,
  opaque = [],
  keys = [],
  sent = [],
}: PrivatePage): readonly PrivateWord[] {
  const written = [...text.matchAll(NAMED)].map(([, own = '']) => own.replace(/\s#.*$/, ''));
  const all: readonly (readonly [PrivateKind, readonly string[]])[] = [
    ['name', [...(name === undefined ? [] : [name]), ...written]],
    ['key', keys],
    ['file-name', [client]],
    ['e-mail', text.match(E_MAIL) ?? []],
    ['phone', phonesIn(text)],
    ['opaque', [...opaque, ...wordsIn(text).filter(isOpaque)]],
    ['note', [...sentencesIn(under('notes', text)), ...sentencesIn(sent)]],
  ];
  const seen = new Set<string>();
  return all.flatMap(([kind, texts]) =>
    texts.flatMap((one): PrivateWord[] => {
      const key = kind === 'phone' ? digitsOf(one) : wordsIn(one).join(' ');
      if (key === '' || seen.has(key)) return [];
      seen.add(key);
      return [{ kind, client, text: one.trim() }];
    }),
  );
}
