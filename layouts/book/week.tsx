/** One week at a glance, the opening of a session, and its end. */

import type { Cell, Drill, WeekText } from '../../src/model/booklet.js';
import { plainLine } from '../../src/model/prose.js';
import { Bullets, Words } from '../lines.js';
import { GateAtAGlance } from './gate.js';
import { LeafFrame, Way } from './leaf.js';
import { type Book, type Day, exerciseLeafId, type Leaf, type WeekOfDays, weekLeafId } from './leaves.js';
import { OwnName } from './own-name.js';
import { Ranges } from './ranges.js';
import { figuresAtAGlance, tallyLines } from './sets.js';

/** Above so many lines none takes more room: who does as many sets sees the rest come. */
const MOST_LINES = 4;

/** Of one line there is room beside every exercise; each side has its name beneath it. */
function roomFor(cell: Cell): string | undefined {
  const lines = Math.min(tallyLines(cell), MOST_LINES);
  const room = [
    ...(lines > 1 ? [`lines-${lines}`] : []),
    ...(cell.sets.some(({ side }) => side !== undefined) ? ['sided'] : []),
  ];
  return room.length === 0 ? undefined : room.join(' ');
}

/** The exercises of one day with their figures. In a week the phone draws the tally in the margin, for which room is kept. */
function TurnList({ book, day }: { readonly book: Book; readonly day: Day }) {
  return (
    <ol class="turns">
      {day.turns.map(({ id, row, cell }) => (
        <li class={roomFor(cell)}>
          <a href={`#${id}`}>
            <span class="name">
              <OwnName book={book} name={cell.version === '' ? row.name : cell.version} />
            </span>
            {cell.gate ? (
              <GateAtAGlance book={book} gate={cell.gate} figures={figuresAtAGlance(book, cell)} />
            ) : (
              <b>
                <Ranges text={figuresAtAGlance(book, cell)} />
              </b>
            )}
          </a>
        </li>
      ))}
    </ol>
  );
}

export function Week({ book, leaf, week }: { readonly book: Book; readonly leaf: Leaf; readonly week: WeekOfDays }) {
  return (
    <LeafFrame
      book={book}
      leaf={leaf}
      where={week.easy ? <p class="where">{book.labels['easy-week']}</p> : undefined}
      ways={<Way to="cover">{book.words.toContents}</Way>}
    >
      {week.days.map((day) => (
        <section class="day">
          <h3>
            <a href={`#${day.id}`}>{day.session.title}</a>
            <span class="beside">{day.head.dateText}</span>
          </h3>
          <TurnList book={book} day={day} />
        </section>
      ))}
    </LeafFrame>
  );
}

const Where = ({ book, day }: { readonly book: Book; readonly day: Day }) => (
  <p class="where">
    {book.labels.week} {day.head.week}, {day.head.dateText}
    {day.head.easy ? `. ${book.labels['easy-week']}` : ''}
  </p>
);

/** A warm-up or cool-down, to be worked down: words as they are said, and a line for each exercise that leads to its page. */
function Drills({ book, drills }: { readonly book: Book; readonly drills: readonly Drill[] }) {
  const first = drills.findIndex(({ name }) => name !== '');
  const last = drills.findLastIndex(({ name }) => name !== '');
  const [before, exercises, after] =
    first < 0 ? [drills, [], []] : [drills.slice(0, first), drills.slice(first, last + 1), drills.slice(last + 1)];
  return (
    <>
      <InWords drills={before} />
      {exercises.length === 0 ? null : (
        <ul class="index">
          {exercises.map((drill) => (
            <li>
              <DrillLine book={book} drill={drill} />
            </li>
          ))}
        </ul>
      )}
      <InWords drills={after} />
    </>
  );
}

function InWords({ drills }: { readonly drills: readonly Drill[] }) {
  const [only, ...more] = drills;
  if (only === undefined) return null;
  return more.length === 0 ? <p>{only.text}</p> : <Bullets lines={drills.map(({ text }) => plainLine(text))} />;
}

function DrillLine({ book, drill }: { readonly book: Book; readonly drill: Drill }) {
  const page = drill.exercise === undefined ? undefined : book.exercises.get(drill.exercise);
  const said = (
    <>
      <span>
        <OwnName book={book} name={drill.name} />
      </span>{' '}
      <span class="dose">{drill.text}</span>
    </>
  );
  return page ? <a href={`#${exerciseLeafId(page.id)}`}>{said}</a> : said;
}

const ofWeek = (texts: readonly WeekText[], week: number): readonly string[] =>
  texts.filter((one) => one.week === week).map(({ text }) => text);

export function Session({ book, leaf, day }: { readonly book: Book; readonly leaf: Leaf; readonly day: Day }) {
  const { session } = day;
  return (
    <LeafFrame
      book={book}
      leaf={leaf}
      where={<Where book={book} day={day} />}
      ways={
        <>
          <Way to={weekLeafId(day.head.week)}>{book.labels['whole-week']}</Way>
          <Way to="safety">{book.words.somethingHurts}</Way>
        </>
      }
    >
      <p class="minutes">{session.minutes}</p>
      {session.workOnThis ? (
        <p class="work-on" dir="auto">
          <Words line={session.workOnThis} />
        </p>
      ) : null}
      {ofWeek(session.notes, day.head.week).map((text) => (
        <p>{text}</p>
      ))}
      {ofWeek(session.short, day.head.week).map((text) => (
        <p class="short">
          <strong>{book.labels['bad-day']}:</strong> {text}
        </p>
      ))}
      {session.warmUp.length === 0 ? null : (
        <section>
          <h3>{book.labels['warm-up']}</h3>
          <Drills book={book} drills={session.warmUp} />
        </section>
      )}
      <section>
        <h3>{book.words.alsoToday}</h3>
        <TurnList book={book} day={day} />
      </section>
      <p class="said">{session.safety}</p>
    </LeafFrame>
  );
}

export function CoolDown({ book, leaf, day }: { readonly book: Book; readonly leaf: Leaf; readonly day: Day }) {
  return (
    <LeafFrame
      book={book}
      leaf={leaf}
      where={
        <p class="where">
          {day.session.title}. {book.labels.week} {day.head.week}
        </p>
      }
      ways={
        <>
          <Way to={weekLeafId(day.head.week)}>{book.labels['whole-week']}</Way>
          <Way to="safety">{book.words.somethingHurts}</Way>
        </>
      }
    >
      <Drills book={book} drills={day.session.coolDown} />
    </LeafFrame>
  );
}
