/** The demo's drawings in motion: parts go where the body has them, and what stands does not slip. */
import { beforeAll, describe, expect, test } from 'vitest';
import { bearingsOf } from '../../src/figures/bearing.js';
import { bodiesOnTheWay } from '../../src/figures/between-bodies.js';
import { cameraFor, seen } from '../../src/figures/camera.js';
import { drawExercise } from '../../src/figures/draw-exercise.js';
import { poseBodies } from '../../src/figures/pose-body.js';
import { frameOf, placeOf, SEGMENTS } from '../../src/figures/skeleton.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Drawing, Shift, Spot } from '../../src/model/picture.js';
import { readDemo } from '../studio/demo-library.js';

let drawn: readonly { readonly exercise: Exercise; readonly drawing: Drawing }[] = [];
beforeAll(async () => {
  const { library } = await readDemo();
  // Every fourth: what moves one moves them all.
  drawn = library.exercises
    .filter((_, index) => index % 4 === 0)
    .flatMap((exercise) => {
      const drawing = drawExercise(exercise);
      return drawing === null ? [] : [{ exercise, drawing }];
    });
});

const carried = ({ a, b, c, d, e, f }: Shift, [x, y]: Spot): Spot => [a * x + c * y + e, b * x + d * y + f];

describe('one repetition', () => {
  test('carries each part’s joint to where the body has it in every position, within half a centimetre', () => {
    expect(drawn.length).toBeGreaterThan(15);
    let looked = 0;
    for (const { exercise, drawing } of drawn) {
      const bodies = poseBodies(exercise.poses);
      const [first] = bodies;
      if (!first) continue;
      const camera = cameraFor(first.pose.view);
      for (const { parts, steps } of drawing.motion.moves) {
        for (const segment of SEGMENTS.filter((one) => parts.includes(one))) {
          const from = seen(camera, frameOf(first.body, segment).at);
          for (const { body } of bodies) {
            const [x, y] = seen(camera, frameOf(body, segment).at);
            const offs = steps.map(({ shift }) => {
              const [cx, cy] = carried(shift, from);
              return Math.hypot(cx - x, cy - y);
            });
            looked += 1;
            expect(Math.min(...offs), `${exercise.id} ${segment}`).toBeLessThan(0.5);
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(200);
  });

  test('begins at its beginning and ends where it began, in order', () => {
    for (const { drawing } of drawn) {
      for (const { steps } of drawing.motion.moves) {
        const [first, last] = [steps[0], steps[steps.length - 1]];
        if (!first || !last) throw new RangeError('a move has moments');
        expect(first.at).toBe(0);
        expect(last.at).toBeLessThanOrEqual(1 + 1e-9);
        for (const key of ['a', 'b', 'c', 'd', 'e', 'f'] as const)
          expect(last.shift[key]).toBeCloseTo(first.shift[key], 6);
        for (const [index, { at }] of steps.entries()) expect(at).toBeGreaterThanOrEqual(steps[index - 1]?.at ?? 0);
      }
    }
  });

  test('lets nothing slip that bears the body in the position before and after', () => {
    for (const { exercise } of drawn) {
      const bodies = poseBodies(exercise.poses);
      const legs = bodiesOnTheWay(bodies, () => 3);
      legs.forEach((leg, index) => {
        const [from, to] = [bodies[index], bodies[index + 1]];
        if (!from || !to) return;
        const stays = to.pose.contacts.filter((contact) =>
          from.pose.contacts.some(
            (one) => one.part === contact.part && one.side === contact.side && one.on === contact.on,
          ),
        );
        leg.forEach(({ body }, step) => {
          const share = (step + 1) / leg.length;
          for (const contact of stays) {
            for (const { at } of bearingsOf(contact)) {
              const [a, b, now] = [placeOf(from.body, at), placeOf(to.body, at), placeOf(body, at)];
              const off = Math.hypot(
                ...([0, 1, 2] as const).map((axis) => now[axis] - a[axis] - (b[axis] - a[axis]) * share),
              );
              expect(off, `${exercise.id}, ${to.pose.name}, ${contact.part}`).toBeLessThan(1);
            }
          }
        });
      });
    }
  });
});
