/** A step up that must be earned: marked wherever its figures stand, never without what to do otherwise. */
import type { Cell } from '../../src/model/booklet.js';
import type { Book } from './leaves.js';
import { Ranges } from './ranges.js';

type GateText = NonNullable<Cell['gate']>;

export const IfEarned = ({ book }: { readonly book: Book }) => <p class="kind earned">{book.words.ifEarned}</p>;

/** Beneath the figures of the step. */
export const Gate = ({ gate }: { readonly gate: GateText }) => (
  <div class="gate">
    <p>{gate.needs}</p>
    <p class="otherwise">{gate.otherwise}</p>
  </div>
);

/** The same in a line of a list: both figures in one size, the condition between them. */
export const GateAtAGlance = ({
  book,
  gate,
  figures,
}: {
  readonly book: Book;
  readonly gate: GateText;
  readonly figures: string;
}) => (
  <span class="gate">
    <b>
      {book.words.ifEarned}: <Ranges text={figures} />
    </b>
    <span class="needs">{gate.needs}</span>
    <b>{gate.otherwise}</b>
  </span>
);
