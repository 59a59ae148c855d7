/** What whoever stands beside the client counts, watches and says. It leads nowhere else: it stands on a page of its own too. */
import type { Booklet, PartnerPart, Watched } from '../../src/model/booklet.js';
import { Bullets, Paragraphs } from '../lines.js';
import { Faults } from './faults.js';
import { LeafFrame } from './leaf.js';
import type { Book, Leaf } from './leaves.js';
import { OwnName } from './own-name.js';

type Named = Pick<Book, 'booklet' | 'labels'>;

const placeOf = ({ exercise }: Pick<Watched, 'exercise'>): string => `partner--${exercise}`;

function Beside({ book, part, of }: { readonly book: Named; readonly part: PartnerPart; readonly of: Watched }) {
  return (
    <section id={placeOf(of)}>
      <h3>
        <OwnName book={book} name={of.name} />
      </h3>
      <p class="lead">{of.count.join(' ')}</p>
      {of.watch.length === 0 ? null : <Bullets lines={of.watch} />}
      {of.faults.length === 0 ? null : <Faults labels={book.labels} faults={of.faults} />}
      {of.stop.length === 0 ? null : (
        <div class="stop">
          <h4>{part.stopTitle}</h4>
          <Bullets lines={of.stop} />
        </div>
      )}
    </section>
  );
}

function PartnerPage({ book, part }: { readonly book: Named; readonly part: PartnerPart }) {
  return (
    <>
      <Paragraphs lines={part.paragraphs} />
      <div class="stop">
        <h3>{part.emergencyTitle}</h3>
        <Bullets lines={part.emergency} />
        <p class="lead">{part.call}</p>
      </div>
      {part.sessions.map(({ title, exercises }) => (
        <section>
          <h3>{title}</h3>
          <ul class="index">
            {part.watched
              .filter(({ exercise }) => exercises.includes(exercise))
              .map((of) => (
                <li>
                  <a href={`#${placeOf(of)}`}>
                    <span>
                      <OwnName book={book} name={of.name} />
                    </span>
                  </a>
                </li>
              ))}
          </ul>
        </section>
      ))}
      {part.watched.map((of) => (
        <Beside book={book} part={part} of={of} />
      ))}
    </>
  );
}

interface Props {
  readonly book: Book;
  readonly leaf: Leaf;
  readonly part: PartnerPart;
}

export const PartnerLeaf = ({ book, leaf, part }: Props) => (
  <LeafFrame book={book} leaf={leaf}>
    <PartnerPage book={book} part={part} />
  </LeafFrame>
);

/** To be handed over: nothing else of the booklet is in it. */
export const PartnerAlone = ({ booklet, part }: { readonly booklet: Booklet; readonly part: PartnerPart }) => (
  <div class="book" lang={booklet.language} dir={booklet.direction}>
    <h1 class="heard">{booklet.author}</h1>
    <article class="leaf partner">
      <div class="sheet">
        <header>
          <h2>{part.title}</h2>
        </header>
        <PartnerPage book={{ booklet, labels: booklet.labels }} part={part} />
      </div>
    </article>
  </div>
);
