/**
 * An exercise's drawing as a picture of its own, for wherever its page is spoken of elsewhere. All that styles it stands
 * in it, and plainly, so that a program which is no browser paints it; what `figure.css` says of a page is said here of
 * that. There is no word in it: its page's title stands beside it, and no face is needed.
 */
import { type Box, type Drawing, WIDTHS } from '../src/model/picture.js';
import { Marks } from './figure.js';
import { whole } from './path-data.js';

/** In points: what previews are cut to by most who show them; common practice, no source. */
export const PREVIEW = { width: 1200, height: 630 } as const;
/** White on every side, in points. */
const EDGE = 48;

/** As on paper. */
const PAPER = '#fff';
const INK = '#000';

/** Half of an edge lies under the paper that is laid over it. */
const edge = (weight: 'near' | 'far'): number => whole(2 * WIDTHS[weight]);

const STYLE = [
  `.fe,.fs{fill:${INK}}`,
  `.fe,.fl{stroke:${INK};stroke-linecap:round;stroke-linejoin:round}`,
  '.fl{fill:none}',
  `.fp{fill:${PAPER}}`,
  `.fb{paint-order:stroke;fill:${PAPER}}`,
  `.fe.fn{stroke-width:${edge('near')}}.fe.ff{stroke-width:${edge('far')}}`,
  `.fl.fn{stroke-width:${whole(WIDTHS.near)}}.fl.ff{stroke-width:${whole(WIDTHS.far)}}.fl.fg{stroke-width:${whole(WIDTHS.ghost)}}`,
  '.ghost .fe,.ghost .fl{stroke-dasharray:8 9}',
  '.ghost .fe,.ghost .fs{fill:none}',
  `.ghost .fb{fill:${PAPER}}`,
  '.ghost .fe{stroke-width:5}.ghost .fl{stroke-width:3}.ghost .fl.fg{stroke-width:2}',
].join('');

/** The part of the plane that is seen: the drawing in the middle, as large as the white about it lets it be. */
function seenOf({ left, right, low, high }: Box): readonly [x: number, y: number, width: number, height: number] {
  const [wide, tall] = [whole(right - left), whole(high - low)];
  const unit = Math.max(wide / (PREVIEW.width - 2 * EDGE), tall / (PREVIEW.height - 2 * EDGE));
  const [width, height] = [PREVIEW.width * unit, PREVIEW.height * unit];
  return [whole(left) - (width - wide) / 2, -whole(high) - (height - tall) / 2, width, height];
}

export function PreviewDrawing({ drawing: { row } }: { readonly drawing: Drawing }) {
  const seen = seenOf(row.box).map((length) => Math.round(length * 100) / 100);
  const [x, y, width, height] = seen;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      aria-hidden="true"
      width={PREVIEW.width}
      height={PREVIEW.height}
      viewBox={seen.join(' ')}
    >
      <style>{STYLE}</style>
      <rect class="fp" x={x} y={y} width={width} height={height} />
      {row.places.map(({ by, room, ghost, figure, arrow }) => {
        const before = ghost === undefined ? undefined : row.places[ghost];
        return (
          <g transform={`translate(${whole(by)})`}>
            <Marks marks={room} />
            {before === undefined ? null : (
              <g class="ghost">
                <Marks marks={before.figure} />
              </g>
            )}
            <Marks marks={figure} />
            <Marks marks={arrow} />
          </g>
        );
      })}
    </svg>
  );
}
