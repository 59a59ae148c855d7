/** The demo's drawings in motion: parts go where the body has them, and what stands does not slip. */
import { beforeAll, describe, expect, test } from 'vitest';
import { bearingsOf } from '../../src/figures/bearing.js';
import { bodiesOnTheWay } from '../../src/figures/between-bodies.js';
import { cameraFor, seen } from '../../src/figures/camera.js';
import { drawExercise } from '../../src/figures/draw-exercise.js';
import { farEnd } from '../../src/figures/limb-lines.js';
import { poseBodies } from '../../src/figures/pose-body.js';
import { placeOf, SEGMENTS } from '../../src/figures/skeleton.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Drawing, PartMove, PartStep, Spot } from '../../src/model/picture.js';
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

/** Turned about its joint and stretched the way it lies, then carried with its joint: in the plane of complex numbers. */
function carried({ joint, lies }: PartMove, { turn, stretch, at }: PartStep, spot: Spot): Spot {
  const [size, angle] = [
    Math.hypot(spot[0] - joint[0], spot[1] - joint[1]),
    Math.atan2(spot[1] - joint[1], spot[0] - joint[0]),
  ];
  const [along, aside] = [size * Math.cos(angle - lies) * stretch, size * Math.sin(angle - lies)];
  const [long, now] = [Math.hypot(along, aside), Math.atan2(aside, along) + lies + turn];
  return [at[0] + long * Math.cos(now), at[1] + long * Math.sin(now)];
}

describe('one repetition', () => {
  test('carries each part’s two ends to where the body has them in every position, within a centimetre', () => {
    expect(drawn.length).toBeGreaterThan(15);
    let looked = 0;
    for (const { exercise, drawing } of drawn) {
      const bodies = poseBodies(exercise.poses);
      const [first] = bodies;
      if (!first) continue;
      const camera = cameraFor(first.pose.view);
      for (const move of drawing.motion.moves) {
        for (const segment of SEGMENTS.filter((one) => move.parts.includes(one))) {
          const joint = { segment, at: [0, 0, 0] } as const;
          const far = { segment, at: farEnd(segment) };
          const [from, to] = [joint, far].map((end) => seen(camera, placeOf(first.body, end)));
          // What points at the eye at first cannot be turned into what lies across: of that the joint alone.
          const length = from && to ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0;
          for (const end of length < 6 ? [joint] : [joint, far]) {
            const start = seen(camera, placeOf(first.body, end));
            for (const { body } of bodies.slice(1)) {
              const [x, y] = seen(camera, placeOf(body, end));
              const offs = move.steps.map((step) => {
                const [cx, cy] = carried(move, step, start);
                return Math.hypot(cx - x, cy - y);
              });
              looked += 1;
              expect(Math.min(...offs), `${exercise.id} ${segment}`).toBeLessThan(1);
            }
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(400);
  });

  test('begins at its beginning, goes out through every place on the way, and comes back the same way', () => {
    for (const { drawing } of drawn) {
      const { passed, moves } = drawing.motion;
      for (const { steps } of moves) expect(steps).toHaveLength(passed.length - 1);
      const out = passed.map(([there = Number.NaN]) => there);
      const back = passed.map(([, again = Number.NaN]) => again).reverse();
      const moments = [...out, ...back];
      expect(moments[0]).toBeCloseTo(0, 9);
      expect(moments.at(-1)).toBeLessThan(1);
      for (const [index, at] of moments.entries()) expect(at).toBeGreaterThanOrEqual(moments[index - 1] ?? 0);
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
