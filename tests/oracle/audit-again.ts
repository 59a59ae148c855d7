/**
 * A plan made again in the middle of its block: what was done is listed and stands in its place, and what is still to
 * come goes on from there. Only the latter can be repeated from the inputs.
 */
import { dayOf, weekday } from './audit-calendar.js';
import type { PlanJson, PlanSession } from './plan-json.js';

const isDone = (plan: PlanJson, { occurrence }: PlanSession): boolean =>
  plan.inputs.done?.some((one) => one.occurrence === occurrence) === true;

/** The plan without the sessions that were done. */
export const comingOf = (plan: PlanJson): PlanJson => ({
  ...plan,
  weeks: plan.weeks.map((week) => ({ ...week, sessions: week.sessions.filter((one) => !isDone(plan, one)) })),
});

/** The week from which on the inputs speak: that of the first session to come. */
export const weekNow = (plan: PlanJson): number =>
  plan.inputs.done === undefined ? 1 : (comingOf(plan).weeks.find(({ sessions }) => sessions.length > 0)?.number ?? 1);

export function auditAgain(plan: PlanJson): string[] {
  return [...listed(plan), ...places(plan), ...dates(plan), ...weeks(plan)];
}

function listed({ inputs: { done = [] }, weeks: planned, edition, today }: PlanJson): string[] {
  const found: string[] = [];
  const all = planned.flatMap(({ sessions }) => sessions.map(({ occurrence }) => occurrence));
  done.forEach((one, index) => {
    const before = done[index - 1];
    if (before !== undefined && before.occurrence >= one.occurrence) found.push('what was done is not in order');
    if (!all.includes(one.occurrence)) found.push(`session ${one.occurrence} was done, and is not there`);
    if (edition > 0 && one.edition >= edition) found.push(`session ${one.occurrence}: done in edition ${one.edition}`);
    if (one.day > today) found.push(`session ${one.occurrence}: done on ${one.day}, and planned again on ${today}`);
  });
  return found;
}

/** Each session stands in the week its place says, and none to come is passed over for a later one. */
function places(plan: PlanJson): string[] {
  const found: string[] = [];
  const { curve, days } = plan.inputs;
  if (plan.weeks.length !== curve.length) found.push(`${plan.weeks.length} weeks for a curve of ${curve.length}`);
  for (const { number, deload, sessions } of plan.weeks) {
    if (deload !== curve[number - 1]?.easy)
      found.push(`week ${number}: the curve says easy ${curve[number - 1]?.easy}`);
    for (const { occurrence } of sessions) {
      if (Math.ceil(occurrence / days.length) !== number) found.push(`session ${occurrence} stands in week ${number}`);
    }
  }
  const all = plan.weeks.flatMap(({ sessions }) => sessions);
  if (all.some(({ occurrence }, index) => occurrence <= (all[index - 1]?.occurrence ?? 0))) found.push('not in order');
  const coming = all.filter((one) => !isDone(plan, one)).map(({ occurrence }) => occurrence);
  for (let place = 1; place < (coming.at(-1) ?? 0); place += 1) {
    if (!all.some(({ occurrence }) => occurrence === place)) found.push(`session ${place} is passed over`);
  }
  return found;
}

/** On training days from today on, after the last done, one a day, in order, within the block, nothing crammed in. */
function dates(plan: PlanJson): string[] {
  const found: string[] = [];
  const { days, done = [], breaks, curve, minutesCap } = plan.inputs;
  const first = dayOf(plan.weeks[0]?.begins ?? '');
  if (weekday(first) !== days[0]) found.push(`the block begins on ${plan.weeks[0]?.begins}`);
  const trained = done.map(({ day }) => dayOf(day));
  const weekOf = (day: number): number => Math.floor((day - first) / 7);
  const isFree = (day: number): boolean =>
    days.includes(weekday(day)) &&
    !breaks.some(({ from, until }) => dayOf(from) <= day && day <= dayOf(until)) &&
    trained.filter((other) => weekOf(other) === weekOf(day)).length < days.length;
  const over = first + 7 * curve.length;
  let next = Math.max(dayOf(plan.today), ...trained.map((day) => day + 1));
  for (const session of comingOf(plan).weeks.flatMap(({ sessions }) => sessions)) {
    const day = dayOf(session.date);
    while (next < over && !isFree(next)) next += 1;
    if (day !== next) found.push(`session ${session.occurrence} is on ${session.date}, and not on the next free day`);
    if (day >= over) found.push(`session ${session.occurrence} is on ${session.date}, after the block`);
    if (plan.stops !== undefined && session.date > plan.stops.after)
      found.push(`${session.date} is after the last day`);
    if (session.minutes > minutesCap) found.push(`${session.date}: ${session.minutes} minutes of ${minutesCap}`);
    trained.push(day);
    next = day + 1;
  }
  return found;
}

/** From the block's own day on, in order, none after its first session as it stands. */
function weeks(plan: PlanJson): string[] {
  const found: string[] = [];
  const first = dayOf(plan.weeks[0]?.begins ?? '');
  plan.weeks.forEach(({ number, begins, sessions }, index) => {
    const day = dayOf(begins);
    if (weekday(day) !== weekday(first)) found.push(`week ${number} begins on ${begins}`);
    if (day < dayOf(plan.weeks[index - 1]?.begins ?? begins)) found.push(`week ${number} begins before the one before`);
    if (sessions.some(({ date }) => dayOf(date) < day)) found.push(`week ${number} begins after a session of it`);
  });
  return found;
}
