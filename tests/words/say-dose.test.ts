/** Loads, doses and the spaces that hold them together. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kitItemId } from '../../src/model/identity.js';
import type { PlanLoad } from '../../src/model/plan.js';
import { sayDose, sayEffort, saySet, saySetAloud, sayTenths, stackSet } from '../../src/words/say-dose.js';
import { type KitLabels, NO_LOAD, sayLoad, sayLoadText } from '../../src/words/say-load.js';
import { speechOf } from '../../src/words/speech.js';

const speech = speechOf('en-GB');
const arabic = speechOf('ar');
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const kit: KitLabels = [
  { id: kitItemId('bell-16'), kind: 'bell', grams: 16_000, label: '16 kg' },
  { id: kitItemId('bar'), kind: 'bar', grams: 20_000, label: '20 kg' },
  ...[1, 2].map((n) => ({ id: kitItemId(`plate-10-${n}`), kind: 'plate' as const, grams: 10_000, label: '10 kg' })),
  ...[1, 2].map((n) => ({ id: kitItemId(`plate-1-${n}`), kind: 'plate' as const, grams: 1250, label: '1.25 kg' })),
];
const load = (label: string, ids: readonly string[] = [], grams = 16_000): PlanLoad => ({
  kg: grams / 1000,
  grams,
  mode: 'total',
  pieces: ids.map((id) => ({ id: kitItemId(id), grams: 0 })),
  label,
});

describe('a load', () => {
  test('is a figure and a unit, in the author’s own unit', () => {
    expect(sayLoad(load('16 kg', ['bell-16']), kit, speech)).toEqual({ figure: '16', unit: 'kg', pieces: '' });
    expect(sayLoad(load('35 lb', ['bell-16'], 15_876), kit, speech)).toEqual({ figure: '35', unit: 'lb', pieces: '' });
    expect(plain(sayLoad(load('2 × 16 kg'), kit, speech).figure)).toBe('2 × 16');
    expect(plain(sayLoadText(sayLoad(load('16 kg + 12 kg'), kit, speech)))).toBe('16 kg + 12 kg');
    expect(sayLoad(load('red band'), kit, speech)).toEqual({ figure: 'red\u00a0band', unit: '', pieces: '' });
  });

  test('names bar and plates, the heaviest first', () => {
    const bar = sayLoad(load('42.5 kg', ['bar', 'plate-1-1', 'plate-10-1', 'plate-10-2', 'plate-1-2']), kit, speech);
    expect(plain(bar.pieces)).toBe('bar + 2 × 10 kg + 2 × 1.25 kg');
  });

  test('is nothing at all for the body alone', () => {
    expect(sayLoad(undefined, kit, speech)).toEqual(NO_LOAD);
    expect(sayLoad(load('', [], 0), kit, speech)).toEqual(NO_LOAD);
  });
});

describe('one set', () => {
  const bell = sayLoad(load('16 kg', ['bell-16']), kit, speech);
  const pair = sayLoad(load('2 × 16 kg'), kit, speech);

  test('reads as on the wall', () => {
    expect(saySet(bell, { reps: 8 }, speech)).toBe('16\u00a0kg ×\u00a08');
    expect(saySet(bell, { seconds: 30 }, speech)).toBe('16\u00a0kg, 30\u00a0s');
    expect(saySet(bell, { metres: 20 }, speech)).toBe('16\u00a0kg, 20\u00a0m');
    expect(saySet(NO_LOAD, { reps: 8 }, speech)).toBe('8\u00a0reps');
    expect(saySet(NO_LOAD, { reps: 1 }, speech)).toBe('1\u00a0rep');
    expect(stackSet(bell, { reps: 8 }, speech)).toEqual(['16\u00a0kg', '×8']);
    expect(stackSet(bell, { seconds: 30 }, speech)).toEqual(['16\u00a0kg', '30\u00a0s']);
    expect(stackSet(NO_LOAD, { reps: 8 }, speech)).toEqual(['8\u00a0reps']);
  });

  test('reads aloud in whole words', () => {
    expect(saySetAloud(bell, { reps: 8 }, speech)).toBe('16 kilograms, 8 reps');
    expect(saySetAloud(pair, { reps: 1 }, speech)).toBe('2 times 16 kilograms, 1 rep');
    expect(saySetAloud(NO_LOAD, { seconds: 30 }, speech)).toBe('30 seconds');
  });

  test('always carries the unit of its load and breaks only before the ×', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.constantFrom('kg', 'lb'),
        fc.integer({ min: 1, max: 99 }),
        (n, unit, reps) => {
          const text = saySet(sayLoad(load(`${n} ${unit}`), kit, speech), { reps }, speech);
          expect(text.split(' ')).toEqual([`${n}\u00a0${unit}`, `×\u00a0${reps}`]);
        },
      ),
    );
  });

  test('keeps its order in a line that runs from right to left', () => {
    expect(saySet(bell, { reps: 8 }, arabic)).toBe('\u206616\u00a0kg ×\u00a08\u2069');
    // What is a word of the language runs with its line.
    expect(saySet(bell, { seconds: 30 }, arabic)).toBe('\u206616\u00a0kg\u2069, 30\u00a0s');
    const dose = { kind: 'sets', sets: 3, reps: { min: 8, max: 8 }, eachSide: false } as const;
    expect(sayDose(dose, arabic)).toBe('\u20663\u00a0×\u00a08\u2069');
  });
});

describe('a row’s dose', () => {
  const reps = { min: 8, max: 12 };
  test.each([
    [{ kind: 'sets', sets: 3, reps, eachSide: false }, '3 × 8–12'],
    [{ kind: 'sets', sets: 4, reps: { min: 6, max: 6 }, eachSide: true }, '4 × 6 each side'],
    [{ kind: 'timed', sets: 3, seconds: { min: 20, max: 40 }, eachSide: true }, '3 × 20–40 s each side'],
    [{ kind: 'distance', sets: 3, metres: { min: 20, max: 20 }, eachSide: false }, '3 × 20 m'],
    [{ kind: 'every', minutes: 10, reps: 8, everySeconds: 60 }, '10 min: 8 every minute'],
    [{ kind: 'every', minutes: 10, reps: 8, everySeconds: 90 }, '10 min: 8 every 90 s'],
    [{ kind: 'main-next', main: 15, next: 5 }, '15 with the main bell, then 5 with the next up'],
    [{ kind: 'steps', reps: [1, 2, 3], times: 4 }, '1-2-3, 4 times through'],
    [{ kind: 'rounds', rounds: 3 }, '3 rounds'],
  ] as const)('%o is said %s', (dose, said) => {
    expect(plain(sayDose(dose, speech))).toBe(said);
  });
});

test('reserve is whole reps, or the two either side of a half', () => {
  expect(sayEffort(20, speech)).toBe('Leave 2 in reserve.');
  expect(sayEffort(25, speech)).toBe('Leave 2 to 3 in reserve.');
  expect(sayTenths(205)).toBe('20.5');
});
