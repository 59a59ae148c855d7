/** The outline round a few circles, as if a band were stretched about them. */
import type { Command, Outline, Spot } from '../model/picture.js';
import { begunShort, circle } from './outlines.js';

export interface Disc {
  readonly at: Spot;
  readonly radius: number;
}

const DIRECTIONS = 360;
const QUARTER = Math.PI / 2;

const STEP = (2 * Math.PI) / DIRECTIONS;
const COSINES = Float64Array.from({ length: DIRECTIONS + 1 }, (_, index) => Math.cos(index * STEP));
const SINES = Float64Array.from({ length: DIRECTIONS + 1 }, (_, index) => Math.sin(index * STEP));

/** Which disc reaches furthest in a direction: one of those asked for all round, hundreds of times for a drawing. */
function furthest(discs: readonly Disc[], direction: number): number {
  const c = COSINES[direction] ?? 1;
  const s = SINES[direction] ?? 0;
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  let index = 0;
  for (const { at, radius } of discs) {
    const reach = at[0] * c + at[1] * s + radius;
    if (reach > most + 1e-9) {
      most = reach;
      best = index;
    }
    index += 1;
  }
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
  const changes: { readonly angle: number; readonly to: number }[] = [];
  let was = furthest(discs, 0);
  for (let index = 1; index <= DIRECTIONS; index += 1) {
    const now = furthest(discs, index);
    const [a, b] = [discs[was], discs[now]];
    if (now !== was && a && b) {
      changes.push({ angle: equalReach(a, b, (index - 1) * STEP, index * STEP), to: now });
      was = now;
    }
  }
  const only = discs[was];
  if (changes.length === 0 || !only) return only ? circle(only.at, only.radius) : [];
  const turns = changes.flatMap(({ angle, to }, index): readonly Turn[] => {
    const next = changes[(index + 1) % changes.length];
    const disc = discs[to];
    if (!next || !disc) return [];
    return [{ disc, angle, end: next.angle + (index === changes.length - 1 ? 2 * Math.PI : 0) }];
  });
  return begunShort(turns.flatMap(turnCommands));
}

/** From one direction to the next the outline goes round this disc. */
interface Turn {
  readonly disc: Disc;
  readonly angle: number;
  readonly end: number;
}

/** An arc that leaves its corner cut less than this is drawn as that corner: a millimetre nobody sees. */
const BLUNT = 0.1;

function turnCommands({ disc, angle, end }: Turn, index: number): readonly Exclude<Command, { kind: 'close' }>[] {
  const kind = index === 0 ? 'move' : 'line';
  const { at, radius } = disc;
  const half = (end - angle) / 2;
  const reach = half < QUARTER ? radius / Math.cos(half) : Number.POSITIVE_INFINITY;
  if (reach - radius < BLUNT) return [{ kind, to: onDisc({ at, radius: reach }, angle + half) }];
  const arc = { kind: 'arc', to: onDisc(disc, end), radius, large: end - angle > Math.PI } as const;
  return [{ kind, to: onDisc(disc, angle) }, arc];
}
