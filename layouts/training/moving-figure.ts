/** The first position of a drawing that stands in the page, taken apart into paths that can move by themselves. */
import { BOTH } from '../figure.js';
import type { Movement } from '../movement.js';
import { eachOutline } from '../path-data.js';

const SVG = 'http://www.w3.org/2000/svg';

function made(name: 'svg' | 'g' | 'path', attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) if (value !== '') element.setAttribute(key, value);
  return element;
}

interface Piece {
  readonly outline: string;
  /** Empty where it keeps still. */
  readonly move: string;
}

/** Pieces of one look; those of one move that follow each other are one path. */
function group(look: string, pieces: readonly Piece[]): SVGElement {
  const g = made('g', { class: look });
  let path: SVGElement | undefined;
  for (const { outline, move } of pieces) {
    if (path?.getAttribute('class') === (move || null)) path.setAttribute('d', path.getAttribute('d') + outline);
    else {
      path = made('path', { class: move, d: outline });
      g.append(path);
    }
  }
  return g;
}

/** What moves stands in ink and again in paper: parts pass over one another. */
function takenApart(figure: Element, goes: readonly number[]): SVGElement {
  let count = 0;
  const paths = [...figure.querySelectorAll('path')].map((path) => ({
    looks: (path.getAttribute('class') ?? '').split(' '),
    pieces: eachOutline(path.getAttribute('d') ?? '').map((outline): Piece => {
      const move = goes[count++] ?? -1;
      return { outline, move: move < 0 ? '' : `m${move}` };
    }),
  }));
  const all = made('g', {});
  paths.forEach(({ looks, pieces }, index) => {
    const ink = looks.filter((look) => look !== BOTH).join(' ');
    if (ink === looks.join(' ')) all.append(group(ink, pieces));
    else {
      const next = paths[index + 1];
      const bare = next?.looks.join(' ') === PAPER ? next.pieces : [];
      all.append(group(ink, pieces), group(PAPER, [...pieces, ...bare]));
    }
  });
  return all;
}

const PAPER = 'fp';

/** `shown` is the drawing as it stands on its page; nothing where what it shows is not to be found. */
export function movingFigure(shown: Element, { view, goes }: Movement): SVGElement | undefined {
  const row = document.querySelector(shown.querySelector('use')?.getAttribute('href') ?? '#');
  const [first] = row?.children ?? [];
  const figure = first?.querySelector('g');
  if (!first || !figure) return undefined;
  const svg = made('svg', {
    class: 'figure',
    viewBox: view,
    role: 'img',
    'aria-label': shown.getAttribute('aria-label') ?? '',
  });
  const around = [...first.children].map((one) => (one === figure ? takenApart(figure, goes) : one.cloneNode(true)));
  svg.append(...around);
  return svg;
}
