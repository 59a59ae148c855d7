/** Bodies found from positions: what bears them is where it is said to be, left is right in a mirror, twice is the same. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearingsOf } from '../../src/figures/bearing.js';
import { drawExercise } from '../../src/figures/draw-exercise.js';
import { grip } from '../../src/figures/landmarks.js';
import { type PosedBody, poseBodies } from '../../src/figures/pose-body.js';
import { aheadOf, heightOf } from '../../src/figures/scene.js';
import { ANGLES, addSlope, bodyOf, FREEDOMS, type Posture, placeOf, SEGMENTS } from '../../src/figures/skeleton.js';
import { aboutLine, add, dot, NO_TURN, times, both as turnedBy, unit, type Vector } from '../../src/figures/vector.js';
import { type BallJoint, BODY_SIDES, type OnSides, type Pose } from '../../src/model/pose.js';
import { exercise } from '../fixtures/library.js';
import { both, limb, pose } from './some-poses.js';

/** Centimetres off, at the worst point of all that bears the body. */
function worst({ pose: one, body }: PosedBody): number {
  const offs = one.contacts.flatMap((contact) =>
    bearingsOf(contact).map(({ at, off }) => {
      const [x, y] = placeOf(body, at);
      if (contact.on !== 'wall') return Math.abs(y - heightOf(one, contact.on) - off);
      return Math.abs(x - (aheadOf(one, 'wall') ?? 0) + off);
    }),
  );
  return Math.max(...offs);
}

const apart = fc.integer({ min: 14, max: 60 });
const ahead = fc.integer({ min: -45, max: 45 });

describe('what bears the body is less than a millimetre off', () => {
  const held = (poses: readonly Pose[]): void => {
    for (const posed of poseBodies(poses)) expect(worst(posed)).toBeLessThan(0.1);
  };

  test('feet, anywhere in a stance or a stride, knees bent or not', () => {
    fc.assert(
      fc.property(apart, ahead, fc.integer({ min: 0, max: 90 }), (wide, far, bend) => {
        const feet = { left: {}, right: { ahead: far }, apart: wide };
        held([
          pose('start', { contacts: [...limb('foot')], feet }),
          pose('low', { contacts: [...limb('foot')], feet, knees: far === 0 ? both(bend) : both(undefined) }),
        ]);
      }),
      { numRuns: 25 },
    );
  });

  test('hands, on a box or a wall within an arm’s length', () => {
    // A palm flat on a nearer wall asks more of a wrist than it has.
    const wallAway = fc.integer({ min: 40, max: 60 });
    const box = fc.record({ high: fc.integer({ min: 80, max: 95 }), far: fc.integer({ min: 35, max: 45 }) });
    fc.assert(
      fc.property(box, wallAway, apart, ({ high, far }, wall, wide) => {
        const feet = { ...both({}), apart: wide };
        held([
          pose('box', {
            contacts: [...limb('foot'), ...limb('hand', 'box')],
            feet,
            trunk: { lean: 40 },
            kit: [{ kind: 'box', high, ahead: far }],
          }),
        ]);
        held([
          pose('wall', {
            contacts: [...limb('foot'), ...limb('hand', 'wall')],
            feet,
            kit: [{ kind: 'wall', ahead: wall }],
          }),
        ]);
      }),
      { numRuns: 20 },
    );
  });

  test('hands and knees, hands and toes, on the floor', () => {
    held([pose('all fours', { contacts: [...limb('hand'), ...limb('knee')], trunk: { lean: 88 } })]);
    held([pose('high plank', { contacts: [...limb('hand'), ...limb('toes')], trunk: { lying: 'face down' } })]);
  });
});

test('a hand said to be at the breastbone is there, whatever the legs do', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 110 }), (bend) => {
      const [posed] = poseBodies([pose('a', { knees: both(bend), hands: both('chest') })]);
      if (!posed) throw new RangeError('one position gives one body');
      const from = placeOf(posed.body, { segment: 'thorax', at: [0, 0, 0] });
      const off = placeOf(posed.body, grip('right'));
      expect(Math.hypot(off[0] - from[0], off[1] - from[1])).toBeLessThan(25);
    }),
    { numRuns: 10 },
  );
});

const mirrored = (one: Pose): Pose => {
  const swap = <Value>({ left, right }: OnSides<Value>): OnSides<Value> => ({ left: right, right: left });
  return {
    ...one,
    contacts: one.contacts.map((contact) =>
      contact.side === undefined ? contact : { ...contact, side: contact.side === 'left' ? 'right' : 'left' },
    ),
    feet: { ...one.feet, ...swap(one.feet) },
    hips: swap<BallJoint>(one.hips),
    knees: swap(one.knees),
    elbows: swap(one.elbows),
    shoulders: swap<BallJoint>(one.shoulders),
    hands: swap(one.hands),
  };
};

test('a table with left for right gives the body in a mirror', () => {
  const lunge = [
    pose('start', { contacts: [...limb('foot')], trunk: { lean: 0 } }),
    pose('low', {
      contacts: [
        { part: 'foot', side: 'right', on: 'floor' },
        { part: 'toes', side: 'left', on: 'floor' },
      ],
      feet: { left: { ahead: -70 }, right: {} },
      trunk: { lean: 5 },
      knees: { left: 80, right: 85 },
      hands: { left: undefined, right: 'shoulder' },
    }),
  ];
  const [here, there] = [poseBodies(lunge), poseBodies(lunge.map(mirrored))];
  here.forEach(({ body }, index) => {
    const glass = there[index]?.body;
    if (!glass) throw new RangeError('as many in the mirror');
    for (const segment of SEGMENTS) {
      const opposite = SEGMENTS.find(
        (one) => one === segment.replace(/^(left|right)/, (side) => (side === 'left' ? 'right' : 'left')),
      );
      if (!opposite) throw new RangeError('every limb has another');
      const [x, y, z] = placeOf(body, { segment, at: [0, 0, 0] });
      const [mx, my, mz] = placeOf(glass, { segment: opposite, at: [0, 0, 0] });
      for (const off of [x - mx, y - my, z + mz]) expect(Math.abs(off)).toBeLessThan(0.05);
    }
  });
});

test('the same table gives the same drawing, to the last digit', () => {
  const table = (): readonly Pose[] => [
    pose('start', { hands: both('chest'), kit: [{ kind: 'bell', held: 'both' }] }),
    pose('low', { knees: both(100), hands: both('chest'), kit: [{ kind: 'bell', held: 'both' }] }),
  ];
  const { facts } = exercise('twice', 'Twice', {}, {});
  const drawn = (): string => JSON.stringify(drawExercise({ poses: table(), facts }));
  expect(drawn()).toBe(drawn());
});

describe('how a point moves with each freedom', () => {
  const angle = fc.double({ min: -1, max: 1, noNaN: true });
  const postures = fc.record({
    at: fc.tuple(angle, angle, angle),
    spin: fc.tuple(angle, angle, angle),
    angles: fc.array(angle, { minLength: ANGLES.length, maxLength: ANGLES.length }),
  });
  const step = 1e-5;

  const nudged = ({ at, turn, angles }: Posture, freedom: number, by: number): Posture => {
    const along = (first: number): Vector => [
      freedom === first ? by : 0,
      freedom === first + 1 ? by : 0,
      freedom === first + 2 ? by : 0,
    ];
    return {
      at: add(at, along(0)),
      turn: turnedBy(aboutLine(along(3)), turn),
      angles: angles.map((was, index) => (freedom === 6 + index ? was + by : was)),
    };
  };

  test('is what finite differences find', () => {
    fc.assert(
      fc.property(
        postures,
        fc.constantFrom(...SEGMENTS),
        fc.tuple(angle, angle, angle),
        ({ at, spin, angles }, segment, towards) => {
          const posture: Posture = { at, turn: turnedBy(aboutLine(spin), NO_TURN), angles };
          const point = { segment, at: [3, -8, 2] as const };
          const direction = unit(add(towards, times([1, 0, 0], 2)));
          const slope = new Float64Array(FREEDOMS);
          const body = bodyOf(posture);
          addSlope(body, point, placeOf(body, point), direction, 1, slope);
          for (let freedom = 0; freedom < FREEDOMS; freedom += 1) {
            const reach = (by: number): number => dot(placeOf(bodyOf(nudged(posture, freedom, by)), point), direction);
            const found = (reach(step) - reach(-step)) / (2 * step);
            expect(Math.abs((slope[freedom] ?? 0) - found)).toBeLessThan(1e-4);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a hip moves nothing of the arms, an elbow nothing of the legs', () => {
    const body = bodyOf({ at: [0, 0, 0], turn: NO_TURN, angles: ANGLES.map(() => 0.3) });
    for (const side of BODY_SIDES) {
      const slope = new Float64Array(FREEDOMS);
      const hand = grip(side);
      addSlope(body, hand, placeOf(body, hand), [1, 0, 0], 1, slope);
      ANGLES.forEach((name, index) => {
        if (/ (hip|knee|ankle|toe)/.test(name)) expect(slope[6 + index]).toBe(0);
      });
      expect(slope[6 + ANGLES.indexOf(`${side} elbow`)]).not.toBe(0);
    }
  });
});
