/**
 * Where a word may part at a line's end, by the published patterns of its language (F. M. Liang, *Word Hy-phen-a-tion by
 * Com-put-er*, 1983; patterns of the hyph-utf8 collection). Loaded on the first call; a language without patterns here
 * is not hyphenated.
 */

/** A word into the parts that it may be broken between; one part where it may not. `language` is BCP 47. */
export type PartWord = (word: string, language: string) => readonly string[];

/** So many letters stay before a hyphen, and go after it. */
const LEAST_BEFORE = 3;
const LEAST_AFTER = 3;
const SHORTEST = LEAST_BEFORE + LEAST_AFTER;
/** A mark no author's word holds: soft hyphens are taken out before. */
const MARK = '\u00ad';
/** Small letters alone: a name is better left whole, and so is what holds a figure or a sign. */
const PLAIN_WORD = /^\p{Ll}+$/u;

const keepWhole: PartWord = (word) => [word];

/** Parts too short to stand alone at a line's end go with their neighbour. */
function sturdy(parts: readonly string[]): readonly string[] {
  const letters = (of: readonly string[]): number => of.join('').length;
  const breaks = parts.flatMap((_, i) =>
    i > 0 && letters(parts.slice(0, i)) >= LEAST_BEFORE && letters(parts.slice(i)) >= LEAST_AFTER ? [i] : [],
  );
  return [0, ...breaks].map((from, i) => parts.slice(from, breaks[i]).join(''));
}

let loaded: Promise<PartWord> | undefined;

async function openPatterns(): Promise<PartWord> {
  const [{ default: english }, { default: norwegian }] = await Promise.all([
    import('hyphen/en-gb/index.js'),
    import('hyphen/nb/index.js'),
  ]);
  const hyphenators = new Map([
    ['en', english.hyphenateSync],
    ['nb', norwegian.hyphenateSync],
    ['no', norwegian.hyphenateSync],
  ]);
  const known = new Map<string, readonly string[]>();
  return (word, language) => {
    const [tongue = ''] = language.toLowerCase().split('-');
    const hyphenate = hyphenators.get(tongue);
    if (!hyphenate || word.length < SHORTEST || !PLAIN_WORD.test(word)) return keepWhole(word, language);
    const key = `${tongue} ${word}`;
    let parts = known.get(key);
    if (!parts) {
      parts = sturdy(hyphenate(word, { hyphenChar: MARK, minWordLength: SHORTEST }).split(MARK));
      known.set(key, parts);
    }
    return parts;
  };
}

export function loadHyphenation(): Promise<PartWord> {
  loaded ??= openPatterns();
  return loaded;
}
