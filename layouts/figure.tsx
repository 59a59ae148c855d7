/** A drawing on the screen: marks → paths, in half centimetres, in the page's own ink and paper. */
import type {
  Box,
  Command,
  Mark,
  Motion,
  Outline,
  Paint,
  PartMove,
  Picture,
  Row,
  Spot,
  Weight,
} from '../src/model/picture.js';

/** Half centimetres: whole numbers of them are finer than a phone shows. */
const SCALE = 2;

const whole = (length: number): number => Math.round(length * SCALE);

/** Short numbers need no blank before a minus. */
const joined = (numbers: readonly number[]): string =>
  numbers.map((number, index) => (index === 0 || number < 0 ? `${number}` : ` ${number}`)).join('');

/** Path data; every point is rounded where it stands, so that nothing drifts. */
export function pathOf(outline: Outline): string {
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
        return `a${radius} ${radius} 0 ${command.large ? 1 : 0} 0${joined(by(command.to, true)).replace(/^(?!-)/, ' ')}`;
      }
    }
  };
  return outline.map(say).join('');
}

const PAINTS: Readonly<Record<Paint, string>> = { edge: 'e', paper: 'p', line: 'l', solid: 's' };
const WEIGHTS: Readonly<Record<Weight, string>> = { near: 'n', far: 'f', ghost: 'g' };

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

const Marks = ({ marks, moves }: { readonly marks: readonly Mark[]; readonly moves: readonly PartMove[] }) => (
  <>
    {runsOf(marks).map((run) => (
      <g class={run.paint}>
        {pathsOf(run.marks, moves).map(({ move, outlines }) => (
          <path class={move === undefined ? undefined : `m${move}`} d={outlines.map(pathOf).join('')} />
        ))}
      </g>
    ))}
  </>
);

const viewBoxOf = ({ left, right, low, high }: Box): string =>
  `${whole(left)} ${-whole(high)} ${whole(right - left)} ${whole(high - low)}`;

/** One position, which moves where a sheet of styles has what `motionStyle` says of the same moves. */
export function Figure({
  picture: { marks, box },
  alt,
  moves = [],
}: {
  readonly picture: Picture;
  readonly alt: string;
  readonly moves?: readonly PartMove[];
}) {
  return (
    <svg class="figure" viewBox={viewBoxOf(box)} role="img" aria-label={alt}>
      <Marks marks={marks} moves={moves} />
    </svg>
  );
}

/** All positions in a row. `id` is this drawing's own in the page: what was before is shown by what already stands there. */
export function FigureRow({ row, alt, id }: { readonly row: Row; readonly alt: string; readonly id: string }) {
  return (
    <svg class="figure" viewBox={viewBoxOf(row.box)} role="img" aria-label={alt}>
      {row.places.map(({ room, ghost, figure, arrow }, index) => (
        <>
          <Marks marks={room} moves={[]} />
          {ghost === undefined ? null : (
            <use class="ghost" href={`#${id}-${ghost.of}`} x={ghost.by[0] === 0 ? undefined : whole(ghost.by[0])} />
          )}
          <g id={row.places.some((place) => place.ghost?.of === index) ? `${id}-${index}` : undefined}>
            <Marks marks={figure} moves={[]} />
          </g>
          <Marks marks={arrow} moves={[]} />
        </>
      ))}
    </svg>
  );
}

const short = (number: number, places: number): string => {
  const text = number.toFixed(places).replace(/\.?0+$/, '');
  return text === '-0' || text === '' ? '0' : text;
};

/** Cycles shown before it keeps still. */
export const CYCLES = 2;

/** Keyframes for the classes that `Figure` gives; `name` keeps those of several drawings on one page apart. */
export function motionStyle({ moves, seconds }: Motion, name = ''): string {
  return moves
    .map(({ steps }, index) => {
      const frames = steps.map(({ at, shift: { a, b, c, d, e, f } }) => {
        const turn = [a, -b, -c, d].map((number) => short(number, 2));
        return `${short(at * 100, 0)}%{transform:matrix(${[...turn, short(e * SCALE, 0), short(-f * SCALE, 0)].join()})}`;
      });
      const id = `${name}m${index}`;
      return `.${name === '' ? '' : `${name} .`}m${index}{animation:${id} ${short(seconds, 2)}s linear ${CYCLES}}@keyframes ${id}{${merged(frames)}}`;
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
