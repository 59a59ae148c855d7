/** The pace of swing work against the one published count of it. */
import { expect, test } from 'vitest';
import { SECONDS_A_SWING } from '../../src/engine/rules/seconds-a-swing.js';

/**
 * Farrar, Mayhew & Koch 2010, Oxygen cost of kettlebell swings, J Strength Cond Res 24(4):1034-1036, results: 265
 * (± 68) two-hand swings with 16 kg in 12 minutes, the men resting as they chose.
 */
const SWINGS = 265;
const SECONDS = 12 * 60;

test('a swing takes as long as in the study, its pauses included, to the tenth of a second', () => {
  expect(SECONDS_A_SWING.unit).toBe('tenths of a second');
  expect(Math.floor((10 * SECONDS) / SWINGS)).toBe(SECONDS_A_SWING.value);
  // As many as were done come out at the 12 minutes they were done in, within five seconds.
  expect(Math.abs((SWINGS * SECONDS_A_SWING.value) / 10 - SECONDS)).toBeLessThan(5);
});
