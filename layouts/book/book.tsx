/** The whole booklet as one run of leaves. A new kind of leaf does not compile until it is drawn here. */
import type { VNode } from 'preact';
import { FigureStore } from '../figure.js';
import { nearTheirLike } from '../like-drawings.js';
import { drawnId, ExercisePage } from './exercise.js';
import { Calendar, Cover, HowTo, Record, Safety } from './front.js';
import type { Book, Leaf } from './leaves.js';
import { PartnerLeaf } from './partner.js';
import { TurnLeaf } from './turn.js';
import { CoolDown, Session, Week } from './week.js';

function drawLeaf(book: Book, leaf: Leaf): VNode {
  switch (leaf.kind) {
    case 'cover':
      return <Cover book={book} leaf={leaf} part={leaf.part} />;
    case 'how-to':
      return <HowTo book={book} leaf={leaf} part={leaf.part} />;
    case 'safety':
      return <Safety book={book} leaf={leaf} part={leaf.part} />;
    case 'calendar':
      return <Calendar book={book} leaf={leaf} part={leaf.part} />;
    case 'week':
      return <Week book={book} leaf={leaf} week={leaf.week} />;
    case 'session':
      return <Session book={book} leaf={leaf} day={leaf.day} />;
    case 'turn':
      return <TurnLeaf book={book} leaf={leaf} day={leaf.day} turn={leaf.turn} place={leaf.place} />;
    case 'cool-down':
      return <CoolDown book={book} leaf={leaf} day={leaf.day} />;
    case 'exercise':
      return <ExercisePage book={book} leaf={leaf} part={leaf.part} />;
    case 'partner':
      return <PartnerLeaf book={book} leaf={leaf} part={leaf.part} />;
    case 'record':
      return <Record book={book} leaf={leaf} part={leaf.part} />;
  }
}

export function BookBody({ book }: { readonly book: Book }) {
  const { booklet, inPage, drawings } = book;
  const rows = inPage.flatMap((leaf) => {
    const drawn = leaf.kind === 'exercise' ? drawings.get(leaf.part.id) : undefined;
    return drawn && leaf.kind === 'exercise' ? [{ drawing: drawn.drawing, id: drawnId(book, leaf.part.id) }] : [];
  });
  return (
    <div
      class="book"
      lang={booklet.language}
      dir={booklet.direction}
      data-back={booklet.labels.previous}
      data-on={booklet.labels.next}
    >
      {/* Said at the top of whatever leaf is open; the eye has the cover. */}
      <h1 class="heard">{booklet.title}</h1>
      {inPage.map((leaf) => drawLeaf(book, leaf))}
      {rows.length === 0 ? null : <FigureStore rows={nearTheirLike(rows)} />}
    </div>
  );
}
