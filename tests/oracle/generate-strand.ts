/**
 * Strands of every kind a studio could hold, and many it hopefully never will: kits, curves, floors, versions, tempi,
 * flags. Weighted so that every rule of the walk is reached often; `branches.test.ts` counts that they are.
 */
import fc from 'fast-check';
import { bar, bell, bells, pair, RULES, TEMPI, version } from './build-strand.js';
import { external } from './capacity.js';
import type { LoadJson, OccurrenceJson, RulesJson, StrandJson, VersionJson } from './strand-json.js';

const often = <T>(weight: number, arbitrary: fc.Arbitrary<T>) => ({ weight, arbitrary });
const rarely = (weight: number): fc.Arbitrary<boolean> =>
  fc.oneof(often(100 - weight, fc.constant(false)), often(weight, fc.constant(true)));

/** Runs of a rack: from here, so many, in even steps. */
const evenBells = (step: number) =>
  fc
    .record({ from: fc.integer({ min: 1, max: 6 }), count: fc.integer({ min: 1, max: 6 }) })
    .map(({ from, count }) => Array.from({ length: count }, (_, i) => bell((from + i) * step)));

const barFrom = (step: number) =>
  fc
    .record({ from: fc.integer({ min: 3, max: 16 }), count: fc.integer({ min: 2, max: 14 }) })
    .map(({ from, count }) => bar(from * 2500, from * 2500 + (count - 1) * step, step));

const unequal = fc
  .uniqueArray(fc.integer({ min: 2, max: 60 }), { minLength: 1, maxLength: 6 })
  .map((halves) => [...halves].sort((a, b) => a - b).map((half) => bell(half * 500)));

const pounds = fc
  .uniqueArray(fc.integer({ min: 2, max: 18 }), { minLength: 2, maxLength: 6 })
  .map((fives) => [...fives].sort((a, b) => a - b).map((five) => bell(Math.floor(five * 5 * 453.59237 + 0.5))));

const racks: fc.Arbitrary<readonly LoadJson[]> = fc.oneof(
  often(6, evenBells(4000)),
  often(4, barFrom(2500)),
  often(
    2,
    fc.integer({ min: 2, max: 12 }).map((fours) => bells(4 * fours)),
  ),
  often(2, unequal),
  often(2, pounds),
  often(2, barFrom(500)),
  often(
    2,
    evenBells(4000).map((single) => single.map((one) => pair(one.grams))),
  ),
);

const ratios = fc.oneof(often(1, fc.constant(null)), often(3, fc.integer({ min: 600, max: 1000 })));
const easings = fc.oneof(often(1, fc.constant(null)), often(3, fc.integer({ min: 1000, max: 1600 })));

/** A chain of one to four versions, all on the same rack or some on a part of it, with shares or ratios or neither. */
const chain = (rack: readonly LoadJson[], shares: fc.Arbitrary<number | null>): fc.Arbitrary<readonly VersionJson[]> =>
  fc
    .oneof(often(4, fc.constant(1)), often(3, fc.constant(2)), often(2, fc.constant(3)), often(1, fc.constant(4)))
    .chain((count) =>
      fc.array(
        fc.record({
          share: shares,
          toHarder: ratios,
          toEasier: easings,
          keep: fc.oneof(often(3, fc.constant(rack.length)), often(1, fc.integer({ min: 1, max: rack.length }))),
          fromTop: fc.boolean(),
        }),
        { minLength: count, maxLength: count },
      ),
    )
    .map((parts) =>
      parts.map(({ share, toHarder, toEasier, keep, fromTop }, index) =>
        version(`version-${index + 1}`, fromTop ? rack.slice(rack.length - keep) : rack.slice(0, keep), {
          share,
          toHarder,
          toEasier,
        }),
      ),
    );

const sharesOfOneKind = fc.oneof(
  often(4, fc.constant(fc.constant<number | null>(0))),
  often(3, fc.constant(fc.constantFrom<number | null>(878, 850, 900))),
  often(2, fc.constant(fc.constantFrom<number | null>(null, 0))),
  often(1, fc.constant(fc.constantFrom<number | null>(0, 640))),
);
/** Some versions count the body's mass and some say nothing about it: a ratio between them has nothing to stand on. */
const sharesInPart = fc.constantFrom<number | null>(null, 640, 878);
/** Known shares all along the chain, or any where there is nothing but the body. */
const bodyShares = fc.constantFrom<number | null>(640, 540, 750);
const bodySharesInPart = fc.constantFrom<number | null>(null, null, 640);
const bodyMovements: fc.Arbitrary<readonly VersionJson[]> = fc.oneof(
  often(5, chain(bells(0), bodyShares)),
  often(4, chain(bells(0), bodySharesInPart)),
  often(2, chain(bells(0, 4, 8, 12), bodyShares)),
);

type Movement = Pick<StrandJson, 'way' | 'versions'>;
const movements: fc.Arbitrary<Movement> = fc.oneof(
  often(
    7,
    fc
      .tuple(racks, sharesOfOneKind)
      .chain(([rack, shares]) => chain(rack, shares).map((versions): Movement => ({ way: 'strength', versions }))),
  ),
  often(
    3,
    bodyMovements.map((versions): Movement => ({ way: 'bodyweight', versions })),
  ),
);

const floors = fc.oneof(
  often(4, fc.constant([20])),
  often(2, fc.constant([30])),
  often(2, fc.constant([40, 40, 20])),
  often(1, fc.constant([40, 40, 30])),
  often(1, fc.constant([10])),
  often(2, fc.constant([20, 20, 20, 20, 20, 60])),
  often(1, fc.array(fc.constantFrom(10, 15, 20, 30, 40), { minLength: 1, maxLength: 6 })),
);

const curves = fc.oneof(
  often(3, fc.constant([30, 30, 20, 20, 20])),
  often(3, fc.constant([40, 30, 30, 20, 20])),
  often(1, fc.constant([30, 30, 20, 20, 10])),
  often(1, fc.constant([20])),
  often(2, fc.array(fc.constantFrom(10, 15, 20, 25, 30, 40), { minLength: 1, maxLength: 7 })),
);

/** Which weeks are easy: the last, mostly. */
const easyWeeks = (weeks: number): fc.Arbitrary<readonly number[]> =>
  fc.oneof(
    often(7, fc.constant([weeks])),
    often(1, fc.constant([])),
    often(1, fc.constant([Math.ceil(weeks / 2), weeks])),
    often(1, fc.uniqueArray(fc.integer({ min: 1, max: weeks }), { maxLength: 2 })),
  );

interface Calendar {
  readonly weeks: StrandJson['weeks'];
  readonly occurrences: readonly OccurrenceJson[];
}

const calendars = (bottom: number, top: number): fc.Arbitrary<Calendar> =>
  fc.oneof(often(5, fc.constant(6)), often(2, fc.integer({ min: 2, max: 12 }))).chain((count) =>
    fc
      .record({
        curve: curves,
        floor: floors,
        easy: easyWeeks(count),
        easyAsked: fc.constantFrom(40, 40, 40, 30, 50),
        easyLess: fc.integer({ min: 0, max: 2 }),
        perWeek: fc.array(fc.constantFrom(1, 1, 1, 1, 1, 1, 2, 2, 3, 0), { minLength: count, maxLength: count }),
        sets: fc.oneof(
          often(
            4,
            fc.integer({ min: 1, max: 5 }).map((k) => [k]),
          ),
          often(1, fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 })),
        ),
        held: fc.oneof(
          often(8, fc.constant(null)),
          often(1, fc.record({ from: fc.integer({ min: 1, max: count }), until: fc.integer({ min: 1, max: count }) })),
        ),
        heldTo: fc.oneof(fc.constant(null), fc.integer({ min: Math.max(1, bottom - 2), max: top })),
      })
      .map(({ curve, floor, easy, easyAsked, easyLess, perWeek, sets, held, heldTo }) => {
        const at = (list: readonly number[], week: number): number => list[Math.min(week, list.length) - 1] ?? 20;
        const weeks = Array.from({ length: count }, (_, i) => ({ week: i + 1, easy: easy.includes(i + 1) }));
        const occurrences = weeks.flatMap(({ week, easy: isEasy }): OccurrenceJson[] => {
          const programme = isEasy ? easyAsked : at(curve, week);
          const isHeld = held !== null && week >= held.from && week <= held.until;
          const one: OccurrenceJson = {
            week,
            easy: isEasy,
            asked: Math.max(programme, at(floor, week)),
            floor: at(floor, week),
            sets: isEasy ? Math.max(1, at(sets, week) - easyLess) : at(sets, week),
            ...(isHeld ? { held: { maxReps: heldTo, why: 'sore knee' } } : {}),
          };
          return Array.from({ length: perWeek[week - 1] ?? 1 }, () => one);
        });
        return { weeks, occurrences };
      }),
  );

const ownRules: fc.Arbitrary<RulesJson> = fc.oneof(
  often(9, fc.constant(RULES)),
  often(
    1,
    fc.record({
      tolerance: fc.constantFrom(0, 2, 5),
      smallStep: fc.constantFrom(50, 100, 200),
      trialMargin: fc.constantFrom(10, 30, 40),
      volume: fc.constantFrom(1000, 1100, 1300),
      weakAbove: fc.constantFrom(120, 120, 150),
    }),
  ),
  often(2, fc.constant({ ...RULES, weakAbove: 250 })),
);

interface Ability {
  readonly startVersion: number;
  readonly startLoad: LoadJson;
  readonly testedGrams: number;
  /** Reps to failure at the test against the top of the range, in tenths. */
  readonly spare: number;
  readonly tired: boolean;
  /** Tested with a load that cannot be made here, a little above the heaviest that can. */
  readonly between: boolean;
  readonly bodyMass: number | null;
}

const abilities = (versions: readonly VersionJson[]): fc.Arbitrary<Ability> =>
  fc
    .record({
      startVersion: fc.nat({ max: versions.length - 1 }),
      loadAt: fc.nat({ max: 1000 }),
      nearTop: rarely(25),
      above: fc.oneof(often(9, fc.constant(0)), often(1, fc.constantFrom(500, 1000, 2000))),
      spare: fc.oneof(
        often(3, fc.integer({ min: 0, max: 60 })),
        often(3, fc.integer({ min: -80, max: 80 })),
        often(1, fc.integer({ min: 60, max: 200 })),
      ),
      tired: rarely(10),
      between: rarely(5),
      bodyMass: fc.oneof(
        often(
          6,
          fc.integer({ min: 90, max: 260 }).map((h) => h * 500),
        ),
        often(1, fc.constant(null)),
      ),
    })
    .map(({ startVersion, loadAt, nearTop, above, ...rest }) => {
      const loads = versions[startVersion]?.loads ?? [];
      const startLoad = loads[nearTop ? loads.length - 1 : loadAt % loads.length] ?? bell(0);
      return { ...rest, startVersion, startLoad, testedGrams: external(startLoad) === 0 ? 0 : above };
    });

function capacityOf(movement: Movement, ability: Ability, top: number): NonNullable<StrandJson['capacity']> {
  const share = movement.versions[ability.startVersion]?.share ?? 0;
  const bare = share > 0 && ability.bodyMass === null;
  const held = external(ability.startLoad) + ability.testedGrams;
  const resisted = bare ? 1 : Math.max(1, held + Math.floor((share * (ability.bodyMass ?? 0)) / 1000));
  const reps = Math.max(10, 10 * top + ability.spare);
  return { side: 'both', resisted, reps, weak: ability.tired };
}

const ranges = fc.oneof(
  often(
    4,
    fc.constantFrom<readonly [number, number]>([5, 8], [6, 10], [8, 12], [6, 12], [4, 6], [3, 5], [5, 10], [10, 15]),
  ),
  often(
    2,
    fc
      .record({ bottom: fc.integer({ min: 1, max: 12 }), more: fc.integer({ min: 0, max: 8 }) })
      .map(({ bottom, more }): readonly [number, number] => [bottom, bottom + more]),
  ),
);

const strandsOf = (moved: fc.Arbitrary<Movement>): fc.Arbitrary<StrandJson> =>
  fc.tuple(moved, ranges).chain(([movement, [bottom, top]]) =>
    fc
      .record({
        ability: abilities(movement.versions),
        calendar: calendars(bottom, top),
        equation: fc.constantFrom<StrandJson['equation']>('epley', 'epley', 'epley', 'brzycki'),
        gain: fc.constantFrom(0, 50, 50, 100, 100, 300),
        earned: fc.constantFrom<0 | 1 | 2>(0, 0, 0, 1, 2, 2),
        tempi: fc.constantFrom(1, 1, 2, 3),
        slowStart: rarely(5),
        trials: rarely(75),
        gates: rarely(90),
        tried: fc.option(fc.record({ up: fc.integer({ min: 0, max: 1 }), above: fc.integer({ min: 0, max: 3 }) }), {
          freq: 2,
        }),
        logged: fc.oneof(often(3, fc.constant(null)), often(1, fc.integer({ min: 1, max: top + 2 }))),
        side: fc.constantFrom('both', 'left', 'right'),
        rules: ownRules,
      })
      .map(
        ({
          ability,
          calendar,
          equation,
          gain,
          earned,
          tempi,
          slowStart,
          trials,
          gates,
          tried,
          logged,
          side,
          rules,
        }): StrandJson => {
          const capacity = { ...capacityOf(movement, ability, top), side };
          return {
            id: 'a/row',
            session: 'a',
            row: 'row',
            equation,
            bottom,
            top,
            bodyMass: ability.bodyMass,
            ...movement,
            tempi: TEMPI.slice(0, tempi),
            trials,
            gates,
            gain,
            capacity,
            start: {
              version: ability.startVersion,
              load: ability.startLoad.grams + (ability.between ? 250 : 0),
              tempo: slowStart && tempi > 1 ? 1 : 0,
              earned,
            },
            ...triedIn(movement, ability, tried),
            greatest: logged === null ? null : logged * capacity.resisted,
            ...calendar,
            rules,
          };
        },
      ),
  );

/** The next load of the version it starts in, or one of the next version. */
function triedIn(
  { versions }: Movement,
  { startVersion, startLoad }: Ability,
  tried: { readonly up: number; readonly above: number } | null,
): Pick<StrandJson, 'tried'> {
  const version = versions[startVersion + (tried?.up ?? 0)];
  const loads = (version?.loads ?? []).filter(({ grams }) => tried?.up === 1 || grams > startLoad.grams);
  const load = loads[Math.min(tried?.above ?? 0, loads.length - 1)];
  return tried === null || version === undefined || load === undefined
    ? {}
    : { tried: { exercise: version.exercise, grams: load.grams } };
}

export const strands: fc.Arbitrary<StrandJson> = strandsOf(movements);

/** Strands with links from a version that counts the body's mass to one that says nothing about it, by ratio. */
export const strandsOfTwoScales: fc.Arbitrary<StrandJson> = strandsOf(
  racks.chain((rack) => chain(rack, sharesInPart).map((versions): Movement => ({ way: 'strength', versions }))),
);
