/** The outline round a few circles, as if a band were stretched about them. */
import type { Command, Outline, Spot } from '../model/picture.js';

export interface Disc {
  readonly at: Spot;
  readonly radius: number;
}

const DIRECTIONS = 360;

/** Which disc reaches furthest in a direction. */
function furthest(discs: readonly Disc[], angle: number): number {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  discs.forEach(({ at, radius }, index) => {
    const reach = at[0] * c + at[1] * s + radius;
    if (reach > most + 1e-9) {
      most = reach;
      best = index;
    }
  });
  return best;
}

/** The direction between `low` and `high` in which two discs reach equally far. */
function equalReach(a: Disc, b: Disc, low: number, high: number): number {
  const lead = (angle: number): number =>
    (a.at[0] - b.at[0]) * Math.cos(angle) + (a.at[1] - b.at[1]) * Math.sin(angle) + a.radius - b.radius;
  let [from, to] = [low, high];
  for (let count = 0; count < 24; count += 1) {
    const middle = (from + to) / 2;
    if (lead(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

const onDisc = ({ at, radius }: Disc, angle: number): Spot => [
  at[0] + radius * Math.cos(angle),
  at[1] + radius * Math.sin(angle),
];

/** Lines and arcs, against the clock. */
export function hullOf(discs: readonly Disc[]): Outline {
  const step = (2 * Math.PI) / DIRECTIONS;
  const changes: { readonly angle: number; readonly from: number; readonly to: number }[] = [];
  let was = furthest(discs, 0);
  for (let index = 1; index <= DIRECTIONS; index += 1) {
    const now = furthest(discs, index * step);
    const [a, b] = [discs[was], discs[now]];
    if (now !== was && a && b) {
      changes.push({ angle: equalReach(a, b, (index - 1) * step, index * step), from: was, to: now });
      was = now;
    }
  }
  const only = discs[was];
  if (changes.length === 0 || !only) return only ? wholeDisc(only) : [];
  const commands: Command[] = [];
  changes.forEach(({ angle, from, to }, index) => {
    const next = changes[(index + 1) % changes.length];
    const [a, b] = [discs[from], discs[to]];
    if (!a || !b || !next) return;
    if (index === 0) commands.push({ kind: 'move', to: onDisc(a, angle) });
    commands.push({ kind: 'line', to: onDisc(b, angle) });
    const end = next.angle + (index === changes.length - 1 ? 2 * Math.PI : 0);
    if (b.radius > 0)
      commands.push({ kind: 'arc', to: onDisc(b, end), radius: b.radius, large: end - angle > Math.PI });
  });
  return [...commands, { kind: 'close' }];
}

function wholeDisc({ at, radius }: Disc): Outline {
  return [
    { kind: 'move', to: [at[0] - radius, at[1]] },
    { kind: 'arc', to: [at[0] + radius, at[1]], radius, large: true },
    { kind: 'arc', to: [at[0] - radius, at[1]], radius, large: true },
    { kind: 'close' },
  ];
}
