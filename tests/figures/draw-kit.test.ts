/**
 * Kit by its measures. A competition bell is 280 mm high, its ball 210 mm and its handle 35 mm thick (second-hand, a
 * club's page, ickbgirls.com, August 2015); the largest plates are 450 mm across (from memory, no source seen).
 */
import { describe, expect, test } from 'vitest';
import { cameraFor, seen } from '../../src/figures/camera.js';
import { contactMisses } from '../../src/figures/check-reach.js';
import { drawKit } from '../../src/figures/draw-kit.js';
import { furnitureMarks } from '../../src/figures/furniture.js';
import { ball, grip } from '../../src/figures/landmarks.js';
import { boxOf } from '../../src/figures/outlines.js';
import { type PosedBody, poseBodies } from '../../src/figures/pose-body.js';
import { placeOf } from '../../src/figures/skeleton.js';
import { type Mark, type Spot, WIDTHS } from '../../src/model/picture.js';
import { type BandEnd, BODY_SIDES, type Pose } from '../../src/model/pose.js';
import { both, limb, pose } from './some-poses.js';

function one(change: Partial<Pose>): PosedBody {
  const [posed] = poseBodies([pose('a', change)]);
  if (!posed) throw new RangeError('one position gives one body');
  return posed;
}
const kitOf = ({ pose: drawn, body }: PosedBody): readonly Mark[] =>
  drawKit(drawn, body, cameraFor(drawn.view)).flatMap(({ marks }) => marks);
const size = (marks: readonly Mark[]): Spot => {
  const { left, right, low, high } = boxOf(marks);
  return [right - left, high - low];
};
const ends = ({ outline }: Mark): readonly Spot[] =>
  outline.flatMap((step) => (step.kind === 'close' ? [] : [step.to]));

describe('a bell', () => {
  const onFloor = (): readonly Mark[] => kitOf(one({ kit: [{ kind: 'bell', held: 'floor', ahead: 40 }] }));
  const solid = (marks: readonly Mark[]): readonly Mark[] => marks.filter(({ paint }) => paint === 'solid');
  const handle = (marks: readonly Mark[]): readonly Mark[] => marks.filter(({ paint }) => paint === 'line');

  test('has a ball of 210 mm', () => {
    const [wide, high] = size(solid(onFloor()));
    expect(wide * 10).toBeCloseTo(210, 3);
    expect(high * 10).toBeCloseTo(210, 3);
  });

  test('has a handle of 35 mm', () => {
    const marks = handle(onFloor());
    expect(marks.map(({ weight }) => weight)).toEqual(['near']);
    expect(WIDTHS.near * 10).toBeCloseTo(35, 6);
  });

  test('is 280 mm high, and stands on the floor', () => {
    const marks = onFloor();
    const top = boxOf(handle(marks)).high + WIDTHS.near / 2;
    const { low } = boxOf(solid(marks));
    expect(low).toBeCloseTo(0, 6);
    expect((top - low) * 10).toBeCloseTo(280, 3);
  });
});

test('a bar seen from its end is a plate of 450 mm', () => {
  const marks = kitOf(one({ kit: [{ kind: 'bar', held: 'floor' }] })).filter(({ paint }) => paint === 'edge');
  const [wide, high] = size(marks);
  // Its line goes all round it, outside.
  expect((wide + 2 * WIDTHS.near) * 10).toBeCloseTo(450, 3);
  expect((high + 2 * WIDTHS.near) * 10).toBeCloseTo(450, 3);
});

describe('a band', () => {
  const spots = (posed: PosedBody, end: 'feet' | 'hands'): readonly Spot[] =>
    BODY_SIDES.map((side) =>
      seen(cameraFor(posed.pose.view), placeOf(posed.body, end === 'feet' ? ball(side) : grip(side))),
    );
  const bandOf = (from: BandEnd, to: BandEnd): PosedBody =>
    one({ view: 'half', hands: both('chest'), kit: [{ kind: 'band', ends: [from, to] }] });

  test('from feet to hands goes from each foot to its hand', () => {
    const posed = bandOf('feet', 'hands');
    const [feet, hands] = [spots(posed, 'feet'), spots(posed, 'hands')];
    expect(kitOf(posed).map(ends)).toEqual(feet.map((foot, index) => [foot, hands[index]]));
  });

  test('between the hands is one piece', () => {
    const posed = bandOf('hands', 'hands');
    expect(kitOf(posed).map(ends)).toEqual([spots(posed, 'hands')]);
  });

  test('from one foot to one hand keeps to its side', () => {
    const posed = bandOf('right foot', 'right hand');
    expect(kitOf(posed).map(ends)).toEqual([[spots(posed, 'feet')[1], spots(posed, 'hands')[1]]]);
  });
});

describe('blocks', () => {
  const leaning = (high: number): PosedBody =>
    one({
      contacts: [...limb('toes'), ...limb('hand', 'blocks')],
      trunk: { lying: 'face down' },
      hips: both({ flex: 0 }),
      knees: both(0),
      shoulders: both({ flex: 66 }),
      elbows: both(0),
      kit: [{ kind: 'blocks', high }],
    });

  test.each([8, 16])('%i cm high bear the hands at their height', (high) => {
    const posed = leaning(high);
    const hands = contactMisses(posed.pose, posed.body).filter(({ to }) => to === 'blocks');
    expect(hands).toHaveLength(2);
    for (const { millimetres } of hands) expect(millimetres).toBeLessThanOrEqual(1);
    const { low, high: top, left, right } = boxOf(furnitureMarks(posed.pose, [posed]));
    expect(low).toBe(0);
    expect(top).toBe(high);
    const x = placeOf(posed.body, grip('right'))[0];
    expect(left).toBeLessThan(x);
    expect(right).toBeGreaterThan(x);
  });
});
