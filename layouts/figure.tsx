/** A drawing on the screen: marks → paths, in half centimetres, in the page's own ink and paper. */
import type { ComponentChildren } from 'preact';
import type { Box, Drawing, Mark, Paint, Picture, Weight } from '../src/model/picture.js';
import { pathData, whole } from './path-data.js';

const PAINTS: Readonly<Record<Paint, string>> = { edge: 'fe', paper: 'fp', line: 'fl', solid: 'fs' };
const WEIGHTS: Readonly<Record<Weight, string>> = { near: 'fn', far: 'ff', ghost: 'fg' };

interface Run {
  readonly paint: string;
  readonly marks: Mark[];
}

/** Marks of one look that follow each other share their words. */
function runsOf(marks: readonly Mark[]): readonly Run[] {
  const runs: Run[] = [];
  for (const mark of marks) {
    const paint = `${PAINTS[mark.paint]} ${WEIGHTS[mark.weight]}`;
    const last = runs[runs.length - 1];
    if (last?.paint === paint) last.marks.push(mark);
    else runs.push({ paint, marks: [mark] });
  }
  return runs;
}

/** One path of a drawing: its look, and the marks of which it is made, in order. */
interface Painted {
  readonly look: string;
  readonly marks: readonly Mark[];
}

/**
 * One path is inked whole before it is filled whole, so a limb needs its parts but once: in ink and paper together, then
 * the few parts that the paper alone has.
 */
export function paintedOf(marks: readonly Mark[]): readonly Painted[] {
  const runs = runsOf(marks);
  return runs.flatMap((run, index): readonly Painted[] => {
    const [before, after] = [runs[index - 1], runs[index + 1]];
    if (before !== undefined && isEdge(before) && isPaperOf(before, run)) return [];
    if (!isEdge(run) || !isPaperOf(run, after)) return [{ look: run.paint, marks: run.marks }];
    const inked = new Set(run.marks.map(({ outline }) => pathData([outline])));
    const bare = after.marks.filter(({ outline }) => !inked.has(pathData([outline])));
    const both = { look: `${run.paint} ${BOTH}`, marks: run.marks };
    return bare.length === 0 ? [both] : [both, { look: PAINTS.paper, marks: bare }];
  });
}

const isEdge = ({ paint }: Run): boolean => paint.startsWith(`${PAINTS.edge} `);
const isPaperOf = (edge: Run, run: Run | undefined): run is Run =>
  run !== undefined && run.paint === edge.paint.replace(PAINTS.edge, PAINTS.paper);

/** In `figure.css`: inked and filled with paper in one. */
export const BOTH = 'fb';

export const Marks = ({ marks }: { readonly marks: readonly Mark[] }) => (
  <>
    {paintedOf(marks).map(({ look, marks: parts }) => (
      <path class={look} d={pathData(parts.map(({ outline }) => outline))} />
    ))}
  </>
);

/** The part of the plane that a box is, in half centimetres, y downwards. */
export const viewBoxOf = ({ left, right, low, high }: Box): string =>
  `${whole(left)} ${-whole(high)} ${whole(right - left)} ${whole(high - low)}`;

/** Without words of its own a drawing is not told of: what stands around it tells. */
function Frame({
  box,
  alt,
  children,
}: {
  readonly box: Box;
  readonly alt: string | undefined;
  readonly children: ComponentChildren;
}) {
  return alt === undefined ? (
    <svg class="figure" viewBox={viewBoxOf(box)} aria-hidden="true">
      {children}
    </svg>
  ) : (
    <svg class="figure" viewBox={viewBoxOf(box)} role="img" aria-label={alt}>
      {children}
    </svg>
  );
}

/** One position. */
export const Figure = ({ picture: { marks, box }, alt }: { readonly picture: Picture; readonly alt?: string }) => (
  <Frame box={box} alt={alt}>
    <Marks marks={marks} />
  </Frame>
);

interface RowProps {
  readonly drawing: Drawing;
  /** This drawing's own in the page: what was before is shown by what already stands there. */
  readonly id: string;
}

const Places = ({ drawing: { row }, id }: RowProps) => (
  <>
    {row.places.map(({ by, room, ghost, figure, arrow }, index) => (
      <g transform={by === 0 ? undefined : `translate(${whole(by)})`}>
        <Marks marks={room} />
        {ghost === undefined ? null : <use class="ghost" href={`#${id}-${ghost}`} />}
        <g id={row.places.some((place) => place.ghost === index) ? `${id}-${index}` : undefined}>
          <Marks marks={figure} />
        </g>
        <Marks marks={arrow} />
      </g>
    ))}
  </>
);

/** All positions in a row. */
export const FigureRow = ({ drawing, alt, id }: RowProps & { readonly alt?: string }) => (
  <Frame box={drawing.row.box} alt={alt}>
    <Places drawing={drawing} id={id} />
  </Frame>
);

/** The same where the row itself stands elsewhere in the page, in `FigureStore`. */
export const FigureOfStore = ({ drawing, alt, id }: RowProps & { readonly alt: string }) => (
  <Frame box={drawing.row.box} alt={alt}>
    <use href={`#${id}`} />
  </Frame>
);

/**
 * Rows that are shown elsewhere in the page: together, what they have in common is the nearer for gzip. Each stands by itself, so
 * that a phone can read one at a time.
 */
export const FigureStore = ({ rows }: { readonly rows: readonly RowProps[] }) => (
  <>
    {rows.map(({ drawing, id }) => (
      <div hidden>
        <svg class="figure" aria-hidden="true">
          <g id={id}>
            <Places drawing={drawing} id={id} />
          </g>
        </svg>
      </div>
    ))}
  </>
);
