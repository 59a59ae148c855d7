/**
 * Contrast ratios on white, W3C Recommendation *Web Content Accessibility Guidelines 2.2*, glossary entries
 * "contrast ratio" and "relative luminance". The values were worked by hand from the formula and by a second program.
 */
import { expect, test } from 'vitest';
import { contrastOf } from '../browser/contrast.js';

test.each([
  ['#000000', 21],
  ['#767676', 4.542225],
  ['#777777', 4.478089],
  ['#949494', 3.03347],
  ['#959595', 2.995346],
  ['#595959', 7.004729],
  ['#5a5a5a', 6.896926],
  ['#ff0000', 3.998477],
  ['#0000ff', 8.592471],
  ['#008000', 5.137403],
  ['#ffff00', 1.073839],
])('%s on white is %d', (colour, ratio) => {
  expect(contrastOf(colour, '#ffffff')).toBeCloseTo(ratio, 5);
});
