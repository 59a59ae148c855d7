/** The front of the booklet: cover, how to use it, safety, calendar; and the record at the end. */
import type { ComponentChildren } from 'preact';
import type { CalendarPart, CoverPart, HowToPart, Notice, RecordPart, SafetyPart } from '../../src/model/booklet.js';
import { Bullets, Paragraphs, Words } from '../lines.js';
import { LeafFrame } from './leaf.js';
import { type Book, exerciseLeafId, type Leaf, weekLeafId } from './leaves.js';
import { OwnName } from './own-name.js';
import { Tally, WeekFeet } from './tally.js';

interface Props<Part> {
  readonly book: Book;
  readonly leaf: Leaf;
  readonly part: Part;
}

function Contents({ book }: { readonly book: Book }) {
  const first = book.leaves.filter(({ kind }) => kind === 'how-to' || kind === 'safety' || kind === 'calendar');
  const last = book.leaves.filter(({ kind }) => kind === 'partner' || kind === 'record');
  const entry = (id: string, title: ComponentChildren, beside = '') => (
    <li>
      <a href={`#${id}`}>
        <span>{title}</span>
        {beside === '' ? null : <span class="beside">{beside}</span>}
      </a>
    </li>
  );
  return (
    <nav aria-labelledby="contents-head">
      <h3 id="contents-head">{book.labels.contents}</h3>
      <ul class="index">
        {first.map(({ id, title }) => entry(id, title))}
        {book.weeks.map(({ id, week, easy, days }) =>
          entry(id, book.words.weekInList(week, easy), days[0]?.head.dateText),
        )}
        {[...book.exercises.values()].map(({ id, title }) =>
          entry(exerciseLeafId(id), <OwnName book={book} name={title} />),
        )}
        {last.map(({ id, title }) => entry(id, title))}
      </ul>
    </nav>
  );
}

/** First of all, before whose booklet it is. */
function CoverNotice({ notice: { kind, title, lines } }: { readonly notice: Notice }) {
  return (
    <div class={kind === 'withdrawn' ? 'stop notice' : 'notice'} role="note">
      <p class="lead">{title}</p>
      {lines.map((line) => (
        <p>{line}</p>
      ))}
    </div>
  );
}

export function Cover({ book, leaf, part }: Props<CoverPart>) {
  return (
    <LeafFrame book={book} leaf={leaf}>
      {part.notice === undefined ? null : <CoverNotice notice={part.notice} />}
      <p class="booklet-title">{part.title}</p>
      <h2>{part.client}</h2>
      {part.weeks.length === 0 ? null : (
        <div class="weeks-to-come">
          <WeekFeet weeks={part.weeks} />
        </div>
      )}
      <p class="programme">
        <OwnName book={book} name={part.programme} />
      </p>
      <p class="dates">{part.dates}</p>
      <p class="soft">
        {part.studio}
        <br />
        {part.coach}
        <br />
        {part.edition}
      </p>
      <p class="said">{part.notMedical}</p>
      {book.leaves.length === 1 ? null : (
        <>
          <p class="said reading-copy">{book.words.readingCopy}</p>
          <Contents book={book} />
        </>
      )}
    </LeafFrame>
  );
}

export function HowTo({ book, leaf, part }: Props<HowToPart>) {
  return (
    <LeafFrame book={book} leaf={leaf}>
      <Paragraphs lines={part.paragraphs} />
      <ul class="key">
        {part.key.map(({ mark, text }) => (
          <li>
            <span>{text}</span>
            <Tally marks={[{ mark, key: `key/${mark}` }]} label="" />
          </li>
        ))}
      </ul>
      <p class="reading-copy">{book.words.readingCopy}</p>
    </LeafFrame>
  );
}

/** Back to where one came from, which only the script can know: it fills in the address and the name. */
const Return = ({ book }: { readonly book: Book }) => (
  <a href="#cover">
    <span>
      {book.words.backTo} <span class="from" />
    </span>
  </a>
);

export function Safety({ book, leaf, part }: Props<SafetyPart>) {
  return (
    <LeafFrame book={book} leaf={leaf}>
      <ul class="ways near">
        <li>
          <a href="#pain">{book.words.painScale}</a>
        </li>
        <li class="return" hidden>
          <Return book={book} />
        </li>
      </ul>
      <div class="stop emergency">
        <h3>{part.emergencyTitle}</h3>
        <Bullets lines={part.emergency} />
        <p class="call">{part.call}</p>
      </div>
      <h3 id="pain">{part.painTitle}</h3>
      <table class="pairs">
        <tbody>
          {part.pain.map(({ degree, text }) => (
            <tr>
              <th scope="row">{degree}</th>
              <td>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="ways return" hidden>
        <Return book={book} />
      </p>
      <Paragraphs lines={part.paragraphs} />
    </LeafFrame>
  );
}

export function Calendar({ book, leaf, part }: Props<CalendarPart>) {
  const leafOf = (session: string, date: string): string =>
    book.weeks.flatMap(({ days }) => days).find((day) => day.session.id === session && day.head.date === date)?.id ??
    leaf.id;
  return (
    <LeafFrame book={book} leaf={leaf}>
      <Paragraphs lines={part.notes} />
      {part.weeks.map(({ week, label, easy, empty, sessions }) => (
        <section class="calendar-week">
          <h3>
            {sessions.length === 0 ? label : <a href={`#${weekLeafId(week)}`}>{label}</a>}
            {easy ? <span class="easy"> {book.labels['easy-week']}</span> : null}
          </h3>
          {sessions.length === 0 ? (
            <p>{empty}</p>
          ) : (
            <ul class="index">
              {sessions.map(({ session, name, date, dateText, test }) => (
                <li>
                  <a href={`#${leafOf(session, date)}`}>
                    <span>{name}</span>
                    <span class="beside">{test === undefined ? dateText : `${dateText}. ${test}`}</span>
                  </a>
                </li>
              ))}
            </ul>
          )}
        </section>
      ))}
    </LeafFrame>
  );
}

export function Record({ book, leaf, part }: Props<RecordPart>) {
  return (
    <LeafFrame book={book} leaf={leaf}>
      {part.paragraphs.map((line) => (
        <p>
          <Words line={line} />
        </p>
      ))}
    </LeafFrame>
  );
}
