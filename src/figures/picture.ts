/**
 * A drawing as a list of marks in the order they are painted: outlines in centimetres, x to the right and y upwards from
 * the floor, with what each is. Both the screen and the page are drawn from this one list.
 */

/** A point on the drawing's plane. */
export type Spot = readonly [number, number];

export type Command =
  | { readonly kind: 'move'; readonly to: Spot }
  | { readonly kind: 'line'; readonly to: Spot }
  /** An arc of a circle, turning left (against the clock). */
  | { readonly kind: 'arc'; readonly to: Spot; readonly radius: number; readonly large: boolean }
  | { readonly kind: 'curve'; readonly by: Spot; readonly to: Spot }
  | { readonly kind: 'close' };

export type Outline = readonly Command[];

/** How heavy a line is: what is near, what is far or only a detail, and where the body was before. */
export type Weight = 'near' | 'far' | 'ghost';

export type Paint =
  /** The shape widened by its line, in ink: what stays seen of it round the paper laid over it is the line. */
  | 'edge'
  /** The shape itself in the colour of the page. */
  | 'paper'
  /** Its line alone, open. */
  | 'line'
  /** Filled with ink. */
  | 'solid';

export interface Mark {
  readonly paint: Paint;
  readonly weight: Weight;
  readonly outline: Outline;
  /** What it moves with, where the drawing can move. */
  readonly part: string;
}

/** Line widths in centimetres at the figure's own size: shares of its height. */
export const WIDTHS: Readonly<Record<Weight, number>> = { near: 0.02 * 175, far: 0.012 * 175, ghost: 0.0085 * 175 };

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export interface Picture {
  readonly marks: readonly Mark[];
  readonly box: Box;
}

const EMPTY: Box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };

const grown = (box: Box, [x, y]: Spot): Box => ({
  left: Math.min(box.left, x),
  right: Math.max(box.right, x),
  low: Math.min(box.low, y),
  high: Math.max(box.high, y),
});

export function boxOf(marks: readonly Mark[]): Box {
  return marks.reduce(
    (box, { outline }) =>
      outline.reduce((inner, command) => {
        if (command.kind === 'close') return inner;
        if (command.kind === 'curve') return grown(grown(inner, command.by), command.to);
        return grown(inner, command.to);
      }, box),
    EMPTY,
  );
}

export function shifted(outline: Outline, by: Spot): Outline {
  const move = ([x, y]: Spot): Spot => [x + by[0], y + by[1]];
  return outline.map((command) => {
    switch (command.kind) {
      case 'close':
        return command;
      case 'curve':
        return { ...command, by: move(command.by), to: move(command.to) };
      default:
        return { ...command, to: move(command.to) };
    }
  });
}

export const openLine = (spots: readonly Spot[]): Outline =>
  spots.map((to, index): Command => ({ kind: index === 0 ? 'move' : 'line', to }));

export const closedLine = (spots: readonly Spot[]): Outline => [...openLine(spots), { kind: 'close' }];

/** A smooth line through the middles of the legs between spots, from the first to the last. */
export function smoothLine(spots: readonly Spot[]): Outline {
  const [first, ...rest] = spots;
  if (!first) return [];
  const commands: Command[] = [{ kind: 'move', to: first }];
  rest.forEach((spot, index) => {
    const next = rest[index + 1];
    if (!next) commands.push({ kind: 'line', to: spot });
    else commands.push({ kind: 'curve', by: spot, to: [(spot[0] + next[0]) / 2, (spot[1] + next[1]) / 2] });
  });
  return commands;
}

export function circle([x, y]: Spot, radius: number): Outline {
  return [
    { kind: 'move', to: [x - radius, y] },
    { kind: 'arc', to: [x + radius, y], radius, large: true },
    { kind: 'arc', to: [x - radius, y], radius, large: true },
    { kind: 'close' },
  ];
}
