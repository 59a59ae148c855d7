/** Sets of one exercise on one day: figures set large, each set counted, and the tally that belongs to them. */
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

/** `16 kg × 8` with the unit set smaller than the figures. */
export function Figure({ set }: { readonly set: BookletSet }) {
  const unit = set.load?.unit ?? '';
  const at = unit === '' ? -1 : set.text.indexOf(unit, set.load?.figure.length ?? 0);
  if (at < 0) return <>{set.text}</>;
  return (
    <>
      {set.text.slice(0, at)}
      <span class="unit">{unit}</span>
      {set.text.slice(at + unit.length)}
    </>
  );
}

export function SetsText({ cell }: { readonly cell: Cell }) {
  return runsOf(cell).map(({ text, sets }, i) => (
    <span class="figure-line">
      {i > 0 ? ' ' : ''}
      {sets[0] ? <Figure set={sets[0]} /> : text}
    </span>
  ));
}

const sideName = (book: Book, set: BookletSet): string => (set.side === undefined ? '' : book.labels[set.side]);

const countOf = (cell: Cell, set: BookletSet): number =>
  cell.sets.filter(({ kind, side }) => kind === set.kind && side === set.side).length;

/** Every set of a run: its place among its kind, its side, and, for one who listens, what it asks. */
export function CountedSets({ book, cell, run }: { readonly book: Book; readonly cell: Cell; readonly run: Run }) {
  return (
    <ol class="sets">
      {run.sets.map((set) => (
        <li data-set={set.key} data-kind={set.kind}>
          <span class="counted">
            {set.side === undefined ? '' : `${sideName(book, set)}: `}
            {book.labels.set.toLocaleLowerCase(book.booklet.language)} {set.round} {book.labels.of} {countOf(cell, set)}
          </span>
          <span class="heard">, {set.spoken}</span>
        </li>
      ))}
    </ol>
  );
}

export interface TurnTallyProps {
  readonly book: Book;
  readonly cell: Cell;
  /** With the words beside the marks, or the marks alone where a list explains itself. */
  readonly shown: 'marks' | 'words';
}

export function TurnTally({ book, cell, shown }: TurnTallyProps) {
  const sides = [...new Set(cell.sets.map(({ side }) => side))];
  return (
    <div class="margin">
      {cell.tally.map(({ label, strokes }, row) => {
        const own = cell.tally.length === 1 ? cell.sets : cell.sets.filter(({ side }) => side === sides[row]);
        const marks = Array.from({ length: strokes }, (_, i) => ({
          mark: 'to do' as const,
          key: own[i]?.key ?? `${label}/${i}`,
        }));
        return (
          <div class="tally-row">
            <Tally marks={marks} label={book.words.tallyToDo(label, strokes)} />
            {shown === 'words' ? (
              <span class="tally-word" aria-hidden="true">
                {label === '' ? book.labels['to-do'] : label}
              </span>
            ) : null}
          </div>
        );
      })}
    </div>
  );
}
