/** A new edition whose block is much shorter or later than in the one before: said in one sentence, before any row. */
import type { Change, PlanChange } from '../model/change.js';
import { dayOfIso } from '../model/day.js';
import type { Plan } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import type { WholeChange } from './change-words.js';
import { sayDate } from './say-date.js';
import type { Speech } from './speech.js';

interface Whole {
  readonly changes: readonly Change[];
  /** The new plan. */
  readonly plan: Plan;
}

/** One session in so many of those left is much: common practice, no source. */
const MUCH_OF = 3;
/** Days the last session moves that are much: a week, common practice, no source. */
const MUCH_LATER = 7;

type OfDays = Extract<PlanChange, { readonly what: 'sessions' | 'dates' }>;

/** Of a block with other sessions in number, the last day goes with that number. */
export function isMuch(change: Change, { changes, plan }: Whole): boolean {
  switch (change.what) {
    case 'sessions': {
      const left = Math.max(1, change.before - (plan.inputs.done ?? []).length);
      return Math.abs(change.before - change.after) * MUCH_OF >= left;
    }
    case 'dates': {
      if (changes.some(({ what }) => what === 'sessions')) return false;
      const last = change.moved.at(-1);
      const [before, after] = [dayOfIso(last?.before ?? ''), dayOfIso(last?.after ?? '')];
      return before !== undefined && after !== undefined && Math.abs(after - before) >= MUCH_LATER;
    }
    default:
      return false;
  }
}

export function sayWhole(change: OfDays, told: Whole & { readonly speech: Speech }): string {
  const { plan, speech } = told;
  const left = daysLeft(plan);
  const [next, last] = [left[0], left.at(-1)];
  const said = {
    why: breakOf(change, plan),
    left: left.length,
    next: next === undefined ? '' : sayDate(next, speech),
    last: last === undefined ? '' : sayDate(last, speech),
  };
  return speech.words.changes[change.what === 'sessions' ? 'fewer' : 'later'](said);
}

/** Days of the sessions still to do, in order. */
function daysLeft({ weeks, inputs, today }: Plan): readonly string[] {
  const done = new Set((inputs.done ?? []).map(({ occurrence }) => occurrence));
  return weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ occurrence, date }) => !done.has(occurrence) && date >= today)
    .map(({ date }) => date)
    .sort();
}

/** Only what takes days away has a break for its cause; one still to come is not one that was. */
function breakOf(change: OfDays, { today }: Plan): WholeChange['why'] {
  const { reason } = change;
  if (reason === undefined || (change.what === 'sessions' && change.after > change.before)) return 'none';
  const cause = breakCause(reason);
  if (cause === undefined) return 'none';
  const from = reason.inputs.find(({ name }) => name === 'from')?.value;
  if (typeof from === 'string' && from > today) return 'will-be-away';
  return cause;
}

/**
 * The cause of a break, from a rule of the weeks after it. `ill` is said of every break that was not, or may not have
 * been, only time away: nobody reads that it was an illness.
 */
export function breakCause({ rule, inputs }: Reason): 'away' | 'ill' | undefined {
  if (rule === 'break-floor') return 'ill';
  if (!['break-', 'return-', 'missed-session'].some((beginning) => rule.startsWith(beginning))) return undefined;
  const cause = inputs.find(({ name }) => name === 'cause')?.value;
  if (cause === undefined) return rule.includes('-ill') || rule.includes('-hurt') ? 'ill' : 'away';
  return cause === 'ill' || cause === 'hurt' ? 'ill' : 'away';
}
