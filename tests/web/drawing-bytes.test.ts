/** What drawings weigh, compressed as a host sends them, in each booklet of the demo; and that what moves them travels whole. */
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Movement, movementOf, styleOf } from '../../layouts/movement.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Drawings } from '../../src/model/picture.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { type PlannedDemo, planDemo } from '../studio/demo-plans.js';

const weighs = (text: string): number => gzipSync(text, { level: 9 }).length;

const KB = 1024;
/** Bytes: of one more in a booklet, on average; of all in a booklet, and where 35 exercises have a page. */
const ONE_MORE = 1000;
const TOGETHER = 25 * KB;
const HEAVIER: Readonly<Record<string, number>> = { 'aldous-brack': 27.9 * KB, 'torben-slade': 30.4 * KB };

let demo: PlannedDemo;
let drawings: Drawings;
beforeAll(async () => {
  demo = await planDemo();
  drawings = drawLibrary(demo.library.exercises);
}, 300_000);

describe('the drawings of a booklet', () => {
  test('weigh little each, and 25 KB together; in the two largest they do not, and get no heavier', () => {
    expect(demo.plans.size).toBeGreaterThan(12);
    for (const client of demo.clients) {
      const plan = demo.plans.get(client.id);
      if (plan === undefined) continue;
      const booklet = composeBooklet({ library: demo.library, client, plan });
      const sent = clientPlanOf(plan);
      const drawn = booklet.parts.filter((part) => part.kind === 'exercise' && drawings.has(part.id)).length;
      expect(drawn).toBeGreaterThan(15);
      const more = weighs(renderPayload(booklet, sent, drawings).html) - weighs(renderPayload(booklet, sent).html);
      expect(more / drawn, client.id).toBeLessThanOrEqual(ONE_MORE);
      expect(more, client.id).toBeLessThanOrEqual(HEAVIER[client.id] ?? TOGETHER);
      expect(more / drawn, client.id).toBeGreaterThan(200);
    }
  });
});

test('on the phone each part is turned and put where its motion says, at every place on the way', () => {
  let places = 0;
  for (const [id, { drawing }] of drawings) {
    const travelled = JSON.parse(JSON.stringify(movementOf(drawing))) as Movement | null;
    if (travelled === null) continue;
    const rules = styleOf(travelled).split('@keyframes').slice(1);
    expect(rules, id).toHaveLength(drawing.motion.moves.length);
    drawing.motion.moves.forEach(({ steps }, index) => {
      const frames = [
        ...(rules[index] ?? '').matchAll(/transform:translate\((-?\d+)px,(-?\d+)px\)rotate\((-?\d+)deg\)/g),
      ].map(([, x, y, turn]) => [Number(x), Number(y), Number(turn)]);
      expect(frames.shift()?.at(-1), id).toBe(0);
      expect(frames, id).toHaveLength(steps.length);
      steps.forEach(({ at, turn }, place) => {
        const [x = 0, y = 0, degrees = 0] = frames[place] ?? [];
        places += 1;
        // Where it is rounded twice, once at the start and once for the way from there, to whole centimetres, two units each.
        expect(Math.abs(x - 2 * at[0]), id).toBeLessThanOrEqual(2.001);
        expect(Math.abs(y + 2 * at[1]), id).toBeLessThanOrEqual(2.001);
        expect(Math.abs(degrees + (turn * 180) / Math.PI), id).toBeLessThanOrEqual(0.501);
      });
    });
  }
  expect(places).toBeGreaterThan(1000);
});
