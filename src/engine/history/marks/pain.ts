/**
 * Pain as it was said, and what comes of it. Bands are whole numbers of 0 to 10, stricter than the published models,
 * which are for clinics. A sign of alarm stands outside them.
 */
import type { Caution, Client, Observation } from '../../../model/client.js';
import { addDays, type Day, isoOfDay } from '../../../model/day.js';
import { BODY_PARTS, type BodyPart, type Exercise } from '../../../model/exercise.js';
import type { DoneSession } from '../../../model/history.js';
import type { AlarmSign, PainReport } from '../../../model/log.js';
import { ofClient, type Problem } from '../../../model/problem.js';
import type { Grams } from '../../../model/quantity.js';
import type { ReasonInput } from '../../../model/reason.js';
import type { Rulebook } from '../../rulebook.js';
import { PAIN_ALARM } from '../../rules/pain-alarm.js';
import { PAIN_BACK } from '../../rules/pain-back.js';
import { PAIN_EASIER } from '../../rules/pain-easier.js';
import { PAIN_GENTLE } from '../../rules/pain-gentle.js';
import { PAIN_HOLD_DAYS } from '../../rules/pain-hold-days.js';
import { PAIN_LEAVE } from '../../rules/pain-leave.js';
import { PAIN_NEXT_MORNING } from '../../rules/pain-next-morning.js';
import { PAIN_SIGN_OFF } from '../../rules/pain-sign-off.js';
import { needsSignOff } from '../../versions/read-sign-off.js';
import type { Remembering } from '../recall.js';
import { painsSeen } from '../seen/pains-seen.js';
import { gramsKnown, rowsOf, workDone } from './marked-rows.js';

export const PAIN_BANDS = ['gentle', 'easier', 'leave'] as const;
export type PainBand = (typeof PAIN_BANDS)[number];

/** By its degree, and one band higher where it was worse the next morning; the highest has none above it. */
export function painBand({ degree, worseNextMorning }: PainReport, rules: Rulebook): PainBand {
  const at =
    degree >= rules.valueOf(PAIN_LEAVE)
      ? 2
      : degree > rules.valueOf(PAIN_GENTLE) || degree >= rules.valueOf(PAIN_EASIER)
        ? 1
        : 0;
  const up = worseNextMorning === true ? rules.valueOf(PAIN_NEXT_MORNING) : 0;
  return PAIN_BANDS[Math.min(at + up, 2)] ?? 'leave';
}

/** Pain in one exercise that the coach has not cleared since. */
export interface PainIn {
  readonly exercise: Exercise;
  readonly report: PainReport;
  readonly band: PainBand;
  readonly day: Day;
  /** By the coach, who need not be told of it. */
  readonly seen?: boolean;
}

/** Pain that the coach has cleared since. */
export interface PainCleared extends PainIn {
  readonly cleared: Day;
}

/**
 * Of every session, however long ago: what is left out waits for the coach, not for the calendar. Pain said of a row is
 * of what was done in it; pain of a whole session is of those of its exercises that ask that part, or of all.
 */
export function painsOf(remembering: Remembering): readonly PainIn[] {
  const { observations } = remembering.client;
  return painsSaid(remembering).filter(({ exercise, day }) => !isCleared(observations, day, exercise, remembering));
}

/** For which something was left out until it was cleared; after an alarm that was everything. Earliest cleared first. */
export function painsCleared(remembering: Remembering): readonly PainCleared[] {
  const { client, exercises, history, today } = remembering;
  const left = painsSaid(remembering).filter(({ band, report }) => band === 'leave' && report.alarm === undefined);
  const alarms = history.sessions
    .filter(({ day }) => day <= today)
    .flatMap(({ rows, pain, day }) =>
      [...rows.flatMap((row) => row.pain), ...pain]
        .filter(({ alarm }) => alarm !== undefined)
        .flatMap((report) =>
          [...new Set(exercises.values())].map((exercise) => ({ exercise, report, band: 'leave' as const, day })),
        ),
    );
  const clearedOf = (pain: PainIn): Day | null =>
    clearedOn(client.observations, pain.day, pain.report.alarm === undefined ? pain.exercise : null, remembering);
  return [...left, ...alarms]
    .flatMap((pain): readonly PainCleared[] => {
      const cleared = clearedOf(pain);
      return cleared === null ? [] : [{ ...pain, cleared }];
    })
    .sort((a, b) => a.cleared - b.cleared || a.day - b.day);
}

function painsSaid(remembering: Remembering): readonly PainIn[] {
  const { history, rules, today } = remembering;
  const seen = painsSeen(remembering).map((pain) => ({ ...pain, band: painBand(pain.report, rules), seen: true }));
  const marked = history.sessions
    .filter(({ day }) => day <= today)
    .flatMap((session): readonly PainIn[] => {
      const { day } = session;
      const of = (report: PainReport, all: readonly Exercise[]): readonly PainIn[] =>
        all.map((exercise) => ({ exercise, report, band: painBand(report, rules), day }));
      const inRows = session.rows.flatMap((_, index) =>
        (session.rows[index]?.pain ?? []).flatMap((report) => of(report, doneIn(remembering, session, index))),
      );
      return [...inRows, ...session.pain.flatMap((report) => of(report, askingIn(remembering, session, report)))];
    });
  return [...marked, ...seen].sort((a, b) => a.day - b.day);
}

/** What was done in a row; where nothing was, what was planned. */
function doneIn({ exercises }: Remembering, { rows }: DoneSession, index: number): readonly Exercise[] {
  const row = rows[index];
  if (row === undefined) return [];
  const done = row.sets.filter(({ done }) => done !== 'left out').map(({ exercise }) => exercise);
  return [...new Set(done.length === 0 ? [row.exercise] : done)].flatMap((id) => exercises.get(id) ?? []);
}

/** Of what was marked, or of all that was planned where a session ended before the first mark: what asks the sore place. */
function askingIn(remembering: Remembering, session: DoneSession, { where }: PainReport): readonly Exercise[] {
  const begun = session.rows.some(({ sets }) => sets.length > 0);
  const marked = session.rows.flatMap((row, index) =>
    begun && row.sets.length === 0 ? [] : doneIn(remembering, session, index),
  );
  const all = [...new Set(marked)];
  const asking = all.filter(({ facts }) => facts.asks.some(({ of }) => of === where));
  return asking.length > 0 ? asking : all;
}

/** On that day or later, of this exercise or of everything. */
export const isCleared = (...of: Parameters<typeof clearedOn>): boolean => clearedOn(...of) !== null;

/** The first such day; `null` where it is not cleared. */
function clearedOn(
  observations: readonly Observation[],
  day: Day,
  exercise: Exercise | null,
  { exercises, today }: Pick<Remembering, 'exercises' | 'today'>,
): Day | null {
  const days = observations
    .filter(
      ({ means, date, exercise: named }) =>
        means.kind === 'cleared' &&
        date >= day &&
        date <= today &&
        (named === undefined || (exercise !== null && exercises.get(named) === exercise)),
    )
    .map(({ date }) => date);
  return days.sort((a, b) => a - b)[0] ?? null;
}

/** Figures of one report, for a reason. */
export function painInputs({ exercise, report, day }: PainIn, rules: Rulebook): readonly ReasonInput[] {
  return [
    { name: 'exercise', value: exercise.id, unit: '' },
    { name: 'degree', value: report.degree, unit: '' },
    { name: 'where', value: report.where, unit: '' },
    { name: 'marked', value: isoOfDay(day), unit: '' },
    { name: 'until', value: isoOfDay(painHolds(day, rules)), unit: '' },
  ];
}

/** Of what was cleared: the sign where it was one, and until when it holds where it does. */
export function backInputs(pain: PainCleared, rules: Rulebook, holds: boolean): readonly ReasonInput[] {
  const { exercise, report, day, cleared } = pain;
  const what: readonly ReasonInput[] =
    report.alarm === undefined
      ? [
          { name: 'degree', value: report.degree, unit: '' },
          { name: 'where', value: report.where, unit: '' },
        ]
      : [{ name: 'sign', value: report.alarm, unit: '' }];
  return [
    { name: 'exercise', value: exercise.id, unit: '' },
    ...what,
    { name: 'marked', value: isoOfDay(day), unit: '' },
    { name: 'cleared', value: isoOfDay(cleared), unit: '' },
    { name: 'loads', value: rules.valueOf(PAIN_BACK), unit: 'loads' },
    ...(holds ? [{ name: 'until', value: isoOfDay(painHolds(cleared, rules)), unit: '' }] : []),
  ];
}

/** The lightest load that the exercise was done with on the day it hurt, as far as it is known. */
export function hurtWith({ history, exercises }: Remembering, { exercise, day }: PainIn): Grams | null {
  const loads = history.sessions
    .filter((session) => session.day === day)
    .flatMap(rowsOf)
    .flatMap(({ row }) => workDone(row).map((set) => ({ set, row })))
    .filter(({ set }) => exercises.get(set.exercise) === exercise)
    .flatMap(({ set, row }) => gramsKnown(set, row, exercise) ?? []);
  return loads.length === 0 ? null : Math.min(...loads);
}

/** The last day on which nothing is made harder after pain on `day`. */
export const painHolds = (day: Day, rules: Rulebook): Day => addDays(day, rules.valueOf(PAIN_HOLD_DAYS));

/** From the second band on: care with that part of the body, for as long as it holds. */
export function painCautions({ client, rules }: Remembering, pains: readonly PainIn[]): readonly Caution[] {
  const cautions = pains.flatMap(({ report, band, day }): readonly Caution[] => {
    const { where, side } = report;
    if (band === 'gentle' || !isPart(where)) return [];
    const held = { from: day, ...(band === 'leave' ? {} : { until: painHolds(day, rules) }) };
    const of = { what: where, degree: 'take care', side: side ?? 'both', phases: [] } as const;
    return [{ ...of, ...held, by: PAIN_SAID, place: client.place }];
  });
  // Of several alike the one that holds longest.
  return cautions.filter((one, index) => {
    const alike = cautions.filter(({ what, side }) => what === one.what && side === one.side);
    const longest = alike.reduce((a, b) => (lasts(b) > lasts(a) ? b : a));
    return cautions.indexOf(longest) === index;
  });
}

/** The author of a caution that follows from pain. */
const PAIN_SAID = 'pain as it was marked';
const lasts = ({ until }: Caution): number => until ?? Number.MAX_SAFE_INTEGER;
const isPart = (where: PainReport['where']): where is BodyPart => BODY_PARTS.some((part) => part === where);

/** Without those that pain or an alarm since has taken back; only where one is needed at all. */
export function signOffsLeft(
  { client, exercises, rules }: Remembering,
  pains: readonly PainIn[],
): Pick<Client, 'signOffs'> & { readonly taken: readonly PainIn[] } {
  const least = rules.valueOf(PAIN_SIGN_OFF);
  const grave = pains.filter(({ report }) => report.degree >= least || report.alarm !== undefined);
  const takes = grave.filter(({ exercise }) => needsSignOff(exercise));
  const signOffs = client.signOffs.filter(
    ({ exercise, date }) => !takes.some((pain) => exercises.get(exercise) === pain.exercise && date <= pain.day),
  );
  const taken = takes.filter((pain) =>
    client.signOffs.some(({ exercise, date }) => exercises.get(exercise) === pain.exercise && date <= pain.day),
  );
  return { signOffs, taken };
}

interface Alarm {
  readonly sign: AlarmSign;
  readonly day: Day;
}

/** Signs of alarm that nobody has cleared, latest first. One exercise cleared is not the client cleared. */
function alarmsOf(remembering: Remembering): readonly Alarm[] {
  const { client, history, today } = remembering;
  return history.sessions
    .filter(({ day }) => day <= today)
    .flatMap(({ rows, pain, day }) =>
      [...rows.flatMap((row) => row.pain), ...pain].flatMap(({ alarm }) =>
        alarm === undefined ? [] : [{ sign: alarm, day }],
      ),
    )
    .filter(({ day }) => !isCleared(client.observations, day, null, remembering))
    .reverse();
}

/** The client is withheld, and an earlier booklet with them. Reports `alarm-reported`. */
export function alarmProblems(remembering: Remembering): readonly Problem[] {
  const { client, rules } = remembering;
  const alarms = alarmsOf(remembering);
  const [latest] = alarms;
  if (latest === undefined || alarms.length < rules.valueOf(PAIN_ALARM)) return [];
  const signs = [...new Set(alarms.map(({ sign }) => sign))];
  const data = { signs, date: isoOfDay(latest.day) };
  const head = { severity: 'error', scope: ofClient(client.id), place: client.place, unsafe: true } as const;
  return [{ ...head, code: 'alarm-reported', data }];
}
