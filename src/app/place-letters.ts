/** Where in the coach's pages a letter stands that paper cannot show: the booklet knows its words, not their lines. */
import type { ClientId } from '../model/identity.js';
import type { Place } from '../model/place.js';
import type { Problem } from '../model/problem.js';

export interface Pages {
  /** Below the content folder, with `/`. */
  readonly paths: readonly string[];
  readonly sourceOf: (path: string) => string | undefined;
}

/** The client's own page before what is shared, in the order a coach would look. */
const ORDER = ['programmes/', 'exercises/', 'studio.md'];
const orderOf = (path: string, client: ClientId): number =>
  path === `clients/${client}/client.md` ? -1 : ORDER.findIndex((start) => path.startsWith(start));

/** The first page, line and column at which one of the letters stands in the word that could not be set. */
function placeOf(word: string, letters: readonly string[], paths: readonly string[], pages: Pages): Place | undefined {
  for (const file of paths) {
    const lines = (pages.sourceOf(file) ?? '').split('\n');
    for (const [i, line] of lines.entries()) {
      // Paper sets letters put together; a page may have them in parts.
      const from = line.normalize('NFC').indexOf(word);
      if (from < 0) continue;
      const before = Array.from(line.normalize('NFC').slice(0, from)).length;
      const within = Array.from(word);
      const at = Math.max(
        0,
        within.findIndex((letter) => letters.includes(letter)),
      );
      return { file, line: i + 1, column: before + at + 1, length: within.length - at };
    }
  }
  return undefined;
}

/** In the word itself; where a page writes it otherwise, wherever one of its letters stands first. */
function placeIn(where: string, letters: readonly string[], paths: readonly string[], pages: Pages): Place | undefined {
  const word = where.split(/\s+/u).find((one) => Array.from(one).some((letter) => letters.includes(letter)));
  const sought = [...(word === undefined ? [] : [word]), ...letters];
  for (const one of sought) {
    const place = placeOf(one, letters, paths, pages);
    if (place !== undefined) return place;
  }
  return undefined;
}

type Lacking = Extract<Problem, { readonly code: 'not-printable' }>;

const keyOf = ({ place, data }: Lacking): string =>
  place === undefined ? data.characters.join(' ') : `${place.file}:${place.line}`;

/** The same problems, those of missing letters with the line to mend and once for each. Words of no page keep none. */
export function placeLetters(problems: readonly Problem[], client: ClientId, pages: Pages): readonly Problem[] {
  const paths = pages.paths
    .filter((path) => orderOf(path, client) >= 0 || path === `clients/${client}/client.md`)
    .sort((a, b) => orderOf(a, client) - orderOf(b, client));
  const told = new Map<string, Lacking>();
  const others: Problem[] = [];
  for (const problem of problems) {
    if (problem.code !== 'not-printable' || problem.data.why !== 'letters') {
      others.push(problem);
      continue;
    }
    const { characters, where } = problem.data;
    const place = placeIn(where, characters, paths, pages);
    const placed: Lacking = place === undefined ? problem : { ...problem, place };
    const before = told.get(keyOf(placed));
    told.set(keyOf(placed), before === undefined ? placed : together(before, placed));
  }
  return [...others, ...told.values()];
}

/** Letters of one line, as one problem, where the first of them stands. */
function together(one: Lacking, other: Lacking): Lacking {
  const characters = [...new Set([...one.data.characters, ...other.data.characters])].sort(byCodePoint);
  const first = (other.place?.column ?? Infinity) < (one.place?.column ?? Infinity) ? other : one;
  return { ...first, data: { ...first.data, characters } };
}

const byCodePoint = (a: string, b: string): number => (a.codePointAt(0) ?? 0) - (b.codePointAt(0) ?? 0);
