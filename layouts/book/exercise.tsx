/** The whole page of one exercise. */
import type { ExercisePart } from '../../src/model/booklet.js';
import { plainText } from '../../src/model/prose.js';
import { sayDrawn } from '../../src/words/say-drawing.js';
import { FigureOfStore } from '../figure.js';
import { Bullets, Paragraphs, Words } from '../lines.js';
import { PhotographShown } from '../photograph.js';
import { Faults } from './faults.js';
import { LeafFrame, Way } from './leaf.js';
import { type Book, exerciseLeafId, type Leaf } from './leaves.js';
import { OwnName } from './own-name.js';

type Section = ExercisePart['sections'][number];

function Told({ book, section }: { readonly book: Book; readonly section: Section }) {
  const items = section.lines.map(({ lead, text, exercise }) => (
    <li>
      {lead.length === 0 ? null : (
        <span class="lead">
          {exercise === undefined ? (
            <Words line={lead} />
          ) : (
            <a href={`#${exerciseLeafId(exercise)}`}>
              <OwnName book={book} name={plainText(lead)} />
            </a>
          )}{' '}
        </span>
      )}
      <Words line={text} />
    </li>
  ));
  return section.name === 'cues' ? <ol class="cues">{items}</ol> : <ul>{items}</ul>;
}

/** The name that a drawing has in the page: short, for it stands there four times. */
export const drawnId = ({ exercises }: Book, exercise: ExercisePart['id']): string =>
  `d${[...exercises.keys()].indexOf(exercise)}`;

export function ExercisePage({
  book,
  leaf,
  part,
}: {
  readonly book: Book;
  readonly leaf: Leaf;
  readonly part: ExercisePart;
}) {
  const drawn = book.drawings.get(part.id);
  const photograph = book.photographs.get(part.id);
  return (
    <LeafFrame book={book} leaf={leaf} ways={<Way to="cover">{book.words.toContents}</Way>}>
      <Paragraphs lines={part.description} />
      {photograph === undefined ? null : (
        <p class="drawing">
          <PhotographShown of={photograph} sizes="(min-width: 36rem) 34rem, 100vw" />
        </p>
      )}
      {drawn === undefined ? null : (
        <p class="drawing">
          <FigureOfStore drawing={drawn.drawing} alt={sayDrawn(drawn, book.drawingWords)} id={drawnId(book, part.id)} />
        </p>
      )}
      {part.sections.map((section) => (
        <section class={section.name === 'film' ? 'film' : undefined}>
          <h3>{section.title}</h3>
          {section.name === 'faults' ? (
            <Faults labels={book.labels} faults={section.lines.map(({ lead, text }) => ({ see: lead, say: text }))} />
          ) : (
            <Told book={book} section={section} />
          )}
        </section>
      ))}
      {part.stop.length === 0 ? null : (
        <div class="stop">
          <h3>{part.stopTitle}</h3>
          <Bullets lines={part.stop} />
        </div>
      )}
    </LeafFrame>
  );
}
