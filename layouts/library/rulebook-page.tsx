/** The rulebook: every rule in plain words, room by room, each under its own name so that a reason can lead to it. */
import type { ComponentChildren } from 'preact';
import type { RulebookEntry, RulebookRoom } from '../../src/model/rulebook.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import {
  inForce,
  type RulebookWords,
  sayBound,
  sayRule,
  sayRuleTitle,
  sayRuleValue,
} from '../../src/words/rulebook-words.js';
import { sayFullDate } from '../../src/words/say-date.js';
import type { Speech } from '../../src/words/speech.js';
import { InnerPage } from './inner-page.js';

export interface RulebookProps {
  readonly rulebook: readonly RulebookRoom[];
  readonly words: LibraryWords;
  readonly book: RulebookWords;
  readonly speech: Speech;
}

const Fact = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

function Rule({ of, book, speech }: Pick<RulebookProps, 'book' | 'speech'> & { readonly of: RulebookEntry }) {
  const { rule, bounds } = of;
  const value = sayRuleValue(rule, rule.value, bounds, speech);
  const { overridden, standing } = rule;
  const source =
    standing === 'practice'
      ? book.standing.practice
      : `${book.standing[standing]}: ${rule.source}${rule.locator === '' ? '' : ` (${rule.locator})`}`;
  return (
    <article class="rule" id={rule.id}>
      <h3>{sayRuleTitle(rule.id)}</h3>
      <p>{sayRule(rule, speech)}</p>
      <dl class="facts">
        {value === '' ? null : <Fact name={book.value}>{value}</Fact>}
        {overridden === undefined ? null : (
          <Fact name={book.own}>
            <strong>{book.because(sayRuleValue(rule, inForce(rule), bounds, speech), overridden.reason)}</strong>
          </Fact>
        )}
        <Fact name={book.from}>{source}</Fact>
        <Fact name={book.lookedAt}>{sayFullDate(rule.date, speech)}</Fact>
        {bounds === null ? null : (
          <Fact name={book.mayBeSet}>
            {book.bounds(
              rule.id,
              sayBound(rule, bounds.least, bounds, speech),
              sayBound(rule, bounds.most, bounds, speech),
            )}
          </Fact>
        )}
      </dl>
    </article>
  );
}

export function RulebookPage({ rulebook, words, book, speech }: RulebookProps) {
  return (
    <InnerPage title={book.title} words={words}>
      {book.intro.map((text) => (
        <p>{text}</p>
      ))}
      <nav aria-label={book.contents}>
        <ul class="links">
          {rulebook.map(({ room }) => (
            <li>
              <a href={`#room-${room}`}>{book.rooms[room].head}</a>
            </li>
          ))}
        </ul>
      </nav>
      {rulebook.map(({ room, entries }) => (
        <section aria-labelledby={`room-${room}`}>
          <h2 id={`room-${room}`}>{book.rooms[room].head}</h2>
          <p>{book.rooms[room].about}</p>
          <div class="rules">
            {entries.map((of) => (
              <Rule of={of} book={book} speech={speech} />
            ))}
          </div>
        </section>
      ))}
    </InnerPage>
  );
}
