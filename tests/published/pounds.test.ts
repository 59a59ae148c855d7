/**
 * The international avoirdupois pound is 0.45359237 kg exactly (international yard and pound agreement, 1959; also
 * NIST Handbook 44, appendix C, from memory). The kilograms below are the figures of UCUM's own conversion table,
 * recomputed with a general-purpose units library; to the gram here.
 */
import { describe, expect, test } from 'vitest';
import { isAtMost } from '../../src/engine/kit/at-most.js';
import { listLoads } from '../../src/engine/kit/list-loads.js';
import { labelOfSum } from '../../src/engine/kit/load-label.js';
import { GRAMS_IN_A_POUND, gramsOf } from '../../src/model/quantity.js';
import { kitOf, mass } from '../engine/generate-studio.js';

describe('pounds', () => {
  test.each([
    [35, 15.87573295],
    [53, 24.04039561],
    [1, 0.45359237],
  ])('%s lb is %s kg', (pounds, kilograms) => {
    expect(gramsOf(pounds, 'lb')).toBe(Math.round(kilograms * 1000));
    expect((pounds * GRAMS_IN_A_POUND) / 1000).toBeCloseTo(kilograms, 8);
  });

  test.each([
    [16, 35.27396195],
    [24, 52.91094292],
  ])('%s kg is %s lb', (kilograms, pounds) => {
    expect(gramsOf(kilograms, 'kg') / GRAMS_IN_A_POUND).toBeCloseTo(pounds, 7);
  });

  test('a 35 lb bell is printed as its owner calls it, and stands between 12 and 16 kg', () => {
    const kit = kitOf([
      ['bell', mass('16', 'kg')],
      ['bell', mass('35', 'lb')],
      ['bell', mass('12', 'kg')],
    ]);
    const need = { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] } as const;
    expect(listLoads(kit, need, 'total', 'kg').loads.map(({ label }) => label)).toEqual(['12 kg', '35 lb', '16 kg']);
  });

  test('items in pounds add up in pounds; mixed ones in the client’s unit', () => {
    const pounds = ['45', '45', '45'].map((figure) => mass(figure, 'lb'));
    expect(labelOfSum(pounds, 1, 'kg')).toBe('135 lb');
    expect(labelOfSum([mass('5', 'lb'), mass('1.25', 'lb'), mass('1.25', 'lb')], 1, 'kg')).toBe('7.5 lb');
    expect(labelOfSum([mass('20', 'kg'), mass('45', 'lb'), mass('45', 'lb')], 1, 'kg')).toBe('60.82 kg');
    expect(labelOfSum([mass('20', 'kg'), mass('45', 'lb'), mass('45', 'lb')], 1, 'lb')).toBe('134.09 lb');
  });

  test('rounding each plate to the gram does not put 135 lb out of reach', () => {
    const kit = kitOf([
      ['bar', mass('45', 'lb')],
      ['plate', mass('45', 'lb')],
      ['plate', mass('45', 'lb')],
    ]);
    const need = { load: [{ kind: 'bar' }], unloaded: false, things: [] } as const;
    const [, loaded] = listLoads(kit, need, 'total', 'lb').loads;
    if (loaded === undefined) throw new Error('the bar can be loaded');
    expect(loaded.grams).toBe(61_236);
    expect(gramsOf(135, 'lb')).toBe(61_235);
    expect(isAtMost(loaded, gramsOf(135, 'lb'))).toBe(true);
    expect(isAtMost(loaded, gramsOf(134, 'lb'))).toBe(false);
  });
});
