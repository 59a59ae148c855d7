/** One exercise of one session on one day: what the client looks at while training. */
import type { BookletLabel, Cell, SessionRow } from '../../src/model/booklet.js';
import type { Line } from '../../src/model/prose.js';
import { Bullets, Words } from '../lines.js';
import { Gate, IfEarned } from './gate.js';
import { LeafFrame, Way } from './leaf.js';
import { type Book, type Day, exerciseLeafId, type Leaf, type Turn, weekLeafId } from './leaves.js';
import { OwnName } from './own-name.js';
import { CountedSets, Figure, type Run, runsOf } from './sets.js';

/** What is said during the set is said of the version planned this week, where it has a page of its own. */
function toldOf(book: Book, row: SessionRow, cell: Cell): { cues: readonly Line[]; stop: readonly Line[] } {
  const page = cell.exercise === row.exercise ? undefined : book.exercises.get(cell.exercise);
  if (!page) return { cues: row.cues, stop: row.stop };
  const cues = page.sections.find(({ name }) => name === 'cues')?.lines ?? [];
  return { cues: cues.slice(0, 3).map(({ text }) => text), stop: page.stop };
}

function Easier({ book, row, week }: { readonly book: Book; readonly row: SessionRow; readonly week: number }) {
  if (row.easier.length === 0) return null;
  return (
    <details class="easier">
      <summary>{book.words.easierToday}</summary>
      <ul>
        {row.easier.map(({ name, exercise, when, doses }) => {
          const dose = doses.find((one) => one.week === week)?.text ?? '';
          const page = exercise === undefined ? undefined : book.exercises.get(exercise);
          return (
            <li>
              {page ? (
                <a href={`#${exerciseLeafId(page.id)}`}>
                  <OwnName book={book} name={name} />
                </a>
              ) : (
                <strong>
                  <OwnName book={book} name={name} />
                </strong>
              )}
              {when === '' ? '' : `, ${when}`}
              {dose === '' ? null : (
                <>
                  : <b>{dose}</b>
                </>
              )}
            </li>
          );
        })}
      </ul>
    </details>
  );
}

/** A question with a line behind it: on paper it is written on, here it says what to remember. */
const Note = ({ text }: { readonly text: string }) => (
  <p class="note">
    {text} <span class="blank" />
  </p>
);

/** What the test is, and the number it is to find. */
const Test = ({ test }: { readonly test: NonNullable<Cell['test']> }) => (
  <div class="test">
    <p class="trial">{test.says}</p>
    {test.notes.map((text) => (
      <Note text={text} />
    ))}
  </div>
);

function Choose({ book, choose }: { readonly book: Book; readonly choose: NonNullable<Cell['choose']> }) {
  const head = (label: BookletLabel) => <th scope="col">{book.labels[label]}</th>;
  const table = (
    <table class="pairs choose">
      <caption>{choose.intro}</caption>
      <thead>
        <tr>
          {head('if-it-felt')}
          {head('use')}
        </tr>
      </thead>
      <tbody>
        {choose.rows.map(({ felt, use }) => (
          <tr>
            <td>{felt}</td>
            <td class="figures">{use}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
  return (
    <div>
      {table}
      {choose.note === undefined ? null : <Note text={choose.note} />}
    </div>
  );
}

/** Characters that stand in one line of the largest figures; what is longer is set smaller, in two lines. */
const MOST_IN_LARGE = 16;

function RunOfSets({ book, cell, run }: { readonly book: Book; readonly cell: Cell; readonly run: Run }) {
  const first = run.sets[0];
  if (!first) return null;
  // What a feeler set leads to has no load of its own yet: the set to be lifted stands large, not the one to be found.
  const open = first.kind === 'work' && cell.sets.some(({ kind }) => kind === 'feeler');
  const wordy = first.text.length > MOST_IN_LARGE;
  const lesser = first.kind === 'trial' || first.kind === 'warm-up' || open || wordy;
  return (
    <>
      {first.kind === 'warm-up' ? <p class="kind">{book.labels['warm-up']}</p> : null}
      {first.kind === 'feeler' ? <p class="kind">{book.words.feeler}</p> : null}
      {first.kind === 'trial' && cell.trial !== undefined ? <p class="trial">{cell.trial}</p> : null}
      {first.kind === 'work' && cell.gate ? <IfEarned book={book} /> : null}
      <p class={lesser ? 'load lesser' : 'load'}>
        <span aria-hidden="true">
          <Figure set={first} />
        </span>
        <span class="heard">{first.spoken}</span>
      </p>
      {first.load && first.load.pieces !== '' ? <p class="pieces">{first.load.pieces}</p> : null}
      <CountedSets book={book} run={run} />
      {first.kind === 'test' && cell.test ? <Test test={cell.test} /> : null}
    </>
  );
}

/** What is lifted to warm up stands above. */
function Doses({ book, cell }: { readonly book: Book; readonly cell: Cell }) {
  const runs = runsOf(cell);
  const part = (name: string, own: readonly Run[]) =>
    own.length === 0 ? null : (
      <div class={name}>
        {own.map((run) => (
          <RunOfSets book={book} cell={cell} run={run} />
        ))}
      </div>
    );
  return (
    <>
      {part(
        'doses before',
        runs.filter(({ sets }) => sets[0]?.kind === 'warm-up'),
      )}
      {part(
        'doses',
        runs.filter(({ sets }) => sets[0]?.kind !== 'warm-up'),
      )}
    </>
  );
}

/** How it is done, in the order it matters: effort, tempo, sides where the sets do not say them, the circuit, rest. */
function Manner({ row, cell }: { readonly row: SessionRow; readonly cell: Cell }) {
  const tempo = cell.tempo === '' ? '' : `${cell.tempo.slice(0, 1).toUpperCase()}${cell.tempo.slice(1)}.`;
  const sides = cell.sets.some(({ side }) => side !== undefined) ? '' : row.sides;
  // A clock or a circuit that leads it is told again where one trains.
  const group = row.group === '' ? '' : <span class="led">{row.group}</span>;
  const said = [tempo, sides, group, row.rest].filter((part) => part !== '');
  return (
    <div class="manner">
      {cell.effort === '' ? null : <p class="effort">{cell.effort}</p>}
      {cell.how.map((text) => (
        <p>{text}</p>
      ))}
      {said.length === 0 ? null : <p>{said.flatMap((part, i) => (i === 0 ? [part] : [' ', part]))}</p>}
    </div>
  );
}

export interface TurnProps {
  readonly book: Book;
  readonly leaf: Leaf;
  readonly day: Day;
  readonly turn: Turn;
  readonly place: number;
}

export function TurnLeaf({ book, leaf, day, turn, place }: TurnProps) {
  const { row, cell } = turn;
  const { cues, stop } = toldOf(book, row, cell);
  const { labels } = book;
  return (
    <LeafFrame
      book={book}
      leaf={leaf}
      where={
        <p class="where">
          {book.words.inWeek(day.session.title, day.head.week)}{' '}
          <span class="beside">{`${labels.exercise} ${place} ${labels.of} ${day.turns.length}`}</span>
        </p>
      }
      ways={
        <>
          {book.exercises.has(cell.exercise) ? (
            <Way to={exerciseLeafId(cell.exercise)}>{labels['whole-exercise']}</Way>
          ) : null}
          <Way to={weekLeafId(day.head.week)}>{labels['whole-week']}</Way>
        </>
      }
    >
      <Doses book={book} cell={cell} />
      {cell.gate ? <Gate gate={cell.gate} /> : null}
      <Manner row={row} cell={cell} />
      {cell.choose ? <Choose book={book} choose={cell.choose} /> : null}
      <ol class="cues">
        {cues.map((line) => (
          <li>
            <Words line={line} />
          </li>
        ))}
      </ol>
      <Easier book={book} row={row} week={day.head.week} />
      <p class="ways hurts">
        <a href="#safety">{book.words.somethingHurts}</a>
      </p>
      {stop.length === 0 ? null : (
        <div class="stop">
          <h3>{labels.stop}</h3>
          <Bullets lines={stop} />
        </div>
      )}
      {cell.why.length === 0 ? null : (
        <details class="why">
          <summary>{labels.why}</summary>
          {cell.why.map((text) => (
            <p>{text}</p>
          ))}
        </details>
      )}
    </LeafFrame>
  );
}
