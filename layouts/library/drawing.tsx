/** The place of an exercise's drawing, or of a coach's own picture. Nothing stands there where there is neither. */
import type { ExerciseId } from '../../src/model/identity.js';
import { sayDrawn } from '../../src/words/say-drawing.js';
import { Figure, FigureRow } from '../figure.js';
import { PhotographShown } from '../photograph.js';
import type { LibraryProps } from './library-props.js';

export interface DrawingProps extends Pick<LibraryProps, 'drawings' | 'photographs' | 'speech'> {
  readonly of: ExerciseId;
  /** `whole` for the page and the card; `small`, on the line of easier and harder, is the last position alone. */
  readonly size: 'whole' | 'small';
}

export function Drawing({ of, size, drawings, photographs, speech }: DrawingProps) {
  const photograph = photographs.get(of);
  const drawn = drawings.get(of);
  const { positions = [] } = drawn?.drawing ?? {};
  const last = positions[positions.length - 1];
  if (size === 'small') {
    return photograph === undefined && last === undefined ? null : (
      <div class="drawing small">
        {photograph === undefined ? null : <PhotographShown of={photograph} sizes="6rem" told={false} />}
        {last === undefined ? null : <Figure picture={last.picture} />}
      </div>
    );
  }
  return photograph === undefined && drawn === undefined ? null : (
    <div class="drawing whole">
      {photograph === undefined ? null : <PhotographShown of={photograph} sizes="(min-width: 28rem) 26rem, 100vw" />}
      {drawn === undefined ? null : (
        <FigureRow drawing={drawn.drawing} alt={sayDrawn(drawn, speech.words.drawing)} id={`drawn-${of}`} />
      )}
    </div>
  );
}
