/** On how many days a week something is trained, against published least numbers of days. */
import { agesInYear, type IsoDate } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { Finding, Plan } from '../../model/plan.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import { MUSCLE_GROUPS } from '../../model/weekly-sets.js';
import { reasonOf } from '../reason-of.js';
import { AUDIT_BALANCE_DAYS } from '../rules/audit-balance-days.js';
import { AUDIT_BONE_BACK } from '../rules/audit-bone-back.js';
import { AUDIT_BONE_BALANCE } from '../rules/audit-bone-balance.js';
import { AUDIT_DIRECT_SET } from '../rules/audit-direct-set.js';
import { AUDIT_GROUP_DAYS } from '../rules/audit-group-days.js';
import { OLDER_FROM } from '../rules/older-from.js';
import type { CountOf } from './count-sets.js';
import { BACK_EXTENSORS, muscleOf } from './muscle-groups.js';
import { valueIn } from './value-in-plan.js';
import { isWhole } from './whole-weeks.js';
import type { WorkedSession } from './working-sets.js';

export function auditDays(plan: Plan, sessions: readonly WorkedSession[], count: CountOf): readonly Finding[] {
  return [...groupDays(plan, sessions, count), ...balanceDays(plan, sessions), ...boneDays(plan, sessions)];
}

/** Conditions with which the published advice on low bone density holds. */
const OF_BONE: ReadonlySet<string> = new Set(['low bone density', 'vertebral fracture']);

const asksBalance = ({ facts }: Exercise): boolean => facts.asks.some(({ of }) => of === 'balance');
const worksTheBack = ({ facts }: Exercise): boolean =>
  [...facts.muscles.main, ...facts.muscles.assisting].some((each) => muscleOf(each)?.name === BACK_EXTENSORS);

const finding = (rule: Rule, weeks: readonly number[], inputs: readonly ReasonInput[]): Finding => ({
  rule: rule.id,
  audience: 'coach',
  weeks,
  reason: reasonOf(rule, 'coach', inputs, 'measured'),
});

/** By week the days on which something holds. */
function daysWhere(
  plan: Plan,
  sessions: readonly WorkedSession[],
  holds: (date: IsoDate) => boolean,
): readonly { readonly number: number; readonly days: number; readonly of: number }[] {
  const dates = plan.weeks.map(() => new Set<IsoDate>());
  for (const { week, date } of sessions) dates[week]?.add(date);
  return dates.map((own, week) => {
    let days = 0;
    for (const date of own) if (holds(date)) days += 1;
    return { number: plan.weeks[week]?.number ?? 0, days, of: own.size };
  });
}

/** So many days a week are asked of whole weeks alone. */
function wholeWeeks(plan: Plan): ReadonlySet<number> {
  return new Set(plan.weeks.filter((week) => isWhole(plan, week)).map(({ number }) => number));
}

const onDay = (sessions: readonly WorkedSession[], of: IsoDate): readonly WorkedSession[] =>
  sessions.filter(({ date }) => date === of);

/** A day counts for a group that it gives at least one whole set; groups short in the same weeks are told together. */
function groupDays(plan: Plan, sessions: readonly WorkedSession[], count: CountOf): readonly Finding[] {
  const least = valueIn(plan, AUDIT_GROUP_DAYS);
  const whole = Math.floor(valueIn(plan, AUDIT_DIRECT_SET) / 100);
  const short = new Map<string, { weeks: readonly number[]; inputs: ReasonInput[] }>();
  const ofDay = new Map<string, Map<string, number>>();
  for (const { date, worked } of sessions) {
    const groups = ofDay.get(date) ?? new Map<string, number>();
    ofDay.set(date, groups);
    for (const { exercise, left, right } of worked) {
      for (const [group, tenths] of count(exercise).groups) {
        groups.set(group, (groups.get(group) ?? 0) + Math.min(left, right) * tenths);
      }
    }
  }
  const asked = wholeWeeks(plan);
  for (const group of MUSCLE_GROUPS) {
    const trained = (date: IsoDate): boolean => (ofDay.get(date)?.get(group) ?? 0) >= whole;
    const below = daysWhere(plan, sessions, trained).filter(({ days, number }) => days < least && asked.has(number));
    if (below.length === 0) continue;
    const weeks = below.map(({ number }) => number);
    const told = short.get(weeks.join()) ?? { weeks, inputs: [] };
    const fewest = Math.min(...below.map(({ days }) => days));
    told.inputs.push(
      { name: 'group', value: group, unit: '' },
      { name: `days for ${group}`, value: fewest, unit: 'days' },
    );
    short.set(weeks.join(), told);
  }
  const value: ReasonInput = { name: 'value', value: least, unit: 'days' };
  return [...short.values()].map(({ weeks, inputs }) => finding(AUDIT_GROUP_DAYS, weeks, [value, ...inputs]));
}

/** For the oldest age the birth year allows on the day the block starts. */
function balanceDays(plan: Plan, sessions: readonly WorkedSession[]): readonly Finding[] {
  const { oldest } = agesInYear(plan.inputs.birthYear, Number(plan.starts.slice(0, 4)));
  if (oldest < valueIn(plan, OLDER_FROM)) return [];
  const least = valueIn(plan, AUDIT_BALANCE_DAYS);
  const both = (date: IsoDate): boolean => {
    const day = onDay(sessions, date);
    return day.some(({ worked }) => worked.length > 0) && day.some(({ done }) => done.some(asksBalance));
  };
  const asked = wholeWeeks(plan);
  const below = daysWhere(plan, sessions, both).filter(({ days, number }) => days < least && asked.has(number));
  if (below.length === 0) return [];
  return [
    finding(
      AUDIT_BALANCE_DAYS,
      below.map(({ number }) => number),
      [
        { name: 'value', value: least, unit: 'days' },
        { name: 'days', value: Math.min(...below.map(({ days }) => days)), unit: 'days' },
      ],
    ),
  ];
}

/** Every training day, since the published advice is for every day. */
function boneDays(plan: Plan, sessions: readonly WorkedSession[]): readonly Finding[] {
  if (!plan.inputs.standing.health.some(({ value }) => OF_BONE.has(value))) return [];
  const wanted: readonly (readonly [Rule, (of: Exercise) => boolean])[] = [
    [AUDIT_BONE_BALANCE, asksBalance],
    [AUDIT_BONE_BACK, worksTheBack],
  ];
  return wanted.flatMap(([rule, serves]): readonly Finding[] => {
    const least = valueIn(plan, rule);
    const enough = (date: IsoDate): boolean =>
      new Set(onDay(sessions, date).flatMap(({ done }) => done.filter(serves))).size >= least;
    const below = daysWhere(plan, sessions, enough).filter(({ days, of }) => days < of);
    if (below.length === 0) return [];
    const missing = below.reduce((all, { days, of }) => all + of - days, 0);
    return [
      finding(
        rule,
        below.map(({ number }) => number),
        [
          { name: 'value', value: least, unit: 'exercises' },
          { name: 'days', value: missing, unit: 'days' },
        ],
      ),
    ];
  });
}
