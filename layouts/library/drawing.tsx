/** The place of an exercise's drawing. Nothing stands there where there is none. */
import type { Drawn } from '../../src/model/picture.js';
import type { DrawingWords } from '../../src/words/drawing-words.js';
import { sayDrawing } from '../../src/words/say-drawing.js';
import { Figure, FigureRow } from '../figure.js';

export interface DrawingProps {
  readonly of: Drawn | undefined;
  /** The exercise's id. */
  readonly id: string;
  readonly words: DrawingWords;
  /** `whole` for the page and the card; `small`, on the line of easier and harder, is the last position alone. */
  readonly size: 'whole' | 'small';
}

export function Drawing({ of, id, words, size }: DrawingProps) {
  if (of === undefined) return null;
  const { positions } = of.drawing;
  const last = positions[positions.length - 1];
  if (size === 'small') {
    return last === undefined ? null : (
      <div class="drawing small">
        <Figure picture={last.picture} />
      </div>
    );
  }
  return (
    <div class="drawing whole">
      <FigureRow drawing={of.drawing} alt={sayDrawing(of.poses, words)} id={`drawn-${id}`} />
    </div>
  );
}
