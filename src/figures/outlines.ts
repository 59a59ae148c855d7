/** Outlines made, moved and measured. */
import type { Box, Command, Mark, Outline, Spot } from '../model/picture.js';

const EMPTY: Box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };

const grown = (box: Box, [x, y]: Spot): Box => ({
  left: Math.min(box.left, x),
  right: Math.max(box.right, x),
  low: Math.min(box.low, y),
  high: Math.max(box.high, y),
});

/** Where an arc from one spot to another, turning left, goes furthest to each side. */
function bulges(from: Spot, { to, radius: said, large }: Extract<Command, { kind: 'arc' }>): readonly Spot[] {
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (chord === 0 || said === 0) return [];
  const radius = Math.max(said, chord / 2);
  const off = Math.sqrt(Math.max(0, radius * radius - (chord / 2) ** 2)) * (large ? -1 : 1);
  const [x, y] = [
    (from[0] + to[0]) / 2 - (off * (to[1] - from[1])) / chord,
    (from[1] + to[1]) / 2 + (off * (to[0] - from[0])) / chord,
  ];
  const start = Math.atan2(from[1] - y, from[0] - x);
  const turn = (angle: number): number => ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const whole = turn(Math.atan2(to[1] - y, to[0] - x) - start);
  return [0, 1, 2, 3]
    .map((quarter) => (quarter * Math.PI) / 2)
    .filter((angle) => turn(angle - start) < whole)
    .map((angle): Spot => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]);
}

/** What the marks take up, the width of their lines left out. */
export function boxOf(marks: readonly Mark[]): Box {
  let box = EMPTY;
  for (const { outline } of marks) {
    let at: Spot = [0, 0];
    for (const command of outline) {
      if (command.kind === 'close') continue;
      const more = command.kind === 'curve' ? [command.by] : command.kind === 'arc' ? bulges(at, command) : [];
      box = [...more, command.to].reduce(grown, box);
      at = command.to;
    }
  }
  return box;
}

export const openLine = (spots: readonly Spot[]): Outline =>
  spots.map((to, index): Command => ({ kind: index === 0 ? 'move' : 'line', to }));

export const closedLine = (spots: readonly Spot[]): Outline => [...openLine(spots), { kind: 'close' }];

/** Letters of a straight line in half centimetres, as a page tells it; of those with as many, the longer first. */
function weightOf(from: Spot, to: Spot): number {
  const [x = 0, y = 0] = [0, 1].map((axis) => Math.round(2 * (to[axis] ?? 0)) - Math.round(2 * (from[axis] ?? 0)));
  return `${x}${y}`.length * 1e4 + Math.hypot(x, y);
}

type Drawn = Exclude<Command, { kind: 'close' }>;

/** Closed, and begun behind its heaviest straight line: closing it draws that one unsaid. */
export function begunShort(open: readonly Drawn[]): Outline {
  const [first, ...others] = open;
  if (!first) return [];
  const around: readonly Drawn[] = [...others, { kind: 'line', to: first.to }];
  const weights = around.map(({ kind, to }, index) =>
    kind === 'line' ? weightOf((open[index] ?? first).to, to) : Number.NEGATIVE_INFINITY,
  );
  const last = weights.indexOf(Math.max(...weights));
  const start = (around[last] ?? first).to;
  return [{ kind: 'move', to: start }, ...around.slice(last + 1), ...around.slice(0, last), { kind: 'close' }];
}

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

/**
 * Two half circles. Their radius is said a little too small: an arc that does not reach is widened until it does, and so
 * is round however its ends are rounded.
 */
export function circle([x, y]: Spot, radius: number): Outline {
  const half = (to: Spot): Command => ({ kind: 'arc', to, radius: radius * 0.8, large: true });
  return [{ kind: 'move', to: [x - radius, y] }, half([x + radius, y]), half([x - radius, y]), { kind: 'close' }];
}
