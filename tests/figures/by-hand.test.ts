/**
 * Where joints are, against trigonometry done by hand from the published lengths alone: on a person of 1.75 m an upper arm
 * is 32.55 cm, a forearm 25.55, a thigh 42.875, a shank 43.05, the trunk 50.4, and an ankle is 6.825 above the floor.
 */
import { describe, expect, test } from 'vitest';
import { bearingsOf } from '../../src/figures/bearing.js';
import {
  ankle,
  ball,
  elbow,
  heel,
  hip,
  hipsMiddle,
  kneeCentre,
  shoulder,
  shouldersMiddle,
  wrist,
} from '../../src/figures/landmarks.js';
import { poseBodies } from '../../src/figures/pose-body.js';
import { type Angle, type Body, bodyOf, type Landmark, placeOf } from '../../src/figures/skeleton.js';
import { about, minus, radians, type Vector } from '../../src/figures/vector.js';
import type { Pose } from '../../src/model/pose.js';
import { bent, both, limb, pose, postureOf } from './some-poses.js';

const [ARM, FORE, THIGH, SHANK, TRUNK, ANKLE] = [32.55, 25.55, 42.875, 43.05, 50.4, 6.825];
const way = (body: Body, from: Landmark, to: Landmark): Vector => minus(placeOf(body, to), placeOf(body, from));
const near = (found: Vector, wanted: Vector, digits = 6): void => {
  for (const axis of [0, 1, 2] as const) expect(found[axis]).toBeCloseTo(wanted[axis], digits);
};

describe('angles alone', () => {
  const cases: readonly (readonly [string, Partial<Record<Angle, number>>, Landmark, Landmark, Vector])[] = [
    ['an arm straight ahead', { 'right shoulder flex': 90 }, shoulder('right'), wrist('right'), [ARM + FORE, 0, 0]],
    ['an arm straight up', { 'left shoulder flex': 180 }, shoulder('left'), wrist('left'), [0, ARM + FORE, 0]],
    ['an arm out to its side', { 'right shoulder out': 90 }, shoulder('right'), wrist('right'), [0, 0, ARM + FORE]],
    [
      'the other arm out to its side',
      { 'left shoulder out': 90 },
      shoulder('left'),
      wrist('left'),
      [0, 0, -ARM - FORE],
    ],
    ['an elbow bent square at the side', { 'right elbow': 90 }, shoulder('right'), wrist('right'), [FORE, -ARM, 0]],
    [
      'an arm ahead with its elbow square, the hand up',
      { 'right shoulder flex': 90, 'right elbow': 90 },
      shoulder('right'),
      wrist('right'),
      [ARM, FORE, 0],
    ],
    ['a straight leg raised level', { 'left hip flex': 90 }, hip('left'), ankle('left'), [THIGH + SHANK, 0, 0]],
    ['sitting square', { 'right hip flex': 90, 'right knee': 90 }, hip('right'), ankle('right'), [THIGH, -SHANK, 0]],
    ['a heel to the seat', { 'right knee': 90 }, hip('right'), ankle('right'), [-SHANK, -THIGH, 0]],
    [
      'a leg 30° out',
      { 'right hip out': 30 },
      hip('right'),
      ankle('right'),
      [0, -(THIGH + SHANK) * Math.cos(Math.PI / 6), (THIGH + SHANK) / 2],
    ],
    [
      'a hip at 45° and a knee at 45°, the shank upright',
      { 'left hip flex': 45, 'left knee': 45 },
      hip('left'),
      ankle('left'),
      [THIGH * Math.SQRT1_2, -THIGH * Math.SQRT1_2 - SHANK, 0],
    ],
  ];
  test.each(cases)('%s', (_, angles, from, to, wanted) => {
    near(way(bent(angles), from, to), wanted);
  });

  test.each([30, 60, 90, 120, 140])('a knee bent by %i°: hip and ankle as the law of cosines has them', (angle) => {
    const [x, y, z] = way(bent({ 'right knee': angle }), hip('right'), ankle('right'));
    const wanted = Math.sqrt(THIGH ** 2 + SHANK ** 2 - 2 * THIGH * SHANK * Math.cos(radians(180 - angle)));
    expect(Math.hypot(x, y, z)).toBeCloseTo(wanted, 6);
  });

  test('a hinge of the whole trunk by 90° puts the shoulders level with the hips', () => {
    const posture = { ...postureOf({}), turn: about('z', -Math.PI / 2) };
    near(way(bodyOf(posture), hipsMiddle, shouldersMiddle), [TRUNK, 0, 0]);
  });
});

describe('positions found', () => {
  const found = (change: Partial<Pose>): Body => {
    const [first] = poseBodies([pose('a', change), pose('b')]);
    if (!first) throw new RangeError('one position gives one body');
    return first.body;
  };
  /** Within a millimetre: what bears the body is exact. */
  const exact = (length: number, wanted: number): void => expect(Math.abs(length - wanted)).toBeLessThan(0.1);
  /** Within a centimetre: what is said of angles and balance gives way a little. */
  const about1 = (length: number, wanted: number): void => expect(Math.abs(length - wanted)).toBeLessThan(1);
  const high = (body: Body, point: Landmark): number => placeOf(body, point)[1];

  test('standing with straight knees: the hips at ankle, shank and thigh, the shoulders a trunk above', () => {
    const body = found({ knees: both(0), ankles: both(0), trunk: { lean: 0 } });
    exact(high(body, heel('left')), 0);
    exact(high(body, ball('right')), 0);
    about1(high(body, hip('left')), ANKLE + SHANK + THIGH);
    about1(high(body, shouldersMiddle), ANKLE + SHANK + THIGH + TRUNK);
  });

  test('standing with hands ahead: the wrists level with the shoulders, an arm ahead', () => {
    const body = found({ hands: both('ahead'), trunk: { lean: 0 } });
    const [x, y] = way(body, shoulder('right'), wrist('right'));
    about1(x, ARM + FORE);
    expect(Math.abs(y)).toBeLessThan(2);
  });

  test('kneeling upright: the hips a thigh above the knees’ middle, which lie 5.8 cm above the floor', () => {
    const body = found({
      contacts: [...limb('knee')],
      trunk: { lean: 0 },
      hips: both({ flex: 0 }),
      knees: both(90),
    });
    exact(high(body, kneeCentre('left')), 5.8);
    about1(high(body, hip('left')), 5.8 + THIGH);
  });

  test('half kneeling, square: the front thigh from the rear thigh’s height to the front shank’s', () => {
    const body = found({
      contacts: [
        { part: 'knee', side: 'left', on: 'floor' },
        { part: 'foot', side: 'right', on: 'floor' },
      ],
      feet: { left: { ahead: -48 }, right: {} },
      trunk: { lean: 0 },
      hips: { left: { flex: 0 }, right: {} },
    });
    exact(high(body, kneeCentre('left')), 5.8);
    exact(high(body, heel('right')), 0);
    about1(high(body, hip('left')), 5.8 + THIGH);
    const [, shank] = way(body, ankle('right'), kneeCentre('right'));
    const [, thigh] = way(body, hip('right'), kneeCentre('right'));
    exact(high(body, ankle('right')), ANKLE);
    exact(high(body, hip('right')) + thigh, ANKLE + shank);
  });

  test('a plank on forearms: elbows 4 cm above the floor, shoulders an upper arm above them', () => {
    const body = found({
      contacts: [...limb('forearm'), ...limb('toes')],
      trunk: { lying: 'face down' },
      hips: both({ flex: 0 }),
      knees: both(0),
      shoulders: both({ flex: 85, out: 0, turn: 0 }),
      elbows: both(90),
    });
    exact(high(body, elbow('left')), 4);
    exact(high(body, ball('left')), 0);
    // The forearm falls from 4 cm at the elbow to 2.8 at the wrist, and an arm square to it leans by so much.
    about1(high(body, shoulder('left')), 4 + ARM * Math.cos(Math.asin(1.2 / FORE)));
  });

  test('sitting on a chair of 45 cm: the hips 8.7 cm above the seat, the feet flat', () => {
    const body = found({
      contacts: [{ part: 'seat', on: 'chair' }, ...limb('foot')],
      trunk: { lean: 0 },
      knees: both(90),
      kit: [{ kind: 'chair' }],
    });
    const [seat] = bearingsOf({ part: 'seat', on: 'chair' });
    if (!seat) throw new RangeError('a seat bears');
    exact(high(body, seat.at), 45 + 8.7);
    exact(high(body, heel('left')), 0);
    // The shank from the ankle, the thigh from the hips: they meet at the knee, bent square.
    const [ax, ay, az] = way(body, hip('right'), ankle('right'));
    about1(Math.hypot(ax, ay, az), Math.sqrt(THIGH ** 2 + SHANK ** 2));
  });
});
