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

/** The same problems, those of missing letters with the line to mend. Words of no page keep none. */
export function placeLetters(problems: readonly Problem[], client: ClientId, pages: Pages): readonly Problem[] {
  const paths = pages.paths
    .filter((path) => orderOf(path, client) >= 0 || path === `clients/${client}/client.md`)
    .sort((a, b) => orderOf(a, client) - orderOf(b, client));
  return problems.map((problem) => {
    if (problem.code !== 'not-printable' || problem.data.why !== 'letters') return problem;
    const { characters, where } = problem.data;
    const word = where.split(/\s+/u).find((one) => Array.from(one).some((letter) => characters.includes(letter)));
    const place = word === undefined ? undefined : placeOf(word, characters, paths, pages);
    return place === undefined ? problem : { ...problem, place };
  });
}
