/** What is said of a session on the way in: lighter than printed only where it is. */
import { describe, expect, test } from 'vitest';
import { exerciseId, kitItemId, rowId, setKey } from '../../../src/model/identity.js';
import type { PlanBand, PlanLoad, PlanSet } from '../../../src/model/plan.js';
import type { ReplannedItem } from '../../../src/session/replan.js';
import { isLighter } from '../../../src/session/training/lighter.js';
import { load } from '../../fixtures/plan.js';

const key = setKey({ block: 1, occurrence: 1, row: rowId('squat'), side: 'both', kind: 'work', ordinal: 1 });
const set = (amount: Partial<PlanSet>): PlanSet => ({ key, kind: 'work', round: 1, ...amount });
const mass = (kg: number, mode: PlanLoad['mode'] = 'total'): Partial<PlanSet> => ({ load: { ...load(kg), mode } });
const band = (step: number, mode: PlanBand['mode'] = 'band'): Partial<PlanSet> => ({
  load: { band: 'some', step, mode, pieces: [{ id: kitItemId(`band-${step}`), grams: 0 }], label: 'some band' },
});

const item = (paper: Partial<PlanSet>, today: Partial<PlanSet> | null, sets = 0): ReplannedItem => ({
  occurrence: 1,
  row: rowId('squat'),
  exercise: exerciseId('goblet-squat'),
  tempo: 'normal',
  sets: Array.from({ length: sets }, () => ({ key, set: null })),
  paper: set(paper),
  today: today === null ? null : set(today),
  because: [],
  bounds: [],
});

describe('a little lighter', () => {
  test.each([
    ['a lighter bell', item(mass(16), mass(12)), true],
    ['a heavier bell', item(mass(12), mass(16)), false],
    ['the same', item({ ...mass(16), reps: 8 }, { ...mass(16), reps: 8 }), false],
    ['fewer reps with the same bell', item({ ...mass(16), reps: 8 }, { ...mass(16), reps: 6 }), true],
    ['more reps with the same bell', item({ ...mass(16), reps: 8 }, { ...mass(16), reps: 9 }), false],
    ['more reps with a lighter bell', item({ ...mass(16), reps: 8 }, { ...mass(12), reps: 12 }), true],
    ['a shorter hold', item({ seconds: 30 }, { seconds: 20 }), true],
    ['a shorter way', item({ metres: 20 }, { metres: 30 }), false],
    ['a set left out', item({ ...mass(16), reps: 8 }, { ...mass(16), reps: 8 }, 1), true],
    ['left out', item(mass(16), null), true],
    ['nothing held, in place of a bell', item(mass(16), {}), true],
    ['a bell, in place of nothing', item({}, mass(4)), false],
    ['a band that is easier to stretch', item(band(3), band(2)), true],
    ['a band that helps less', item(band(3, 'assisted'), band(2, 'assisted')), false],
    ['a band that helps more', item(band(2, 'assisted'), band(3, 'assisted')), true],
    ['help that is taken away', item(band(2, 'assisted'), {}), false],
    ['a band in place of a bell', item(mass(16), band(2)), false],
  ] as const)('%s', (_, changed, lighter) => {
    expect(isLighter([changed], 1)).toBe(lighter);
  });

  test('said of a session by what changes in it alone, and only where nothing in it is heavier', () => {
    const [lighter, heavier] = [item(mass(16), mass(12)), item(mass(12), mass(16))];
    expect(isLighter([lighter, item({ reps: 8 }, { reps: 8 })], 1)).toBe(true);
    expect(isLighter([lighter, heavier], 1)).toBe(false);
    expect(isLighter([{ ...lighter, occurrence: 2 }], 1)).toBe(false);
    expect(isLighter([lighter], null)).toBe(false);
    expect(isLighter([], 1)).toBe(false);
  });
});
