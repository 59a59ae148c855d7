/** Outlines: a band stretched round discs holds them all, and a box holds what is drawn. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Disc, hullOf } from '../../src/figures/hull.js';
import { boxOf, circle } from '../../src/figures/outlines.js';
import type { Box, Mark, Outline, Spot } from '../../src/model/picture.js';

/** The outline as many short straight legs, arcs by their own definition: radius, turning left, the longer way or not. */
function legsOf(outline: Outline): readonly Spot[] {
  const spots: Spot[] = [];
  let at: Spot = [0, 0];
  for (const command of outline) {
    if (command.kind === 'close') continue;
    if (command.kind === 'arc') spots.push(...arcSpots(at, command));
    else if (command.kind === 'curve') {
      for (let step = 1; step < 24; step += 1) {
        const t = step / 24;
        const mix = (axis: 0 | 1): number =>
          (1 - t) ** 2 * at[axis] + 2 * t * (1 - t) * command.by[axis] + t * t * command.to[axis];
        spots.push([mix(0), mix(1)]);
      }
    }
    spots.push(command.to);
    at = command.to;
  }
  return spots;
}

/** One that does not reach is widened until it does (SVG 2, 9.5.2: out-of-range parameters). */
function arcSpots(
  from: Spot,
  { to, radius: said, large }: { to: Spot; radius: number; large: boolean },
): readonly Spot[] {
  const half = Math.hypot(to[0] - from[0], to[1] - from[1]) / 2;
  if (half === 0) return [];
  const radius = Math.max(said, half);
  const turn = 2 * Math.asin(Math.min(1, half / radius));
  const whole = large ? 2 * Math.PI - turn : turn;
  // The middle lies to the left of the way where the arc is the shorter one.
  const off = Math.sqrt(Math.max(0, radius ** 2 - half ** 2)) * (large ? -1 : 1);
  const [ux, uy] = [(to[0] - from[0]) / (2 * half), (to[1] - from[1]) / (2 * half)];
  const [x, y] = [(from[0] + to[0]) / 2 - uy * off, (from[1] + to[1]) / 2 + ux * off];
  const start = Math.atan2(from[1] - y, from[0] - x);
  return Array.from({ length: 47 }, (_, index): Spot => {
    const angle = start + (whole * (index + 1)) / 48;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** How far a spot is to the left of every leg: inside an outline that turns left it never is less than nothing. */
function depth(legs: readonly Spot[], [x, y]: Spot): number {
  let least = Number.POSITIVE_INFINITY;
  legs.forEach((a, index) => {
    const b = legs[(index + 1) % legs.length];
    if (!b) return;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length < 1e-6) return;
    least = Math.min(least, ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / length);
  });
  return least;
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const discs = fc.array(fc.record({ at: fc.tuple(number(-50, 50), number(-50, 50)), radius: number(1, 15) }), {
  minLength: 1,
  maxLength: 5,
});

describe('a band round discs', () => {
  test('holds every one of them', () => {
    fc.assert(
      fc.property(discs, (round: readonly Disc[]) => {
        const legs = legsOf(hullOf(round));
        // Short legs cut off up to a tenth of a millimetre of an arc.
        for (const { at, radius } of round) expect(depth(legs, at)).toBeGreaterThan(radius - 0.1);
      }),
      { numRuns: 200 },
    );
  });
});

const holds = ({ left, right, low, high }: Box, [x, y]: Spot): boolean =>
  x >= left - 1e-6 && x <= right + 1e-6 && y >= low - 1e-6 && y <= high + 1e-6;

describe('a box', () => {
  const mark = (outline: Outline): Mark => ({ paint: 'line', weight: 'near', part: 'room', outline });

  test('holds all of what is drawn, arcs with their bulges', () => {
    fc.assert(
      fc.property(discs, (round) => {
        const outline = hullOf(round);
        const box = boxOf([mark(outline)]);
        for (const spot of legsOf(outline)) expect(holds(box, spot)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('of a circle is its own square', () => {
    const { left, right, low, high } = boxOf([mark(circle([3, 4], 5))]);
    for (const [found, wanted] of [
      [left, -2],
      [right, 8],
      [low, -1],
      [high, 9],
    ] as const)
      expect(found).toBeCloseTo(wanted, 6);
  });
});
