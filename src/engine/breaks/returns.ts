/**
 * The first weeks of training after a break: how gentle they are, by its length and its cause. On which days sessions
 * fall is decided elsewhere; here stands what is done on them. A doctor's or physiotherapist's word goes first.
 */
import type { Break } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import type { Dose } from '../../model/dose.js';
import type { Way } from '../../model/exercise.js';
import type { PerMille, Range, Seconds, Tenths } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { BREAK_AWAY } from '../rules/break-away.js';
import { BREAK_COUNTS } from '../rules/break-counts.js';
import { BREAK_FLOOR } from '../rules/break-floor.js';
import { BREAK_FLOOR_WEEKS } from '../rules/break-floor-weeks.js';
import { BREAK_HELD } from '../rules/break-held.js';
import { BREAK_HELD_ILL } from '../rules/break-held-ill.js';
import { BREAK_HURT } from '../rules/break-hurt.js';
import { BREAK_ILL } from '../rules/break-ill.js';
import { RETURN_CUT_FIRST } from '../rules/return-cut-first.js';
import { RETURN_CUT_FOURTH } from '../rules/return-cut-fourth.js';
import { RETURN_CUT_SECOND } from '../rules/return-cut-second.js';
import { RETURN_CUT_THIRD } from '../rules/return-cut-third.js';
import { RETURN_DAYS_FIRST } from '../rules/return-days-first.js';
import { RETURN_DAYS_SECOND } from '../rules/return-days-second.js';
import { RETURN_REST_FIRST } from '../rules/return-rest-first.js';
import { RETURN_REST_SECOND } from '../rules/return-rest-second.js';
import { RETURN_VOLUME } from '../rules/return-volume.js';
import { joinBreaks } from './join-breaks.js';

/** A break, or several that are one, and the day training went on after it. */
export interface Stretch {
  /** Of several the one that asks for most care: ill, then hurt, then away. */
  readonly cause: Break['cause'];
  /** All of them, in that order. */
  readonly causes: readonly Break['cause'][];
  readonly parts: readonly Break[];
  readonly from: Day;
  readonly until: Day;
  /** Its length, both ends counted. */
  readonly days: number;
  readonly back: Day;
  /** Long enough, for its cause, for gentle weeks. */
  readonly gentle: boolean;
}

/** What one day of training after a break is like. */
export interface Return {
  readonly stretch: Stretch;
  /** 1-based week of training since the break. */
  readonly week: number;
  /** Reps in reserve not gone below; `null` where the break asks for none. */
  readonly floor: { readonly rule: Rule; readonly reserve: Tenths } | null;
  /** Nothing is made harder: `why` is the break's cause. */
  readonly held: { readonly why: Break['cause'] } | null;
  /** Part of a row's whole number of sets that is left. */
  readonly setsShare: PerMille;
  /** Sets are limited by `return-volume` too. */
  readonly limited: boolean;
  /** More sessions than this in the week are too many; `null` where no rule says. */
  readonly sessions: { readonly rule: Rule; readonly most: number } | null;
  /** Least rest of conditioning in times of the work; 0 where no rule says. */
  readonly restTimes: number;
}

/**
 * Every break that still matters to a session of the block, in order of its end. Training went on with the first
 * session after it, or on an earlier day after it on which the client was tested or signed off. One that ended longer
 * before the block than `break-counts` is over; days without a word of a break are none.
 */
export function stretchesOf(context: BlockContext): readonly Stretch[] {
  const { client, today, firstDay, days, rules } = context;
  if (client.breaks.length === 0) return [];
  const seen = [...client.tests, ...client.signOffs].map(({ date }) => date).filter((date) => date <= today);
  return joinBreaks(context).flatMap(({ from, until, parts }): readonly Stretch[] => {
    if (firstDay - until > rules.valueOf(BREAK_COUNTS)) return [];
    const after = [...seen, ...days.map(({ day }) => day)].filter((day) => day > until);
    const back = after.sort((a, b) => a - b)[0];
    if (back === undefined) return [];
    const length = until - from + 1;
    const causes = CAUSES.filter((cause) => parts.some((part) => part.cause === cause));
    const gentle = causes.some((cause) => length >= rules.valueOf(LONG_ENOUGH[cause]));
    return [{ cause: causes[0] ?? 'away', causes, parts, from, until, days: length, back, gentle }];
  });
}

/** The one that asks for most care first. */
const CAUSES: readonly Break['cause'][] = ['ill', 'hurt', 'away'];

const LONG_ENOUGH: Readonly<Record<Break['cause'], Rule>> = { away: BREAK_AWAY, ill: BREAK_ILL, hurt: BREAK_HURT };

/** By week back, from the first. */
export const CUTS: readonly Rule[] = [RETURN_CUT_FIRST, RETURN_CUT_SECOND, RETURN_CUT_THIRD, RETURN_CUT_FOURTH];
export const RESTS: readonly Rule[] = [RETURN_REST_FIRST, RETURN_REST_SECOND];
const SESSIONS: readonly Rule[] = [RETURN_DAYS_FIRST, RETURN_DAYS_SECOND];

/**
 * What comes of the breaks before `day`; of several, whatever is most careful. `null` where nothing does, a single
 * missed session included: there is no published rule for one.
 */
export function returnOf(context: BlockContext, day: Day): Return | null {
  if (context.client.breaks.length === 0) return null;
  const all = stretchesOf(context).flatMap((stretch) => afterOne(context, stretch, day) ?? []);
  return all.reduce<Return | null>((found, next) => (found === null ? next : together(found, next)), null);
}

function afterOne({ rules }: BlockContext, stretch: Stretch, day: Day): Return | null {
  if (day < stretch.back) return null;
  const week = Math.floor((day - stretch.back) / 7) + 1;
  const within = (weeks: Rule): boolean => week <= rules.valueOf(weeks);
  const held = { why: stretch.cause };
  const kept = { stretch, week, floor: null, setsShare: 1000, limited: false, sessions: null, restTimes: 0 } as const;
  if (!stretch.gentle) return stretch.causes.includes('ill') && within(BREAK_HELD_ILL) ? { ...kept, held } : null;
  // The published limits are for two weeks or more without training, whatever kept the client away.
  const published = stretch.days >= rules.valueOf(BREAK_AWAY);
  const cut = published ? CUTS[week - 1] : undefined;
  const most = published ? SESSIONS[week - 1] : undefined;
  const rest = published ? RESTS[week - 1] : undefined;
  const floor = within(BREAK_FLOOR_WEEKS) ? { rule: BREAK_FLOOR, reserve: rules.valueOf(BREAK_FLOOR) } : null;
  if (floor === null && !within(BREAK_HELD) && cut === undefined) return null;
  return {
    stretch,
    week,
    floor,
    held: within(BREAK_HELD) ? held : null,
    setsShare: cut === undefined ? 1000 : 1000 - rules.valueOf(cut),
    limited: published && within(BREAK_FLOOR_WEEKS),
    sessions: most === undefined ? null : { rule: most, most: rules.valueOf(most) },
    restTimes: rest === undefined ? 0 : rules.valueOf(rest),
  };
}

function together(a: Return, b: Return): Return {
  const later = b.held !== null || a.held === null ? b : a;
  return {
    ...later,
    floor: a.floor ?? b.floor,
    held: later.held,
    setsShare: Math.min(a.setsShare, b.setsShare),
    limited: a.limited || b.limited,
    sessions: fewest(a.sessions, b.sessions),
    restTimes: Math.max(a.restTimes, b.restTimes),
  };
}

function fewest(a: Return['sessions'], b: Return['sessions']): Return['sessions'] {
  if (a === null || b === null) return a ?? b;
  return a.most <= b.most ? a : b;
}

/** A row's sets before they are laid out: those of a circuit are given together, since its rows keep one number. */
export interface SetsAsked {
  /** Of a whole week, before any share. */
  readonly whole: number;
  /** By the week's own share. */
  readonly planned: number;
  /** Where reps to failure are counted. */
  readonly reps: Range | null;
}

/**
 * Sets on a day of return: no more than planned, at least one; the published cut of the whole number, rounded half up;
 * and in the first weeks no more than keep sets × reps × part of a maximum within `return-volume`, with the reps at
 * the top of the range and the floor left in reserve: `n ⋅ r ⋅ 310 / (300 + 10 r + floor)` by Epley's equation.
 */
export function setsOnReturn(context: BlockContext, day: Day, rows: readonly SetsAsked[]): number {
  const most = rows.length === 0 ? 1 : Math.min(...rows.map(({ planned }) => planned));
  const back = returnOf(context, day);
  if (back === null) return most;
  const limits = rows.flatMap(({ whole, reps }) => [
    Math.floor((whole * back.setsShare + 500) / 1000),
    ...(reps === null || !back.limited ? [] : [setsWithin(context, reps.max, back.floor?.reserve ?? 0)]),
  ]);
  return Math.max(1, Math.min(most, ...limits));
}

const setsWithin = ({ rules }: BlockContext, reps: number, reserve: Tenths): number =>
  Math.floor((rules.valueOf(RETURN_VOLUME) * (300 + 10 * reps + reserve)) / (310 * reps));

/** Rest of a row on a day of return: longer for conditioning by work and pause, by the longest work it is asked for. */
export function restOnReturn(context: BlockContext, day: Day, way: Way, dose: Dose, rest: Seconds): Seconds {
  if (way !== 'conditioning' || dose.kind !== 'timed') return rest;
  return Math.max(rest, (returnOf(context, day)?.restTimes ?? 0) * dose.seconds.max);
}

/** Whether some session of the block is one of the gentle ones after a break: then no gain is counted on. */
export const hasGentleWeeks = (context: BlockContext): boolean =>
  context.client.breaks.length > 0 && context.days.some(({ day }) => (returnOf(context, day)?.floor ?? null) !== null);

/** The block's weeks in which `break-floor` holds, in order. */
export function weeksOfFloor(context: BlockContext): readonly number[] {
  const weeks = context.days.filter(({ day }) => returnOf(context, day)?.floor).map(({ week }) => week);
  return [...new Set(weeks)];
}
