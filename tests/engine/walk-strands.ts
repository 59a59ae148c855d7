/** Arbitrary strands for the walk's properties: kits, shares, versions, curves, floors, tempi, holds, weak tests. */
import fc from 'fast-check';
import type { StrandInput } from '../../src/model/strand.js';
import { strandOf, type Written } from './walk-notation.js';

const KITS = ['12-24 by 4', '20-32 by 4', '16, 24', '24', 'bar 2.5', 'bar 5', '8, 10, 12', '28, 32, 36'];
const VERSION_SETS: readonly Partial<Written>[] = [
  {},
  { share: '878', body: 70 },
  { share: '878', body: null },
  { kit: 'body', share: '640', body: 80, bodyweight: true },
  { kit: 'body | body | body', share: '490 | 640 | 700', body: 72, bodyweight: true, start: { version: 1 } },
  { kit: 'body | body', share: '-', ratios: '850/1150', bodyweight: true },
  { kit: '12-20 by 4 | 8-16 by 4', share: '878 | 678', body: 66 },
  { kit: '12-20 by 4 | 8-16 by 4', ratios: '700/1400', start: { version: 1 } },
];

const numbers = (min: number, max: number, length: number): fc.Arbitrary<readonly number[]> =>
  fc.array(fc.integer({ min, max }), { minLength: length, maxLength: length });

export const strands: fc.Arbitrary<StrandInput> = fc
  .record({
    kit: fc.constantFrom(...KITS),
    versions: fc.constantFrom(...VERSION_SETS),
    load: fc.integer({ min: 0, max: 20 }),
    reps: fc.integer({ min: 3, max: 14 }),
    left: fc.integer({ min: 0, max: 4 }),
    bottom: fc.integer({ min: 3, max: 10 }),
    span: fc.integer({ min: 0, max: 6 }),
    asked: numbers(1, 4, 8),
    easy: fc.subarray([2, 5, 7]),
    sets: numbers(1, 4, 8),
    floor: numbers(1, 3, 8),
    held: fc.array(fc.constantFrom('-', '-', '-', 'held', '5', '9'), { minLength: 8, maxLength: 8 }),
    gain: fc.constantFrom(0, 0.5, 1),
    tempi: fc.constantFrom('', '800', '800 700'),
    trials: fc.boolean(),
    brzycki: fc.boolean(),
    earned: fc.constantFrom<0 | 1 | 2>(0, 1, 2),
    twice: fc.boolean(),
  })
  .map(({ versions, ...made }) => {
    const kit = versions.kit ?? made.kit;
    const bare = { ...versions, kit, test: '0 x 1, 0 left', range: '1-1', asked: '3', sets: '3' };
    const loads = strandOf(bare).versions[versions.start?.version ?? 0]?.loads ?? [];
    const load = (loads[made.load % loads.length]?.grams ?? 0) / 1000;
    const weeks = made.asked.map((reserve, index) => `${made.easy.includes(index) ? 'e' : ''}${reserve}`);
    return strandOf({
      ...made,
      ...versions,
      kit,
      test: `${load} x ${made.reps}, ${made.left} left`,
      range: `${made.bottom}-${made.bottom + made.span}`,
      asked: made.twice ? [`${weeks[0]}+${weeks[1]}`, ...weeks.slice(2)].join(' ') : weeks.join(' '),
      sets: made.sets.join(' '),
      floor: made.floor.join(' '),
      held: made.held.join(' '),
    });
  });

/** Nothing to climb by but reps, and one floor throughout: an easy week below the range could not bear a higher one. */
export const oneLoadStrands: fc.Arbitrary<StrandInput> = strands.map((strand) => {
  const version = strand.versions[strand.start?.version ?? 0];
  const floor = strand.occurrences[0]?.floor ?? 20;
  const load = version?.loads.find(({ grams }) => grams === strand.start?.load);
  return {
    ...strand,
    versions: version === undefined || load === undefined ? [] : [{ ...version, loads: [load] }],
    start: strand.start === null ? null : { ...strand.start, version: 0 },
    tempi: strand.tempi.slice(0, 1),
    occurrences: strand.occurrences.map(({ held, ...free }) => ({
      ...free,
      floor,
      asked: Math.max(free.asked, floor),
    })),
  };
});
