/** Sets of one exercise on one day: figures set large, their sets counted, and the room their tally takes. */
import type { BookletSet, Cell } from '../../src/model/booklet.js';
import type { Book } from './leaves.js';
import { Ranges } from './ranges.js';
import { linesOf } from './tally.js';

/** Sets that read the same, in order of first appearance: one figure stands for all of them. */
export interface Run {
  readonly text: string;
  readonly sets: readonly BookletSet[];
}

export function runsOf(cell: Cell): readonly Run[] {
  const runs = new Map<string, BookletSet[]>();
  for (const set of cell.sets) {
    const like = `${set.kind} ${set.text}`;
    const run = runs.get(like);
    if (run) run.push(set);
    else runs.set(like, [set]);
  }
  return [...runs.values()].map((sets) => ({ text: sets[0]?.text ?? '', sets }));
}

/** Words of two letters and more: a unit, a band's name, `reps`, `then`. */
const WORDS = /(\p{L}[\p{L}\p{M}’-]+(?:[\s\u00a0]+\p{L}[\p{L}\p{M}’-]+)*,?)/u;

/** `16 kg × 8`, `light band × 8`: words are set smaller than figures. */
export function Figure({ set }: { readonly set: BookletSet }) {
  const parts = set.text.split(WORDS);
  return <>{parts.map((part, i) => (i % 2 === 1 ? <span class="unit">{part}</span> : <Ranges text={part} />))}</>;
}

/** Sets made before the work they lead to, and named so wherever they stand beside it. */
const leads = (kind: BookletSet['kind'] | undefined): kind is 'trial' | 'feeler' | 'test' =>
  kind === 'trial' || kind === 'feeler' || kind === 'test';

/** The figures of a day at a glance, and how many sets of them: what is lifted to warm up is left to the page itself. */
export function figuresAtAGlance(book: Book, cell: Cell): string {
  const { before, leadsTo } = book.words;
  const runs = runsOf(cell).filter(({ sets }) => sets[0]?.kind !== 'warm-up');
  const sides = new Set(runs.flatMap(({ sets }) => sets.flatMap(({ side }) => side ?? [])));
  const work = runs.filter(({ sets }) => !leads(sets[0]?.kind)).flatMap((run) => inSetsOf(book, run, sides.size > 1));
  const first = runs.flatMap(({ text, sets }) => {
    const kind = sets[0]?.kind;
    return leads(kind) ? [before[kind](text)] : [];
  });
  return first.length > 0 && work.length > 0
    ? leadsTo(first.join(', '), work.join('; '))
    : [first.join(', '), work.join('; ')].filter((part) => part !== '').join(', ');
}

/** `16 kg × 8, 3 sets each side`; each side by itself where the other does otherwise. */
function inSetsOf({ labels, words }: Book, { text, sets }: Run, oneSided: boolean): readonly string[] {
  const [first, second] = sidesIn(sets);
  if (first === undefined) return [words.inSets(text, sets.length, false)];
  const countOf = (side: string): number => sets.filter((set) => set.side === side).length;
  if (second !== undefined && countOf(first) === countOf(second)) return [words.inSets(text, countOf(first), true)];
  const ofSide = (side: 'left' | 'right'): string => {
    const said = words.inSets(text, countOf(side), false);
    return oneSided ? words.ofSide(labels[side], said) : said;
  };
  return sidesIn(sets).map(ofSide);
}

const sidesIn = (sets: Run['sets']) => [...new Set(sets.flatMap(({ side }) => side ?? []))];

/** How many sets of a run: `3 sets`, `3 sets each side, left first`; by side where the sides differ. */
export function CountedSets({ book, run }: { readonly book: Book; readonly run: Run }) {
  const { labels, words } = book;
  const sides = sidesIn(run.sets);
  const countOf = (side: (typeof sides)[number]): number => run.sets.filter((set) => set.side === side).length;
  const [first, second] = sides;
  const said =
    first === undefined
      ? words.counted(run.sets.length)
      : second !== undefined && countOf(first) === countOf(second)
        ? words.counted(countOf(first), labels[first])
        : sides.map((side) => `${labels[side]}: ${words.counted(countOf(side))}`).join(', ');
  return <p class="sets">{said}</p>;
}

/** Lines that the tally of an exercise takes up beside it, once it is drawn on the phone: a row for each side. */
export const tallyLines = ({ tally }: Cell): number => tally.reduce((sum, { strokes }) => sum + linesOf(strokes), 0);
