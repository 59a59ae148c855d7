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

/** The figures of a day at a glance: what is lifted before the work is left to the page itself. */
export const figuresAtAGlance = (cell: Cell): string =>
  runsOf(cell)
    .filter(({ sets }) => sets[0]?.kind !== 'warm-up')
    .map(({ text }) => text)
    .join(', ');

const countOf = (cell: Cell, set: BookletSet): number =>
  cell.sets.filter(({ kind, side }) => kind === set.kind && side === set.side).length;

/**
 * A set's key in three places, since a page holds hundreds: what an exercise's sets share on one day stands on their
 * list of doses, the kind on the run, side and ordinal on the set; a set of both sides has its ordinal alone.
 */
export const sharedKey = (cell: Cell): string => (cell.sets[0]?.key ?? '').split('/').slice(0, -3).join('/');
const ownKey = (set: BookletSet): string => {
  const parts = set.key.split('/');
  const ordinal = parts.at(-1) ?? '';
  return set.side === undefined ? ordinal : `${set.side}/${ordinal}`;
};

/** Sets of a run by their round: both sides of a round stand in one line, the weaker side first. */
function roundsOf(run: Run): readonly (readonly BookletSet[])[] {
  const rounds = new Map<number, BookletSet[]>();
  for (const set of run.sets) {
    const own = rounds.get(set.round);
    if (own) own.push(set);
    else rounds.set(set.round, [set]);
  }
  return [...rounds.values()];
}

/** Every set of a run: `set 1 of 3`, or `set 1 of 3: left, right`. */
export function CountedSets({ book, cell, run }: { readonly book: Book; readonly cell: Cell; readonly run: Run }) {
  const small = (text: string): string => text.toLocaleLowerCase(book.booklet.language);
  return (
    <ol class="sets" data-kind={run.sets[0]?.kind}>
      {roundsOf(run).map((sets) => {
        const first = sets[0];
        if (!first) return null;
        const counted = `${book.labels.set} ${first.round} ${book.labels.of} ${countOf(cell, first)}`;
        if (first.side === undefined) return <li data-set={ownKey(first)}>{counted}</li>;
        return (
          <li>
            {counted}:{' '}
            {sets.map((set, i) => (
              <>
                {i > 0 ? ', ' : ''}
                <span data-set={ownKey(set)}>{set.side === undefined ? '' : small(book.labels[set.side])}</span>
              </>
            ))}
          </li>
        );
      })}
    </ol>
  );
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
