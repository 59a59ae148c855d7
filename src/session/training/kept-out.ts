/**
 * What waits for the coach: an exercise that hurt so much that it was to be left out is not done in a later session either, until
 * an edition answers. Where the phone plans again the planner's own rule sees to it.
 */
import { PAIN_BANDS, type PainBand } from '../../engine/history/marks/pain.js';
import type { ClientPlan, ClientSession } from '../../model/client-plan.js';
import type { IsoDate } from '../../model/day.js';
import { type ExerciseId, exerciseId, type RowId, readSetKey, type SessionId } from '../../model/identity.js';
import type { LogEvent, PainReport } from '../../model/log.js';
import { exerciseOf, exercisesIn, withEasier, withHarder } from './chain.js';
import { adviceFor } from './pain-screen.js';
import type { Told } from './told.js';

/** As the planner bands it, with what was said of the next morning. */
export function bandOf(plan: Pick<ClientPlan, 'pain'>, { degree, worseNextMorning }: PainReport): PainBand {
  const advice = adviceFor(plan, degree);
  const band = PAIN_BANDS.indexOf(advice === 'gently' ? 'gentle' : advice);
  const up = worseNextMorning === true ? plan.pain.nextMorning : 0;
  return PAIN_BANDS[Math.min(band + up, PAIN_BANDS.length - 1)] ?? 'leave';
}

export interface KeptOut {
  readonly row: RowId;
  readonly exercise: ExerciseId;
  /** What hurt, where it was another: what is harder than it waits as well. */
  readonly in?: ExerciseId;
  readonly degree: number;
  readonly date: IsoDate;
}

interface Hurt extends Pick<KeptOut, 'degree' | 'date'> {
  readonly session: SessionId | undefined;
  readonly row: RowId;
  readonly exercises: ReadonlySet<ExerciseId>;
}

type PainEvent = Extract<LogEvent, { readonly kind: 'pain' }>;

/** In order, what was said to hurt so much. A new edition is the coach's answer. */
function hurtSo({ plan }: Told, marks: readonly LogEvent[], counts: (event: PainEvent) => boolean): readonly Hurt[] {
  return marks.flatMap((event): readonly Hurt[] => {
    if (event.kind !== 'pain' || event.row === undefined || event.edition < plan.edition || !counts(event)) return [];
    const { report, row, occurrence } = event;
    if (report.alarm !== undefined || bandOf(plan, report) !== 'leave') return [];
    const session = sessionAt(plan, occurrence)?.id;
    const exercises = hurtIn(plan, marks, event);
    return [{ session, row, exercises, degree: report.degree, date: dayOf(event, marks) }];
  });
}

/** What is not offered as an easier way of anything else: it hurt, whether today or before, or is harder than what did. */
export function tooSore(told: Told, marks: readonly LogEvent[]): ReadonlySet<string> {
  const hurt = hurtSo(told, marks, () => true).flatMap(({ exercises }) => [...exercises]);
  return hurt.length === 0 ? NONE : withHarder(told.plan, hurt);
}

const NONE: ReadonlySet<string> = new Set();

/**
 * In order of the session's exercises, each for the latest of what was said of it. With what hurt waits what is known to be
 * harder: it asks more of the same place. Its own row waits in later weeks for anything but what is known to be easier, since a
 * row goes up from week to week and what leads where is not always told; who waits for nothing loses less than who is hurt again.
 */
export function keptOut(told: Told, marks: readonly LogEvent[], session: ClientSession): readonly KeptOut[] {
  const { plan } = told;
  if (plan.replan !== undefined) return [];
  // In the session itself it was for the client to choose.
  const said = hurtSo(told, marks, ({ occurrence }) => occurrence !== session.occurrence).map((hurt) => ({
    ...hurt,
    harder: withHarder(plan, hurt.exercises),
    easier: withEasier(plan, hurt.exercises),
  }));
  if (said.length === 0) return [];
  return session.groups
    .filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down')
    .flatMap(({ items }) => items)
    .flatMap((item): readonly KeptOut[] => {
      const own = exercisesIn(item);
      const hurt = said.findLast(
        ({ row, harder, easier, session: id }) =>
          own.some((one) => harder.has(one)) ||
          (row === item.row && id === session.id && own.some((one) => !easier.has(one))),
      );
      if (hurt === undefined) return [];
      const { degree, date, exercises } = hurt;
      const { row, exercise } = item;
      const [other] = exercises;
      const another = exercises.has(exercise) || other === undefined ? {} : { in: other };
      return [{ row, exercise, ...another, degree, date }];
    });
}

/** With the answer of the next morning in it a report is told anew on a later day: then the day of its session counts. */
function dayOf(
  { at, report, occurrence }: Extract<LogEvent, { readonly kind: 'pain' }>,
  marks: readonly LogEvent[],
): IsoDate {
  const opened = marks.findLast((event) => event.kind === 'opened' && event.occurrence === occurrence);
  return (report.worseNextMorning === undefined ? at : (opened?.at ?? at)).slice(0, 10);
}

const sessionAt = ({ weeks }: ClientPlan, occurrence: number): ClientSession | undefined =>
  weeks.flatMap(({ sessions }) => sessions).find((session) => session.occurrence === occurrence);

/**
 * What was planned in its row, and what was done or shown in it; where nothing of it is marked, any of its easier ways may have
 * been shown.
 */
export function hurtIn(
  plan: ClientPlan,
  marks: readonly LogEvent[],
  { occurrence, row }: PainEvent,
): ReadonlySet<ExerciseId> {
  const groups = sessionAt(plan, occurrence)?.groups ?? [];
  const planned = groups.flatMap(({ items }) => items).filter((item) => item.row === row);
  const met = marks.flatMap((event) => {
    if (event.kind !== 'set') return [];
    const key = readSetKey(event.key);
    return key !== null && key.row === row && key.occurrence === occurrence ? [event.exercise] : [];
  });
  const ways = met.length > 0 ? [] : planned.flatMap((item) => item.easier.map((way) => exerciseOf(way, item)));
  return new Set([...planned.map(({ exercise }) => exercise), ...met, ...ways.map(exerciseId)]);
}
