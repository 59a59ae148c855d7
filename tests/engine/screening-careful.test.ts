/** A fact that warns never makes a plan less careful, whatever else is on file. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Standing } from '../../src/engine/screening/standing.js';
import {
  type Answer,
  type Clearance,
  type Client,
  CONDITIONS,
  type Health,
  MEDICINES,
  PREGNANCY_ABSOLUTE,
  PREGNANCY_RELATIVE,
} from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import { runs } from '../deep.js';
import { PLACE } from './generate-exercises.js';
import { aClient, on } from './make-block.js';
import { FIRST, LAST, screen, TODAY } from './screen-made.js';

const answer = fc.constantFrom<Answer>('yes', 'no', 'unknown');
const ago = (most: number) => fc.integer({ min: 0, max: most }).map((days) => addDays(TODAY, -days));
const optional = <Value>(one: fc.Arbitrary<Value>) => fc.option(one, { nil: undefined, freq: 2 });
const named = <Name extends string, Value>(name: Name, value: Value | undefined) =>
  value === undefined ? {} : { [name]: value };

const pressure = fc.record({
  systolic: fc.integer({ min: 100, max: 200 }),
  diastolic: fc.integer({ min: 60, max: 120 }),
  date: ago(200),
  cuff: fc.boolean(),
  place: fc.constant(PLACE),
});
const pregnancy = fc.record({
  due: fc.integer({ min: -10, max: 250 }).map((days) => addDays(FIRST, days)),
  conditions: fc.subarray([...PREGNANCY_ABSOLUTE, ...PREGNANCY_RELATIVE], { maxLength: 2 }),
  place: fc.constant(PLACE),
});
const birth = fc
  .record({
    date: ago(250),
    by: fc.constantFrom('vaginal' as const, 'caesarean' as const),
    checked: optional(ago(200)),
    place: fc.constant(PLACE),
  })
  .map(({ checked, ...rest }) => ({ ...rest, ...named('checked', checked) }));
const clearance: fc.Arbitrary<Clearance> = fc
  .record({
    date: ago(500),
    until: optional(fc.integer({ min: -20, max: 60 }).map((days) => addDays(FIRST, days))),
    for: fc.constantFrom('moderate' as const, 'vigorous' as const),
  })
  .map(({ until, ...rest }) => ({ by: 'Dr', ...rest, ...named('until', until) }));

const health: fc.Arbitrary<Health> = fc
  .record({
    medicines: fc.subarray([...MEDICINES]),
    conditions: fc.subarray([...CONDITIONS]),
    falls: fc.integer({ min: 0, max: 3 }),
    pressure: optional(pressure),
    pregnancy: optional(pregnancy),
    birth: optional(birth),
  })
  .map(({ pressure: read, pregnancy: with_, birth: born, ...rest }) => ({
    ...rest,
    ...named('bloodPressure', read),
    ...named('pregnancy', with_),
    ...named('birth', born),
  }));

const client: fc.Arbitrary<Client> = fc
  .record({ regular: answer, disease: answer, symptoms: answer, cleared: optional(clearance), health })
  .map(({ regular, disease, symptoms, cleared, health: facts }) =>
    aClient({
      screening: {
        date: on('2026-12-01'),
        regularExercise: regular,
        knownDisease: disease,
        symptoms,
        place: PLACE,
      },
      health: facts,
      ...named('clearance', cleared),
    }),
  );

const facts = (of: Client, more: Partial<Health>): Client => ({ ...of, health: { ...of.health, ...more } });
const answers = (of: Client, more: Partial<Client['screening']>): Client =>
  of.screening === undefined ? of : { ...of, screening: { ...of.screening, ...more } };

/** Each adds one warning to a client, or leaves one that has it already. */
const WARNINGS: Readonly<Record<string, (of: Client) => Client>> = {
  ...Object.fromEntries(
    MEDICINES.map((one) => [one, (of: Client) => facts(of, { medicines: [...(of.health.medicines ?? []), one] })]),
  ),
  ...Object.fromEntries(
    CONDITIONS.map((one) => [one, (of: Client) => facts(of, { conditions: [...(of.health.conditions ?? []), one] })]),
  ),
  fall: (of) => facts(of, { falls: (of.health.falls ?? 0) + 1 }),
  disease: (of) => (of.screening?.knownDisease === 'no' ? answers(of, { knownDisease: 'yes' }) : of),
  symptoms: (of) => answers(of, { symptoms: 'yes' }),
  'no regular exercise': (of) =>
    of.screening?.regularExercise === 'yes' ? answers(of, { regularExercise: 'no' }) : of,
  'higher pressure': (of) => {
    const { bloodPressure: read } = of.health;
    if (read === undefined) return of;
    return facts(of, { bloodPressure: { ...read, systolic: read.systolic + 25, diastolic: read.diastolic + 12 } });
  },
  'a high reading': (of) =>
    of.health.bloodPressure === undefined
      ? facts(of, { bloodPressure: { systolic: 170, diastolic: 90, date: TODAY, cuff: false, place: PLACE } })
      : of,
  'pregnancy condition': (of) => {
    const { pregnancy: with_ } = of.health;
    if (with_ === undefined) return of;
    return facts(of, { pregnancy: { ...with_, conditions: [...with_.conditions, 'pre-eclampsia', 'twins'] } });
  },
  pregnancy: (of) =>
    of.health.pregnancy === undefined
      ? facts(of, { pregnancy: { due: addDays(LAST, -3), conditions: [], place: PLACE } })
      : of,
  birth: (of) =>
    of.health.birth === undefined
      ? facts(of, { birth: { date: addDays(FIRST, -40), by: 'caesarean', checked: TODAY, place: PLACE } })
      : of,
  'moderate clearance': (of) =>
    of.clearance === undefined ? of : { ...of, clearance: { ...of.clearance, for: 'moderate' } },
};

const TALKS = ['sentences', 'phrases', null] as const;
const strength = (of: Standing, what: string): number =>
  Math.max(0, ...of.cautions.filter((one) => one.what === what).map(({ degree }) => (degree === 'avoid' ? 2 : 1)));
const floorIn = (of: Standing, week: number): number =>
  Math.max(of.floor?.reserve ?? 0, ...of.begins.filter(({ weeks }) => week <= weeks).map(({ reserve }) => reserve));
const last = (of: Standing): number => of.lastDay?.day ?? LAST;

it.each(Object.keys(WARNINGS))('a warning more is no care less: %s', (name) => {
  const warn = WARNINGS[name] ?? ((of) => of);
  fc.assert(
    fc.property(client, (of) => {
      const before = screen(of);
      const after = screen(warn(of));
      if (before.withheld.length > 0) expect(after.withheld).not.toEqual([]);
      const unsafe = ({ problems }: typeof after) => problems.some((problem) => problem.unsafe);
      if (unsafe(before)) expect(unsafe(after)).toBe(true);
      if (before.standing.moderate) expect(after.standing.moderate).toBe(true);
      if (before.standing.steady) expect(after.standing.steady).toBe(true);
      expect(TALKS.indexOf(after.standing.talk)).toBeLessThanOrEqual(TALKS.indexOf(before.standing.talk));
      for (const week of [1, 2, 3]) {
        expect(floorIn(after.standing, week)).toBeGreaterThanOrEqual(floorIn(before.standing, week));
      }
      // A plan that is withheld has no last day to speak of, and who exercises regularly may do moderate work without the
      // clearance that harder work ends with.
      const needsNone = after.standing.moderate && of.screening?.regularExercise === 'yes';
      const endsWith = before.standing.lastDay?.because;
      if (after.withheld.length === 0 && !(needsNone && endsWith === 'clearance'))
        expect(last(after.standing)).toBeLessThanOrEqual(last(before.standing));
      for (const { what } of before.standing.cautions) {
        expect(strength(after.standing, what)).toBeGreaterThanOrEqual(strength(before.standing, what));
      }
    }),
    { numRuns: runs(120, 2000) },
  );
});
