/**
 * Loads in another unit beside their own, held to the international pound: 1 lb = 0.45359237 kg exactly (international yard
 * and pound agreement, 1959; the factor NIST gives too). The figures below are worked from it by hand.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LoadText } from '../../src/model/booklet.js';
import { saySet, saySetAloud } from '../../src/words/say-dose.js';
import { inUnit } from '../../src/words/say-in-unit.js';
import { sayLoadAloud, sayLoadText } from '../../src/words/say-load.js';
import { speechOf } from '../../src/words/speech.js';

const english = speechOf('en-GB');
const nb = speechOf('nb');
const load = (figure: string, unit: string): LoadText => ({ figure, unit, pieces: '' });
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('beside its own mark', () => {
  // 16 kg = 35.27 lb, 24 kg = 52.91 lb, 4 kg = 8.82 lb, 1.25 kg = 2.756 lb; 35 lb = 15.876 kg, 53 lb = 24.04 kg, 45 lb = 20.41 kg.
  test.each([
    ['16', 'kg', 'lb', '16 kg (35 lb)'],
    ['24', 'kg', 'lb', '24 kg (53 lb)'],
    ['4', 'kg', 'lb', '4 kg (8.8 lb)'],
    ['1.25', 'kg', 'lb', '1.25 kg (2.8 lb)'],
    ['2 × 16', 'kg', 'lb', '2 × 16 kg (35 lb)'],
    ['+ 8', 'kg', 'lb', '+ 8 kg (18 lb)'],
    ['35', 'lb', 'kg', '35 lb (15.9 kg)'],
    ['53', 'lb', 'kg', '53 lb (24 kg)'],
    ['27.5', 'lb', 'kg', '27.5 lb (12.5 kg)'],
    ['16', 'kg', 'kg', '16 kg'],
    ['16', 'kg', 'as printed', '16 kg'],
    ['light band', '', 'lb', 'light band'],
    ['', '', 'lb', ''],
  ] as const)('%s %s in %s', (figure, unit, wanted, said) => {
    expect(plain(sayLoadText(inUnit(load(figure, unit), wanted, english)))).toBe(said);
  });

  test('with a comma where the language has one', () => {
    expect(plain(sayLoadText(inUnit(load('27,5', 'lb'), 'kg', nb)))).toBe('27,5 lb (12,5 kg)');
    expect(plain(sayLoadAloud(inUnit(load('35', 'lb'), 'kg', nb), nb))).toBe('35 pund, omtrent 15,9 kilo');
  });

  test('in a set, as printed and as read aloud', () => {
    const shown = inUnit(load('2 × 16', 'kg'), 'lb', english);
    expect(plain(saySet(shown, { reps: 8 }, english))).toBe('2 × 16 kg (35 lb) × 8');
    expect(saySetAloud(shown, { reps: 8 }, english)).toBe('2 times 16 kilograms, about 35 pounds, 8 reps');
  });
});

test('never further off than half of what is shown, and the load itself is never touched', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 800 }), fc.constantFrom('kg', 'lb'), (quarters, unit) => {
      const own = load(`${quarters / 4}`, unit);
      const wanted = unit === 'kg' ? 'lb' : 'kg';
      const shown = inUnit(own, wanted, english);
      expect(shown).toEqual({ ...own, other: shown.other });
      const exact = unit === 'kg' ? quarters / 4 / 0.45359237 : (quarters / 4) * 0.45359237;
      const step = wanted === 'lb' && exact >= 10 ? 1 : 0.1;
      expect(Math.abs(Number(shown.other?.figure) - exact)).toBeLessThanOrEqual(step / 2 + 1e-9);
    }),
  );
});
