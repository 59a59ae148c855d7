/**
 * Tests as planned parts of a block: rows that the programme tests in the first and in the last session they stand in,
 * each exercise in one row alone, and the published measures of older clients. How long a session then takes is counted
 * elsewhere, from here.
 */
import type { Day } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import { compareIds, setKey } from '../../model/identity.js';
import type { PlanSet } from '../../model/plan.js';
import type { Seconds, Tenths } from '../../model/quantity.js';
import type { Reason } from '../../model/reason.js';
import type { Occurrence } from '../../model/strand.js';
import type { BlockContext, SessionDay } from '../block-context.js';
import { returnOf } from '../breaks/returns.js';
import { isOlder } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { BIRTH_WINDOW } from '../rules/birth-window.js';
import { CHAIR_STAND_SECONDS } from '../rules/chair-stand-seconds.js';
import { FALLS_REFER } from '../rules/falls-refer.js';
import { FIRST_WEEKS } from '../rules/first-weeks.js';
import { MEASURES_APART } from '../rules/measures-apart.js';
import { ONE_LEG_SECONDS } from '../rules/one-leg-seconds.js';
import { TEST_MOST } from '../rules/test-most.js';
import { TEST_ONCE } from '../rules/test-once.js';
import { TEST_RESERVE } from '../rules/test-reserve.js';
import { TEST_WAITS } from '../rules/test-waits.js';
import type { Judge } from '../versions/judge-version.js';
import type { SetPlace } from './plan-item-sets.js';

export interface Tests {
  /** Reps a test set may go to above the top of the row's range: it takes that much longer. */
  readonly over: number;
  /** Measures done in one session of the first and of the last week of the block, in order of id. */
  readonly measures: readonly Exercise[];
  /** The places of those sessions in the queue. */
  readonly sessions: readonly number[];
  /** A measure's own length, without the way to it and the rest after it. */
  readonly secondsOf: (measure: Exercise) => Seconds;
}

/** `judge` says which measures are open to this client; `rows` are the tests they stand apart from. */
export function testsOf(context: BlockContext, judge: Judge, rows: PlannedTests): Tests {
  const { exercises, rules } = context;
  // Whoever has fallen so often is measured beside somebody, not alone at home.
  const alone = (context.client.health.falls ?? 0) < rules.valueOf(FALLS_REFER);
  const all =
    isOlder(context) && alone
      ? [...new Set(exercises.values())].filter(({ facts }) => facts.measure !== undefined)
      : [];
  const measures = all.filter((measure) => judge(measure).allowed).sort((a, b) => compareIds(a.id, b.id));
  return {
    over: rules.valueOf(TEST_MOST),
    measures,
    sessions: placesOfMeasures(context, measures, rows),
    secondsOf: ({ facts }) => (facts.sides === 'each' ? 2 : 1) * secondsOfMeasure(context, facts.measure),
  };
}

/**
 * Of the first week and of the last the session that tests the same muscles least: of the first week the first such;
 * of the last the same session again, or the last such. A block of one week has one.
 */
function placesOfMeasures(
  { days, rules }: BlockContext,
  measures: readonly Exercise[],
  rows: PlannedTests,
): readonly number[] {
  const [start, end] = [days[0], days.at(-1)];
  if (start === undefined || end === undefined) return [];
  const muscles = new Set(measures.flatMap(({ facts }) => facts.muscles.main));
  const testedOn = ({ occurrence }: SessionDay): number =>
    [...rows].filter(([fitted, { occurrences }]) => {
      const main = baseOf(fitted)?.facts.muscles.main ?? [];
      return occurrences.includes(occurrence) && main.some((muscle) => muscles.has(muscle));
    }).length;
  const isApart = (day: SessionDay): boolean => testedOn(day) <= rules.valueOf(MEASURES_APART);
  const first = days.find((day) => day.week === start.week && isApart(day)) ?? start;
  if (start.week === end.week) return [first.occurrence];
  const apart = days.filter((day) => day.week === end.week && isApart(day));
  const last = apart.findLast(({ session }) => session === first.session) ?? apart.at(-1) ?? end;
  return [first.occurrence, last.occurrence];
}

export function secondsOfMeasure({ rules }: BlockContext, measure: Exercise['facts']['measure']): Seconds {
  return rules.valueOf(measure === 'chair stand' ? CHAIR_STAND_SECONDS : ONE_LEG_SECONDS);
}

/** Asked for by the programme, in sets of reps that may be counted up to a limit, and not measured by itself already. */
const isTested = (context: BlockContext, fitted: FittedRow): boolean =>
  context.programme.tests.includes(fitted.row.id) &&
  fitted.planned === 'walk' &&
  fitted.dose.kind === 'sets' &&
  neverTested(context) === null &&
  !isMeasured(context, fitted);

/** Why nobody is tested to a limit in any session; `null` where it is only a matter of when. */
export function neverTested({ client, rules }: BlockContext): 'pregnancy' | 'vertebral fracture' | null {
  if (rules.valueOf(TEST_WAITS) > 0) return null;
  if (client.health.pregnancy !== undefined) return 'pregnancy';
  return (client.health.conditions ?? []).includes('vertebral fracture') ? 'vertebral fracture' : null;
}

export type WhyNotTested = NonNullable<ReturnType<typeof neverTested>> | 'birth' | 'break' | 'first weeks' | 'moderate';

interface Training {
  readonly day: Day;
  readonly week: number;
}

/** Why there is no test on a day; `first` where it would be the block's first. */
function whyNot(context: BlockContext, { day, week }: Training, first: boolean): WhyNotTested | null {
  const { client, rules, standing } = context;
  if (rules.valueOf(TEST_WAITS) > 0) return null;
  const { birth } = client.health;
  if (birth !== undefined && day - birth.date <= rules.valueOf(BIRTH_WINDOW)) return 'birth';
  if (first && standing.moderate) return 'moderate';
  const weeks = Math.max(
    client.blocksBefore === 0 ? rules.valueOf(FIRST_WEEKS) : 0,
    ...standing.begins.map((one) => one.weeks),
  );
  if (week <= weeks) return 'first weeks';
  const back = returnOf(context, day);
  return (back?.floor ?? null) !== null || (back?.held ?? null) !== null ? 'break' : null;
}

export interface TestPlaces {
  /** Among the days given, in order: at most the first that allows one, and the last. */
  readonly places: readonly number[];
  /** Why the first day is none of them; `null` where it is. */
  readonly why: WhyNotTested | null;
}

/**
 * Of the days a row stands in: the first and the last, unless both are of one week. After gentle weeks of a break the
 * first test waits for the first session after them; everywhere else one that may not be at the start is left out.
 */
export function testPlaces(context: BlockContext, days: readonly Training[]): TestPlaces {
  const [start] = days;
  if (start === undefined) return { places: [], why: null };
  const last = days.length - 1;
  const end = whyNot(context, days[last] ?? start, false) === null ? [last] : [];
  const why = whyNot(context, start, true);
  if (why !== null && why !== 'break') return { places: end, why };
  const first = days.findIndex((day) => whyNot(context, day, true) === null);
  if (first < 0) return { places: end, why };
  const once = context.rules.valueOf(TEST_ONCE) <= 1 && days[first]?.week === days[last]?.week;
  return { places: once ? [first] : [...new Set([first, ...end])], why };
}

export interface RowTests {
  /** The places in the queue of the sessions in which the row is tested. */
  readonly occurrences: readonly number[];
  /** The weeks in which its exercise is tested, in this row or in another: nothing is tried in them. */
  readonly weeks: readonly number[];
}

/** Of the rows that the programme tests; in the order in which their sessions come up. */
export type PlannedTests = ReadonlyMap<FittedRow, RowTests>;

const baseOf = ({ chain }: FittedRow): Exercise | undefined => chain.judged[chain.base]?.exercise;

/** An exercise that stands in several rows is tested in the one that comes up first, at the start and at the end. */
export function planTests(context: BlockContext, rows: readonly FittedRow[]): PlannedTests {
  const daysOf = ({ session }: FittedRow) => context.days.filter((day) => day.session === session.id);
  const asked = rows
    .filter((fitted) => isTested(context, fitted))
    .map((fitted) => ({ fitted, days: daysOf(fitted) }))
    .sort((a, b) => (a.days[0]?.occurrence ?? 0) - (b.days[0]?.occurrence ?? 0));
  const planned = new Map<FittedRow, RowTests>();
  for (const { fitted } of asked) {
    const leads = asked
      .filter((other) => baseOf(other.fitted)?.id === baseOf(fitted)?.id)
      .slice(0, context.rules.valueOf(TEST_ONCE));
    const tests = leads.map((lead) => ({
      lead: lead.fitted,
      tested: testPlaces(context, lead.days).places.flatMap((place) => lead.days[place] ?? []),
    }));
    planned.set(fitted, {
      occurrences: tests.find(({ lead }) => lead === fitted)?.tested.map(({ occurrence }) => occurrence) ?? [],
      weeks: [...new Set(tests.flatMap(({ tested }) => tested.map(({ week }) => week)))],
    });
  }
  return planned;
}

/** An older client's published measure: a group of its own in the first and the last session. */
export const isMeasured = (context: BlockContext, { chain }: FittedRow): boolean =>
  isOlder(context) && chain.judged[chain.base]?.exercise.facts.measure !== undefined;

/** Nothing is tried in a week with a test: neither a gate nor a trial, so that the test is of what was done before. */
export function heldForTests(occurrences: readonly Occurrence[], weeks: readonly number[]): readonly Occurrence[] {
  return occurrences.map((occurrence) => {
    if (occurrence.held !== undefined || !weeks.includes(occurrence.week)) return occurrence;
    return { ...occurrence, held: { maxReps: null, why: 'test' } };
  });
}

/** A feeler set tests already. */
export const hasNoFeeler = (sets: readonly PlanSet[]): boolean => sets.every(({ kind }) => kind !== 'feeler');

/** The good reps left at which a test stops: never below the floor. */
const stopReserve = ({ rules }: BlockContext, floor: Tenths): Tenths => Math.max(rules.valueOf(TEST_RESERVE), floor);

/**
 * The first round of work becomes the test: same exercise, load, range and rest, and as many good reps as there are up
 * to `test-most` above the range. What else the first set carries stays with it; the rounds after it move up by one.
 */
export function withTestSet(
  context: BlockContext,
  sets: readonly PlanSet[],
  place: SetPlace,
  { top, floor }: { readonly top: number; readonly floor: Tenths },
): readonly PlanSet[] {
  const { block, occurrence, row } = place;
  const key = (set: PlanSet, kind: 'test' | 'work', ordinal: number) =>
    setKey({ block, occurrence, row, side: set.side ?? 'both', kind, ordinal });
  return sets.map((set): PlanSet => {
    if (set.kind !== 'work') return set;
    if (set.round > 1) return { ...set, key: key(set, 'work', set.round - 1), round: set.round - 1 };
    const { reserve: _, ...rest } = set;
    const reps = top + context.rules.valueOf(TEST_MOST);
    return { ...rest, key: key(set, 'test', 1), kind: 'test', reps, stopAt: { reserve: stopReserve(context, floor) } };
  });
}

/** Why there is a test set, to both; nothing where there is none. */
export function testReasons(sets: readonly PlanSet[]): readonly Reason[] {
  const reserve = sets.find(({ kind }) => kind === 'test')?.stopAt?.reserve;
  if (reserve === undefined) return [];
  const inputs = [{ name: 'reserve', value: reserve, unit: 'tenths' }];
  return [reasonOf(TEST_RESERVE, 'client', inputs, 'measured'), reasonOf(TEST_RESERVE, 'coach', inputs, 'measured')];
}
