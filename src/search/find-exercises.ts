/** Looks through an index: what fits the typed words best, and why each was found. */
import MiniSearch, { type SearchOptions } from 'minisearch';
import { compareIds } from '../model/identity.js';
import { type Entry, type Heading, type HeadingKind, OWN, type StoredIndex } from './entry.js';
import { foldTerm, termsOf } from './terms.js';

export interface Index {
  readonly own: MiniSearch<Entry>;
  readonly headings: readonly Heading[];
  /** Headings looked through by their place in the table. */
  readonly byHeading: MiniSearch<Heading & { readonly id: number }>;
  /** Exercises under each heading, by its place. */
  readonly under: readonly (readonly string[])[];
  readonly names: ReadonlyMap<string, string>;
  readonly fillers: ReadonlySet<string>;
  readonly endings: readonly string[];
}

export type Spelling = 'same' | 'begins' | 'near';

/** One typed word and what it came upon. */
export interface Reason {
  readonly typed: string;
  /** The word that is there: begun with what was typed, or spelt nearly so. */
  readonly word: string;
  readonly spelling: Spelling;
  /** In the exercise's name, in what is said of it, or in a heading it stands under. */
  readonly where: 'name' | 'text' | HeadingKind;
  /** The heading's name; empty for the exercise's own words. */
  readonly heading: string;
}

export interface Found {
  readonly id: string;
  readonly name: string;
  /** One for each typed word that was found, in the order typed. */
  readonly why: readonly Reason[];
}

/** `stored` is what `writeIndex` wrote. */
export function openIndex(stored: string): Index {
  // What the same program wrote beside this script.
  const { headings, index, under, fillers, endings } = JSON.parse(stored) as StoredIndex;
  const own = MiniSearch.loadJSON<Entry>(index, OWN);
  const byHeading = new MiniSearch<Heading & { readonly id: number }>({
    fields: ['name', 'everyday'],
    tokenize: (text) => [...termsOf(text)],
    processTerm: foldTerm,
  });
  byHeading.addAll(headings.map((heading, id) => ({ ...heading, id })));
  const ids = Object.keys(under);
  const standing = headings.map((): string[] => []);
  for (const id of ids) for (const at of under[id] ?? []) standing[at]?.push(id);
  const names = new Map(ids.map((id) => [id, String(own.getStoredFields(id)?.name ?? '')]));
  return { own, headings, byHeading, under: standing, names, fillers: new Set(termsOf(fillers)), endings };
}

/** Letters that may be wrong: none in a short word, where everything would be near, two in a long one. */
const forgiven = (term: string): number | false => (term.length < 4 ? false : term.length < 6 ? 1 : 2);
const LOOKING: SearchOptions = { prefix: (term) => term.length > 1 };
const FORGIVING: SearchOptions = { fuzzy: forgiven, maxFuzzy: 2 };

/** What a word says of an exercise by where it stands, and by how it is spelt. */
const WEIGHT: Readonly<Record<Reason['where'], number>> = {
  name: 6,
  movement: 3,
  kit: 2.5,
  works: 2,
  asks: 1.5,
  text: 1,
};
const NEARNESS: Readonly<Record<Spelling, number>> = { same: 1, begins: 0.7, near: 0.4 };
/** A word that is not the trade's own counts a little less, and so does one without its ending. */
const EVERYDAY = 0.8;
const SHORTENED = 0.9;
/** Letters that must be left of a word without its ending. */
const STEM = 3;

interface Hit {
  readonly weight: number;
  readonly reason: Reason;
}

const spellingOf = (typed: string, word: string): Spelling =>
  word === typed ? 'same' : word.startsWith(typed) ? 'begins' : 'near';

/**
 * The best that one typed word comes upon in each exercise, as it stands and without its endings; where it comes upon
 * nothing at all, whatever is spelt nearly so.
 */
function hitsOf(index: Index, typed: string): ReadonlyMap<string, Hit> {
  const right = hitsSpelt(index, typed, LOOKING);
  return right.size > 0 ? right : hitsSpelt(index, typed, FORGIVING);
}

function hitsSpelt(index: Index, typed: string, how: SearchOptions): ReadonlyMap<string, Hit> {
  const best = new Map<string, Hit>();
  offerHits(best, index, { typed, how, share: 1 });
  for (const ending of index.endings) {
    if (!typed.endsWith(ending) || typed.length < ending.length + STEM) continue;
    offerHits(best, index, { typed: typed.slice(0, -ending.length), how, share: SHORTENED });
  }
  return best;
}

interface Asked {
  readonly typed: string;
  readonly how: SearchOptions;
  /** Of the weight of what is come upon. */
  readonly share: number;
}

/** Puts into `best` what says more of an exercise than what stands there; of equals the first stays. A key waits for this. */
function offerHits(
  best: Map<string, Hit>,
  { own, headings, byHeading, under }: Index,
  { typed, how, share }: Asked,
): void {
  for (const { id, match } of own.search(typed, how)) {
    for (const word in match) {
      const where = match[word]?.includes('name') ? 'name' : 'text';
      const spelling = spellingOf(typed, word);
      const weight = WEIGHT[where] * NEARNESS[spelling] * share;
      const known = best.get(id);
      if (known === undefined || weight > known.weight) {
        best.set(id, { weight, reason: { typed, word, spelling, where, heading: '' } });
      }
    }
  }
  // Of two headings that say as much the earlier one is told.
  for (const { id: at, match } of byHeading.search(typed, how).sort((a, b) => Number(a.id) - Number(b.id))) {
    const heading = headings[Number(at)];
    if (heading === undefined) continue;
    for (const word in match) {
      const spelling = spellingOf(typed, word);
      const own = match[word]?.includes('name') ? 1 : EVERYDAY;
      const weight = WEIGHT[heading.kind] * NEARNESS[spelling] * own * share;
      const hit = { weight, reason: { typed, word, spelling, where: heading.kind, heading: heading.name } };
      for (const id of under[Number(at)] ?? []) {
        const known = best.get(id);
        if (known === undefined || weight > known.weight) best.set(id, hit);
      }
    }
  }
}

interface Ranked {
  readonly id: string;
  readonly name: string;
  readonly weight: number;
}

/**
 * Exercises that hold every typed word, best first; where there is none, those that hold any of them. Of equals the
 * one whose name is shorter, then first.
 */
export function findExercises(index: Index, typed: string): readonly Found[] {
  const all = [...new Set(termsOf(typed))];
  const telling = all.filter((term) => !index.fillers.has(term));
  const hits = (telling.length > 0 ? telling : all).map((term) => hitsOf(index, term));
  const ranked = (ids: Iterable<string>, least: number): Ranked[] => {
    const found: Ranked[] = [];
    for (const id of ids) {
      let [weight, held] = [0, 0];
      for (const one of hits) {
        const hit = one.get(id);
        if (hit === undefined) continue;
        weight += hit.weight;
        held += 1;
      }
      if (held >= least) found.push({ id, name: index.names.get(id) ?? '', weight });
    }
    return found;
  };
  const whole = ranked(hits[0]?.keys() ?? [], hits.length);
  const any = whole.length > 0 ? whole : ranked(new Set(hits.flatMap((one) => [...one.keys()])), 1);
  return any
    .sort(
      (a, b) =>
        b.weight - a.weight || a.name.length - b.name.length || compareIds(a.name, b.name) || compareIds(a.id, b.id),
    )
    .map(({ id, name }) => ({ id, name, why: hits.flatMap((one) => one.get(id)?.reason ?? []) }));
}
