/** A drawing on the screen: marks → paths, in half centimetres, in the page's own ink and paper. */
import type { ComponentChildren } from 'preact';
import type {
  Box,
  Command,
  Drawing,
  Mark,
  Motion,
  Outline,
  Paint,
  PartMove,
  Picture,
  Spot,
  Weight,
} from '../src/model/picture.js';

/** Half centimetres: whole numbers of them are finer than a phone shows. */
const SCALE = 2;

/** A length on the drawing in its own units. */
export const whole = (length: number): number => Math.round(length * SCALE);

/** Short numbers need no blank before a minus. */
const joined = (numbers: readonly number[]): string =>
  numbers.map((number, index) => (index === 0 || number < 0 ? `${number}` : ` ${number}`)).join('');

/** Path data; every point is rounded where it stands, so that nothing drifts. */
function pathOf(outline: Outline): string {
  let [x, y] = [0, 0];
  const by = (spot: Spot, keep: boolean): readonly [number, number] => {
    const [nextX, nextY] = [whole(spot[0]), -whole(spot[1])];
    const step = [nextX - x, nextY - y] as const;
    if (keep) [x, y] = [nextX, nextY];
    return step;
  };
  const say = (command: Command): string => {
    switch (command.kind) {
      case 'close':
        return 'z';
      case 'move': {
        by(command.to, true);
        return `M${joined([x, y])}`;
      }
      case 'line':
        return `l${joined(by(command.to, true))}`;
      case 'curve':
        return `q${joined([...by(command.by, false), ...by(command.to, true)])}`;
      case 'arc': {
        const radius = whole(command.radius);
        // Flags need nothing about them (SVG 2, 9.3.9).
        return `a${radius} ${radius} 0 ${command.large ? 1 : 0}0${joined(by(command.to, true))}`;
      }
    }
  };
  return outline.map(say).join('');
}

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

interface Paths {
  /** The number of its move, or nothing where it keeps still. */
  readonly move: number | undefined;
  readonly outlines: Outline[];
}

function pathsOf(marks: readonly Mark[], moves: readonly PartMove[]): readonly Paths[] {
  const paths: Paths[] = [];
  for (const { part, outline } of marks) {
    const found = moves.findIndex(({ parts }) => parts.includes(part));
    const move = found < 0 ? undefined : found;
    const last = paths[paths.length - 1];
    if (last && last.move === move) last.outlines.push(outline);
    else paths.push({ move, outlines: [outline] });
  }
  return paths;
}

const allOf = (outlines: readonly Outline[]): string => outlines.map(pathOf).join('');

/**
 * One path is inked whole before it is filled whole, so a limb that keeps still needs its parts but once: in ink and
 * paper together, then the few parts that the paper alone has.
 */
function StillMarks({ marks }: { readonly marks: readonly Mark[] }) {
  const runs = runsOf(marks);
  return (
    <>
      {runs.map((run, index) => {
        const before = runs[index - 1];
        const after = runs[index + 1];
        if (isEdge(run) && isPaperOf(run, after)) {
          const inked = run.marks.map(({ outline }) => pathOf(outline));
          const bare = after.marks.map(({ outline }) => pathOf(outline)).filter((path) => !inked.includes(path));
          return (
            <>
              <path class={`${run.paint} fb`} d={inked.join('')} />
              {bare.length === 0 ? null : <path class="fp" d={bare.join('')} />}
            </>
          );
        }
        if (before !== undefined && isEdge(before) && isPaperOf(before, run)) return null;
        return <path class={run.paint} d={allOf(run.marks.map(({ outline }) => outline))} />;
      })}
    </>
  );
}

const isEdge = ({ paint }: Run): boolean => paint.startsWith(`${PAINTS.edge} `);
const isPaperOf = (edge: Run, run: Run | undefined): run is Run =>
  run !== undefined && run.paint === edge.paint.replace(PAINTS.edge, PAINTS.paper);

/** What moves stands in paths of its own, in ink and again in paper: they pass over one another. */
const MovingMarks = ({ marks, moves }: { readonly marks: readonly Mark[]; readonly moves: readonly PartMove[] }) => (
  <>
    {runsOf(marks).map((run) => (
      <g class={run.paint}>
        {pathsOf(run.marks, moves).map(({ move, outlines }) => (
          <path class={move === undefined ? undefined : `m${move}`} d={allOf(outlines)} />
        ))}
      </g>
    ))}
  </>
);

const Marks = ({ marks, moves }: { readonly marks: readonly Mark[]; readonly moves: readonly PartMove[] }) =>
  moves.length === 0 ? <StillMarks marks={marks} /> : <MovingMarks marks={marks} moves={moves} />;

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

/** One position, which moves where a sheet of styles has what `motionStyle` says of the same moves. */
export function Figure({
  picture: { marks, box },
  alt,
  moves = [],
}: {
  readonly picture: Picture;
  readonly alt?: string;
  readonly moves?: readonly PartMove[];
}) {
  return (
    <Frame box={box} alt={alt}>
      <Marks marks={marks} moves={moves} />
    </Frame>
  );
}

/**
 * All positions in a row. `id` is this drawing's own in the page: what was before is shown by what already stands there.
 * The first position can move: it alone is to be seen where `.moving` stands about it.
 */
export function FigureRow({
  drawing: { row, motion },
  alt,
  id,
}: {
  readonly drawing: Drawing;
  readonly alt?: string;
  readonly id: string;
}) {
  return (
    <Frame box={row.box} alt={alt}>
      {row.places.map(({ room, ghost, figure, arrow }, index) => (
        <g class={index === 0 ? undefined : 'later'}>
          <Marks marks={room} moves={[]} />
          {ghost === undefined ? null : (
            <use class="ghost" href={`#${id}-${ghost.of}`} x={ghost.by[0] === 0 ? undefined : whole(ghost.by[0])} />
          )}
          <g id={row.places.some((place) => place.ghost?.of === index) ? `${id}-${index}` : undefined}>
            <Marks marks={figure} moves={index === 0 ? motion.moves : []} />
          </g>
          <Marks marks={arrow} moves={[]} />
        </g>
      ))}
    </Frame>
  );
}

/** What makes the first position of a row move: the part of the plane it moves in, and its keyframes. */
export interface Movement {
  readonly view: string;
  readonly style: string;
  /** One repetition. */
  readonly seconds: number;
}

/** Nothing where no part moves. */
export function movementOf({ motion, row }: Drawing): Movement | null {
  const [first] = row.places;
  if (motion.moves.length === 0 || !first) return null;
  return { view: viewBoxOf(motion.picture.box), style: motionStyle(motion), seconds: motion.seconds };
}

const short = (number: number, places: number): string => {
  const fixed = number.toFixed(places);
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return text === '-0' || text === '' ? '0' : text.replace(/^(-?)0\./, '$1.');
};

/** Whole centimetres are less than half a dot of a phone's screen. */
const shift = (length: number): string => short(Math.round(length) * SCALE, 0);

/** Cycles shown before it keeps still. */
const CYCLES = 2;

/** Keyframes for the classes that a drawing's moves give their paths, for the one drawing that stands in `.moving`. */
function motionStyle({ moves, seconds }: Motion): string {
  return moves
    .map(({ steps }, index) => {
      const frames = steps.map(({ at, shift: { a, b, c, d, e, f } }) => {
        const turn = [a, -b, -c, d].map((number) => short(number, 2));
        return `${short(at * 100, 0)}%{transform:matrix(${[...turn, shift(e), shift(-f)].join()})}`;
      });
      const id = `m${index}`;
      return `.moving .m${index}{animation:${id} ${short(seconds, 2)}s linear ${CYCLES}}@keyframes ${id}{${merged(frames)}}`;
    })
    .join('');
}

/** Moments at which a part is in the same place share their words. */
function merged(frames: readonly string[]): string {
  const byPlace = new Map<string, string[]>();
  for (const frame of frames) {
    const [moment = '', place = ''] = frame.split('{', 2);
    byPlace.set(place, [...(byPlace.get(place) ?? []), moment]);
  }
  return [...byPlace].map(([place, moments]) => `${moments.join()}{${place}`).join('');
}
