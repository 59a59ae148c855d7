/**
 * The figure's measures against published ones.
 * Lengths: Drillis & Contini (1966), as printed by Winter, Biomechanics and Motor Control of Human Movement, fig. 4.1;
 * the long bones as several independent public sources print them, heights and breadths from memory.
 * Masses: Dempster, as printed by Winter, table 4.1.
 */
import { describe, expect, test } from 'vitest';
import {
  ankle,
  fingertip,
  headTop,
  hip,
  kneeCentre,
  MASSES,
  massCentre,
  shoulder,
  wrist,
} from '../../src/figures/landmarks.js';
import {
  CENTRES,
  FOREARM,
  FRACTIONS,
  HAND,
  MASS_SHARES,
  SHANK,
  STATURE,
  THIGH,
  TRUNK,
  UPPER_ARM,
} from '../../src/figures/proportions.js';
import { bodyOf, placeOf } from '../../src/figures/skeleton.js';
import { postureOf } from './some-poses.js';

describe('lengths of segments', () => {
  test('are the published fractions of stature', () => {
    expect(FRACTIONS).toEqual({
      upperArm: 0.186,
      forearm: 0.146,
      hand: 0.108,
      thigh: 0.245,
      shank: 0.246,
      foot: 0.152,
      ankleHeight: 0.039,
      trunk: 0.288,
      neck: 0.052,
      head: 0.13,
      shoulderBreadth: 0.259,
      hipBreadth: 0.191,
    });
  });

  // Heights above the floor of the same figure: hip 0.530, knee 0.285, ankle 0.039, shoulder 0.818, chin 0.870.
  test.each([
    ['thigh: hip less knee', FRACTIONS.thigh, 0.53 - 0.285],
    ['shank: knee less ankle', FRACTIONS.shank, 0.285 - 0.039],
    ['trunk: shoulder less hip', FRACTIONS.trunk, 0.818 - 0.53],
    ['hand: wrist less fingertip', FRACTIONS.hand, 0.485 - 0.377],
    ['neck: chin less shoulder', FRACTIONS.neck, 0.87 - 0.818],
    ['head: stature less chin', FRACTIONS.head, 1 - 0.87],
    ['leg: ankle, shank and thigh make the height of the hip', 0.039 + FRACTIONS.shank + FRACTIONS.thigh, 0.53],
    ['stature: leg, trunk, neck and head', 0.53 + FRACTIONS.trunk + FRACTIONS.neck + FRACTIONS.head, 1],
  ])('%s', (_, fraction, height) => {
    expect(fraction).toBeCloseTo(height, 9);
  });

  test('stand in the body as they stand in the table', () => {
    const body = bodyOf(postureOf({}, [0, 0.53 * STATURE, 0]));
    const high = (point: Parameters<typeof placeOf>[1]): number => placeOf(body, point)[1] / STATURE;
    expect(high(hip('left'))).toBeCloseTo(0.53, 6);
    expect(high(kneeCentre('left'))).toBeCloseTo(0.285, 6);
    expect(high(ankle('right'))).toBeCloseTo(0.039, 6);
    expect(high(shoulder('right'))).toBeCloseTo(0.818, 6);
    expect(high(wrist('left'))).toBeCloseTo(0.818 - 0.186 - 0.146, 6);
    expect(high(fingertip('left'))).toBeCloseTo(0.818 - 0.186 - 0.146 - 0.108, 6);
    // The head is drawn, not measured: within two hundredths of the stature it belongs to.
    expect(Math.abs(high(headTop) - 1)).toBeLessThan(0.02);
  });

  test('are centimetres on a person of 1.75 m', () => {
    const lengths = [UPPER_ARM, FOREARM, HAND, THIGH, SHANK, TRUNK];
    for (const [index, printed] of [32.55, 25.55, 18.9, 42.88, 43.05, 50.4].entries())
      expect(lengths[index]).toBeCloseTo(printed, 1);
  });
});

describe('masses of segments', () => {
  test('are the published shares of the body', () => {
    expect(MASS_SHARES).toEqual({
      head: 0.081,
      thorax: 0.216,
      abdomen: 0.139,
      pelvis: 0.142,
      upperArm: 0.028,
      forearm: 0.016,
      hand: 0.006,
      thigh: 0.1,
      shank: 0.0465,
      foot: 0.0145,
    });
    expect(CENTRES).toEqual({ upperArm: 0.436, forearm: 0.43, hand: 0.506, thigh: 0.433, shank: 0.433 });
  });

  test('thorax, abdomen and pelvis make the trunk; upper arm, forearm and hand an arm; thigh, shank and foot a leg', () => {
    const { thorax, abdomen, pelvis, upperArm, forearm, hand, thigh, shank, foot } = MASS_SHARES;
    expect(thorax + abdomen + pelvis).toBeCloseTo(0.497, 9);
    expect(upperArm + forearm + hand).toBeCloseTo(0.05, 9);
    expect(thigh + shank + foot).toBeCloseTo(0.161, 9);
  });

  test('make one body together', () => {
    expect(MASSES).toHaveLength(16);
    expect(MASSES.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  // Textbooks of anatomy put it at about 55 to 57 hundredths of stature, before the second sacral vertebra: from memory.
  test('lie, standing, at about 0.55 to 0.57 of stature', () => {
    const [ahead, high, aside] = massCentre(bodyOf(postureOf({}, [0, 0.53 * STATURE, 0])));
    expect(high / STATURE).toBeGreaterThan(0.55);
    expect(high / STATURE).toBeLessThan(0.575);
    expect(Math.abs(ahead)).toBeLessThan(3);
    expect(aside).toBeCloseTo(0, 9);
  });
});
