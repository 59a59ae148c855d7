/** Weeks, dates, minutes, effort and sets against the curve: what of a plan does not need a walk to be judged. */
import { z } from 'zod';
import { type Placed, type PlanJson, type PlanStrand, workOf } from './plan-json.js';

const MS_PER_DAY = 86_400_000;

/** Days since 1970-01-01; not a number where there is no such date. */
export function dayOf(iso: string): number {
  const at = new Date(`${iso}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(iso) ? at.getTime() / MS_PER_DAY : Number.NaN;
}

/** Monday is 1; 1970-01-01 was a Thursday. */
export const weekday = (day: number): number => ((day + 3) % 7) + 1;

export function auditCalendar(plan: PlanJson): string[] {
  const found: string[] = [];
  const { curve, days, minutesCap } = plan.inputs;
  if (plan.weeks.length !== curve.length) found.push(`${plan.weeks.length} weeks for a curve of ${curve.length}`);
  let occurrence = 0;
  let lastDay = Number.NEGATIVE_INFINITY;
  const starts = dayOf(plan.starts);
  const breaks = plan.inputs.breaks.map(({ from, until }) => [dayOf(from), dayOf(until)] as const);
  const restful = (day: number): boolean => breaks.some(([from, until]) => from <= day && day <= until);
  let first = starts;
  while (weekday(first) !== days[0] || restful(first)) first += 1;
  const over = first + 7 * curve.length;
  let before = first - 7;
  plan.weeks.forEach((week, index) => {
    const name = `week ${week.number}`;
    if (week.number !== index + 1) found.push(`${name} stands in place ${index + 1}`);
    if (week.deload !== curve[index]?.easy) found.push(`${name}: the curve says easy ${curve[index]?.easy}`);
    const begins = dayOf(week.begins);
    if (begins !== beginOf(week.sessions[0]?.date, before, first)) found.push(`${name} begins on ${week.begins}`);
    before = begins;
    if (breaks.length === 0 && plan.stops === undefined && week.sessions.length !== days.length)
      found.push(`${name}: ${week.sessions.length} sessions on ${days.length} days`);
    for (const session of week.sessions) {
      occurrence += 1;
      const day = dayOf(session.date);
      if (session.occurrence !== occurrence) found.push(`${name}: session ${session.id} is not number ${occurrence}`);
      if (!(day >= begins && day < (breaks.length === 0 ? begins + 7 : over)))
        found.push(`${name}: ${session.date} is not in it`);
      if (!(day > lastDay)) found.push(`${name}: ${session.date} comes after a later session`);
      if (!days.includes(weekday(day))) found.push(`${name}: ${session.date} is not a training day`);
      if (restful(day)) found.push(`${name}: ${session.date} falls in a break`);
      if (plan.stops !== undefined && session.date > plan.stops.after)
        found.push(`${name}: ${session.date} is after the last day, ${plan.stops.after}`);
      if (session.minutes > minutesCap)
        found.push(`${name} ${session.id}: ${session.minutes} minutes of ${minutesCap}`);
      lastDay = day;
    }
  });
  return found;
}

/** No session is shorter than the work in it. */
export function auditMinutes(plan: PlanJson): string[] {
  const found: string[] = [];
  for (const { week, session } of plan.weeks.flatMap((one) => one.sessions.map((s) => ({ week: one, session: s })))) {
    const least = workOf({ ...plan, weeks: [{ ...week, sessions: [session] }] }).reduce(
      (sum, placed) => sum + leastSeconds(placed),
      0,
    );
    if (60 * session.minutes < least)
      found.push(`week ${week.number} ${session.id}: ${session.minutes} minutes hold ${Math.ceil(least)} s of work`);
  }
  return found;
}

/** On the block's weekday, before its first session; without one a week after the week before. */
function beginOf(session: string | undefined, before: number, first: number): number {
  if (session === undefined) return before + 7;
  const day = dayOf(session);
  return day - ((((day - first) % 7) + 7) % 7);
}

/** The work alone, each rep a second and a half, nothing for rest or change-overs: no session can be shorter. */
function leastSeconds({ item }: Placed): number {
  return item.sets.reduce((sum, set) => sum + (set.seconds ?? 1.5 * (set.reps ?? 0)), 0);
}

/** The floor of a week: the greatest of those that hold in it. */
function floorIn(plan: PlanJson, week: number): number {
  return Math.max(10, ...plan.inputs.floors.filter((one) => one.weeks.includes(week)).map((one) => one.reserve));
}

const CAUTIONED = 30;
const HALF = 500;
const ruleInForce = z.looseObject({ id: z.string(), overridden: z.looseObject({ value: z.number() }).optional() });

/** A row that meets a caution says so beside its gain, in every session; it has a floor of its own. */
function cautionFloor(plan: PlanJson, items: readonly Placed[]): number {
  if (!items.some(({ item }) => item.reasons.some(({ rule }) => rule === 'gain-cautioned'))) return 0;
  const rule = plan.rules.find(({ id }) => id === 'floor-cautioned');
  return rule === undefined ? CAUTIONED : (ruleInForce.parse(rule).overridden?.value ?? CAUTIONED);
}

/** Said of an exercise by marks or by the coach, up to a day: of any version that the row may stand on. */
function recalledFloors({ inputs }: PlanJson, { versions }: PlanStrand, { session }: Placed): readonly number[] {
  return (inputs.recalls ?? []).flatMap(({ exercise, floor }) =>
    floor !== undefined && session.date <= floor.until && versions.some((version) => version.exercise === exercise)
      ? [floor.reserve]
      : [],
  );
}

/** At a signal no more than a part of what is predicted to failure, half unless a coach says less. */
function signalFloor(plan: PlanJson, { top }: PlanStrand, { group, item }: Placed): number {
  const told = item.reasons.some(({ rule }) => rule === 'floor-signal');
  if (group.everySeconds === undefined && !told) return 0;
  const rule = plan.rules.find(({ id }) => id === 'floor-signal');
  const part = rule === undefined ? HALF : (ruleInForce.parse(rule).overridden?.value ?? HALF);
  return Math.ceil((10 * top * (1000 - part)) / part);
}

export interface StrandItems {
  readonly strand: PlanStrand;
  readonly items: readonly Placed[];
}

/** Each strand with the items that carry it out, in order. */
export function itemsByStrand(plan: PlanJson): readonly StrandItems[] {
  const work = workOf(plan);
  return plan.inputs.strands.map((strand) => ({
    strand,
    items: work.filter(({ item, session }) => session.id === strand.session && item.row === strand.row),
  }));
}

/**
 * Asked reserve, floors and sets of each occurrence, from the curve. Of a block planned again `before` are the sessions
 * done and `now` the week from which on it is planned.
 */
export function auditEffort(plan: PlanJson, before: PlanJson, now: number): string[] {
  return itemsByStrand(plan).flatMap(({ strand, items }) => {
    const found: string[] = [];
    const { occurrences } = strand;
    if (strand.id !== `${strand.session}/${strand.row}`) found.push(`strand ${strand.id} is not session/row`);
    if (items.length !== occurrences.length) found.push(`${items.length} items for ${occurrences.length} occurrences`);
    const weeks = plan.inputs.curve.map(({ easy }, index) => ({ week: index + 1, easy })).slice(now - 1);
    const said = strand.weeks.map(({ week, easy }) => ({ week, easy }));
    if (JSON.stringify(said) !== JSON.stringify(weeks)) found.push('weeks are not those of the curve');
    occurrences.forEach((one, index) => {
      const placed = items[index];
      if (placed === undefined) return;
      const { asked, id } = placed.item;
      if (one.week !== placed.week || one.easy !== placed.deload) found.push(`${id} stands in another week`);
      const floor = Math.max(floorIn(plan, one.week), cautionFloor(plan, items), signalFloor(plan, strand, placed));
      const remembered = recalledFloors(plan, strand, placed).map((reserve) => Math.max(reserve, floor));
      if (![floor, ...remembered].includes(one.floor)) found.push(`${id}: floor ${one.floor}, not ${floor}`);
      if (asked.reserve !== one.asked) found.push(`${id}: asks ${asked.reserve}, the strand ${one.asked}`);
      if (asked.sets !== one.sets) found.push(`${id}: ${asked.sets} sets, the strand ${one.sets}`);
      if (asked.min !== strand.bottom || asked.max !== strand.top) found.push(`${id}: not the range of the strand`);
    });
    if (!isAskedReserve(plan, strand, items)) found.push('asked is not max(programme, floor), one more in a circuit');
    found.push(...auditSets(plan, strand, items, lastWorkOf(before, strand)));
    return found.map((text) => `${strand.id}: ${text}`);
  });
}

/** `max(programme, floor)`, where the programme is the curve or one reserve of the row's own in every week. */
function isAskedReserve(plan: PlanJson, strand: PlanStrand, items: readonly Placed[]): boolean {
  const own = Array.from({ length: 101 }, (_, tenths) => tenths);
  const fits = (programme: (week: number) => number): boolean =>
    strand.occurrences.every((one, index) => {
      const placed = items[index];
      const hurried = placed?.group.kind === 'circuit' || isOnClock(placed);
      const curve = plan.inputs.curve[one.week - 1]?.reserve ?? 0;
      // Rising reps whose load is not known yet are not written out: the plan does not tell them from one number of reps.
      const perhaps =
        strand.bottom === strand.top && placed?.item.sets.some((set) => set.choose !== undefined) === true;
      return (perhaps ? [0, 10] : [hurried ? 10 : 0]).some((more) => {
        const asked = (reserve: number) => Math.max(reserve, one.floor) + more;
        return one.asked === asked(programme(one.week)) || (one.easy && one.asked === asked(curve));
      });
    });
  return fits((week) => plan.inputs.curve[week - 1]?.reserve ?? 0) || own.some((tenths) => fits(() => tenths));
}

/** By the signal, or rising and falling reps with hardly a rest: as in a circuit. */
const isOnClock = (placed: Placed | undefined): boolean =>
  placed?.group.everySeconds !== undefined || placed?.item.sets.some((set) => set.steps !== undefined) === true;

const halfUp = (perMille: number): number => Math.floor((perMille + 500) / 1000);

/** Sets of the last work week that is over; none where nothing is. */
function lastWorkOf(before: PlanJson, { session, row }: PlanStrand): number {
  const work = workOf(before).filter((one) => one.session.id === session && one.item.row === row && !one.deload);
  return work.at(-1)?.item.asked.sets ?? Number.POSITIVE_INFINITY;
}

/** Some whole number of sets must explain every week by its share; trimmed weeks may have fewer. */
function auditSets(plan: PlanJson, strand: PlanStrand, items: readonly Placed[], worked: number): string[] {
  const found: string[] = [];
  const explains = (whole: number): boolean => {
    let lastWork = worked;
    return strand.occurrences.every((one, index) => {
      const share = plan.inputs.curve[one.week - 1]?.share ?? 1000;
      const full = Math.max(1, halfUp(whole * share));
      const cut = items[index]?.session.trimmed.some((trim) => trim.row === strand.row) === true;
      const eased = one.easy ? Math.min(full, Math.max(1, lastWork - 1)) : full;
      if (!one.easy) lastWork = one.sets;
      return cut || plan.inputs.breaks.length > 0 ? one.sets <= eased : one.sets === eased;
    });
  };
  if (!Array.from({ length: 40 }, (_, index) => index + 1).some(explains)) {
    found.push(`sets ${strand.occurrences.map((one) => one.sets).join(', ')} do not follow the curve's shares`);
  }
  let before: Placed | undefined;
  for (const placed of items) {
    const { group, item, deload } = placed;
    if (group.kind === 'circuit' && item.asked.sets !== group.rounds) found.push(`${item.id}: sets are not the rounds`);
    const last = before?.item.asked.sets;
    if (deload && last !== undefined && item.asked.sets > Math.max(1, last - 1))
      found.push(`${item.id}: an easy week of ${item.asked.sets} sets after ${last}`);
    if (!deload) before = placed;
  }
  return found;
}
