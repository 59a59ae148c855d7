/** The drawing on a set's screen: it moves twice, then stands as a row of positions until it is asked for again. */
import { useCallback, useState } from 'preact/hooks';
import { type Movement, styleOf } from '../movement.js';
import { movingFigure } from './moving-figure.js';

export interface MovementProps {
  /** The exercise's drawing, as it stands on its own page. */
  readonly picture: readonly Node[];
  /** `null` where nothing moves, or is not to. */
  readonly movement: Movement | null;
  readonly ended: () => void;
}

/** Styles made here are the page's own, so a policy that forbids styles in the page's text lets them be. */
function styleFor(movement: Movement): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(styleOf(movement));
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
}

const shownAs = (node: Node, movement: Movement | null): Node =>
  (movement && node instanceof Element ? movingFigure(node, movement) : undefined) ?? node.cloneNode(true);

export function MovementPicture({ picture, movement, ended }: MovementProps) {
  const [putAway] = useState<{ away: (() => void) | undefined }>({ away: undefined });
  // Set anew for another drawing or another run alone: whatever else changes on the screen, what moves goes on moving.
  const put = useCallback(
    (element: Element | null): void => {
      putAway.away?.();
      putAway.away = undefined;
      if (element === null) return;
      element.replaceChildren(...picture.map((node) => shownAs(node, movement)));
      if (movement) putAway.away = styleFor(movement);
    },
    [picture[0], movement],
  );
  if (picture.length === 0) return null;
  return <div class={movement === null ? 'movement' : 'movement moving'} ref={put} onAnimationEnd={ended} />;
}

export interface Plays {
  readonly moving: boolean;
  /** Tells it apart from the time before. */
  readonly key: string;
  readonly ended: () => void;
  readonly again: () => void;
}

/** How often the drawing of one exercise has moved. Another exercise begins anew. */
export function usePlays(exercise: string): Plays {
  const [state, set] = useState({ exercise, run: 0, over: false });
  const now = state.exercise === exercise ? state : { exercise, run: 0, over: false };
  return {
    moving: !now.over,
    key: `${exercise} ${now.run} ${now.over}`,
    ended: () => set({ ...now, over: true }),
    again: () => set({ exercise, run: now.run + 1, over: false }),
  };
}
