/** What stands about the figure: where it is solid, and how it is drawn. */
import type { Mark, Outline, Paint, Spot, Weight } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { spotOf } from './bearing.js';
import { type Camera, cameraFor } from './camera.js';
import { closedLine, openLine } from './outlines.js';
import type { PosedBody } from './pose-body.js';
import { type Stood, stoodIn } from './scene.js';
import { placeOf } from './skeleton.js';
import type { Vector } from './vector.js';

/** Where what bears on it is, in the first position that has it. */
function borneAt({ kind }: Stood, bodies: readonly PosedBody[]): readonly Vector[] {
  const each = bodies.map(({ pose, body }) =>
    pose.contacts.filter(({ on }) => on === kind).map((contact) => placeOf(body, spotOf(contact))),
  );
  return each.find((spots) => spots.length > 0) ?? [];
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);

/** The middle of what stands somewhere: as said, or under what first bears on it. */
const middleOf = (stood: Stood, bodies: readonly PosedBody[]): number =>
  stood.ahead ?? mean(borneAt(stood, bodies).map(([x]) => x));

/** Half of what each takes up, from the side as from the front. Centimetres. */
const HALF_WIDTHS = { chair: 20, bench: 45, box: 24, step: 24, blocks: 9 } as const;
const SEAT_HEIGHT = 45;
const SEAT_THICK = 4;
const BENCH_THICK = 5;
const BACK_REST = 42;
/** Who holds a chair by the top of its back has the seat beyond. */
const BACK_HELD = 60;

interface Chair {
  /** From its middle: where the back is, and the front edge of the seat. */
  readonly back: number;
  readonly front: number;
  readonly seat: number;
  readonly top: number;
}

function chairOf({ high, turned }: Stood): Chair {
  const half = HALF_WIDTHS.chair;
  const way = turned ? -1 : 1;
  return high > BACK_HELD
    ? { back: 0, front: 2 * half * way, seat: SEAT_HEIGHT, top: high }
    : { back: -(half + 3) * way, front: half * way, seat: high, top: high + BACK_REST };
}

/** A block of it that nothing goes through: along the room, up, and to the figure's right. */
export interface Solid {
  readonly kind: keyof typeof HALF_WIDTHS;
  readonly along: readonly [from: number, to: number];
  readonly up: readonly [low: number, high: number];
  readonly aside: readonly [from: number, to: number];
}

/** `bodies` are all positions, since it stays where it is. */
export const solidsIn = (pose: Pose, bodies: readonly PosedBody[]): readonly Solid[] =>
  stoodIn(pose).flatMap((stood): readonly Solid[] => {
    const { kind, high } = stood;
    if (kind === 'wall' || kind === 'mat') return [];
    const x = middleOf(stood, bodies);
    const half = HALF_WIDTHS[kind];
    // What one hand leans on stands on that side.
    const z = mean(borneAt(stood, bodies).map(([, , right]) => right));
    const aside = [z - half, z + half] as const;
    if (kind === 'chair') {
      const { back, front, seat } = chairOf(stood);
      const along = [x + Math.min(back, front), x + Math.max(back, front)] as const;
      return [{ kind, along, up: [seat - SEAT_THICK, seat], aside }];
    }
    return [{ kind, along: [x - half, x + half], up: [kind === 'bench' ? high - BENCH_THICK : 0, high], aside }];
  });

const mark = (paint: Paint, weight: Weight, outline: Outline): Mark => ({ paint, weight, outline, part: 'room' });
const line = (weight: Weight, ...spots: readonly Spot[]): Mark => mark('line', weight, openLine(spots));

function block([left, right]: readonly [number, number], [low, high]: readonly [number, number]): readonly Mark[] {
  const outline = closedLine([
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]);
  return [mark('edge', 'far', outline), mark('paper', 'far', outline)];
}

/** What stands about the figure in one of its positions; `bodies` are all of them. */
export const furnitureMarks = (pose: Pose, bodies: readonly PosedBody[]): readonly Mark[] =>
  stoodIn(pose).flatMap((stood) => marksOf(stood, middleOf(stood, bodies), cameraFor(pose.view)));

function marksOf(stood: Stood, ahead: number, camera: Camera): readonly Mark[] {
  const fromFront = Math.abs(camera.across[0]) < 0.3;
  const x = fromFront ? 0 : ahead * camera.across[0];
  const { kind, high } = stood;
  if (kind === 'mat') return [];
  if (kind === 'wall') return fromFront ? [] : wallMarks(x, high);
  if (kind === 'chair') return fromFront ? chairFromFront(stood) : chairFromSide(x, stood);
  const half = HALF_WIDTHS[kind];
  if (kind !== 'bench') return block([x - half, x + half], [0, high]);
  const leg = (side: 1 | -1): Mark =>
    line('far', [x + side * (half - 8), high - BENCH_THICK], [x + side * (half - 4), 0]);
  return [leg(-1), leg(1), ...block([x - half, x + half], [high - BENCH_THICK, high])];
}

function wallMarks(x: number, high: number): readonly Mark[] {
  const way = x >= 0 ? 1 : -1;
  const hatches = Array.from({ length: 9 }, (_, index): Mark => {
    const y = 14 + index * 22;
    return line('ghost', [x, y], [x + way * 9, y + 9]);
  });
  return [line('near', [x, 0], [x, high]), ...hatches];
}

function chairFromFront(stood: Stood): readonly Mark[] {
  const half = HALF_WIDTHS.chair;
  const { seat, top } = chairOf(stood);
  const leg = (side: 1 | -1): Mark => line('far', [side * (half - 2), seat - SEAT_THICK], [side * (half - 2), 0]);
  return [
    ...block([-half, half], [seat + 12, top]),
    ...block([-half, half], [seat - SEAT_THICK, seat]),
    leg(-1),
    leg(1),
  ];
}

function chairFromSide(x: number, stood: Stood): readonly Mark[] {
  const { back: behind, front: before, seat, top } = chairOf(stood);
  const [back, front] = [x + behind, x + before];
  const inward = before > behind ? -2 : 2;
  return [
    line('near', [back, 0], [back + 1, seat], [back, top]),
    line('near', [front + inward, seat - SEAT_THICK], [front, 0]),
    ...block([Math.min(back, front), Math.max(back, front)], [seat - SEAT_THICK, seat]),
  ];
}
