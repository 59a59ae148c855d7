/** Sets of one exercise on one day: figures set large, their sets counted, and the tally that belongs to them. */
import type { BookletSet, Cell } from '../../src/model/booklet.js';
import type { Book } from './leaves.js';
import { Tally } from './tally.js';

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
  return <>{parts.map((part, i) => (i % 2 === 1 ? <span class="unit">{part}</span> : part))}</>;
}

/** Sets made before the work they lead to, and named so wherever they stand beside it. */
const leads = (kind: BookletSet['kind'] | undefined): kind is 'trial' | 'feeler' | 'test' =>
  kind === 'trial' || kind === 'feeler' || kind === 'test';

/** The figures of a day at a glance: what is lifted to warm up is left to the page itself. */
export function figuresAtAGlance(book: Book, cell: Cell): string {
  const { before, leadsTo } = book.words;
  const runs = runsOf(cell).filter(({ sets }) => sets[0]?.kind !== 'warm-up');
  const sides = new Set(runs.flatMap(({ sets }) => sets.flatMap(({ side }) => side ?? [])));
  const work = runs
    .filter(({ sets }) => !leads(sets[0]?.kind))
    .map(({ sets, text }) => {
      const own = [...new Set(sets.flatMap(({ side }) => side ?? []))];
      const [only] = own;
      return sides.size > 1 && own.length === 1 && only !== undefined
        ? book.words.ofSide(book.labels[only], text)
        : text;
    });
  const first = runs.flatMap(({ text, sets }) => {
    const kind = sets[0]?.kind;
    return leads(kind) ? [before[kind](text)] : [];
  });
  return first.length > 0 && work.length > 0
    ? leadsTo(first.join(', '), work.join(', '))
    : [...first, ...work].join(', ');
}

/** How many sets of a run: `3 sets`, `3 sets each side, left first`; by side where the sides differ. */
export function CountedSets({ book, run }: { readonly book: Book; readonly run: Run }) {
  const { labels, words } = book;
  const sides = [...new Set(run.sets.flatMap(({ side }) => side ?? []))];
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

/** The tally of one exercise on one day: a row for both sides together, or one for each. */
export function TurnTally({ book, cell }: { readonly book: Book; readonly cell: Cell }) {
  const counted = cell.sets.filter(({ kind }) => kind !== 'warm-up');
  const sides = [...new Set(counted.map(({ side }) => side))];
  return (
    <div class="margin">
      {cell.tally.map(({ label, strokes }, row) => {
        const own = cell.tally.length === 1 ? counted : counted.filter(({ side }) => side === sides[row]);
        const marks = Array.from({ length: strokes }, (_, i) => ({
          mark: 'to do' as const,
          key: own[i]?.key ?? `${label}/${i}`,
        }));
        return (
          <p>
            <Tally marks={marks} label="" />
            {label === '' ? book.labels['to-do'] : label}
          </p>
        );
      })}
    </div>
  );
}

/** The same in a list: the marks alone, one row after the other, read as a number of sets. */
export function ListTally({ book, cell }: { readonly book: Book; readonly cell: Cell }) {
  const keys = cell.sets.filter(({ kind }) => kind !== 'warm-up').map(({ key }) => key);
  return (
    <div>
      {cell.tally.map(({ label, strokes }, row) => (
        <Tally
          marks={Array.from({ length: strokes }, (_, i) => ({
            mark: 'to do' as const,
            key: keys[row + i * cell.tally.length] ?? `${label}/${i}`,
          }))}
          label={book.words.tallyToDo(label, strokes)}
        />
      ))}
    </div>
  );
}
