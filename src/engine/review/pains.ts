/** Pain and signs of alarm over time, as they were marked and as the coach saw them, cleared or not. */
import { type Day, isoOfDay } from '../../model/day.js';
import type { DoneRow } from '../../model/history.js';
import type { ExerciseId, Side } from '../../model/identity.js';
import type { PainReport } from '../../model/log.js';
import type { AlarmReviewed, PainPlace, PainReviewed } from '../../model/review.js';
import { isCleared, PAIN_BANDS, type PainBand, painBand } from '../history/marks/pain.js';
import { SEEN_PAIN } from '../rules/seen-pain.js';
import { type Reviewing, wasDone } from './reviewing.js';

/** One report, of whatever it was said. */
export interface Pain {
  readonly report: PainReport;
  readonly band: PainBand;
  readonly day: Day;
  /** What it was felt in; `null` for a session as a whole, or where the coach named none. */
  readonly exercise: ExerciseId | null;
  readonly seen: boolean;
  readonly cleared: boolean;
}

/** In order of day. */
export function painsIn(reviewing: Reviewing): readonly Pain[] {
  const { client, exercises, history, rules, today } = reviewing;
  const isClear = (day: Day, exercise: ExerciseId | null): boolean =>
    isCleared(client.observations, day, exercise === null ? null : (exercises.get(exercise) ?? null), reviewing);
  const one = (report: PainReport, day: Day, exercise: ExerciseId | null, seen: boolean): Pain => {
    const cleared = isClear(day, exercise);
    return { report, band: painBand(report, rules), day, exercise, seen, cleared };
  };
  const marked = history.sessions.flatMap(({ rows, pain, day }) => {
    // Said of the whole session, it is cleared with any exercise that was done in it.
    const clear = rows.some((row) => row.sets.some(wasDone) && isClear(day, exerciseOf(row)));
    const whole = pain.map((report) => one(report, day, null, false));
    return [
      ...rows.flatMap((row) => row.pain.map((report) => one(report, day, exerciseOf(row), false))),
      ...whole.map((each) => ({ ...each, cleared: each.cleared || clear })),
    ];
  });
  const seen = client.observations.flatMap(({ means, date, side, exercise }): readonly Pain[] => {
    if (means.kind !== 'pain' || date > today || rules.valueOf(SEEN_PAIN) === 0) return [];
    const { where, degree } = means;
    const report: PainReport = { where, degree, ...(side === 'both' ? {} : { side }) };
    return [one(report, date, exercise === undefined ? null : (exercises.get(exercise)?.id ?? exercise), true)];
  });
  return [...marked, ...seen].sort((a, b) => a.day - b.day);
}

/** What was done in a row last; where nothing was, what was planned. */
const exerciseOf = ({ sets, exercise }: DoneRow): ExerciseId => sets.findLast(wasDone)?.exercise ?? exercise;

export const sideOf = ({ report }: Pain): Side | 'both' => report.side ?? 'both';
export const bandOf = ({ band }: Pain): number => PAIN_BANDS.indexOf(band);

/** A report of no pain at all is none. */
export const hurts = ({ report }: Pain): boolean => report.degree > 0 || report.worseNextMorning === true;

/** By place and side, in the order first said; an alarm sign alone is no place. */
export function painPlaces(pains: readonly Pain[], today: Day): readonly PainPlace[] {
  const places = new Map<string, Pain[]>();
  for (const pain of pains.filter(hurts)) {
    const key = `${pain.report.where}/${sideOf(pain)}`;
    const own = places.get(key);
    if (own === undefined) places.set(key, [pain]);
    else own.push(pain);
  }
  return [...places.values()].flatMap((own): readonly PainPlace[] => {
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) return [];
    const reports = own.map(reviewed);
    const place = { where: first.report.where, side: sideOf(first), reports };
    return [{ ...place, trend: trendOf(own), quietDays: today - last.day }];
  });
}

const reviewed = ({ report, day, exercise, seen, cleared }: Pain): PainReviewed => ({
  date: isoOfDay(day),
  degree: report.degree,
  worseNextMorning: report.worseNextMorning === true,
  exercise,
  seen,
  cleared,
});

function trendOf(own: readonly Pain[]): PainPlace['trend'] {
  const days = [...new Set(own.map(({ day }) => day))];
  const worst = (day: Day | undefined): number =>
    Math.max(...own.filter((one) => one.day === day).map(({ report }) => report.degree));
  if (days.length < 2) return 'once';
  const change = worst(days.at(-1)) - worst(days.at(-2));
  return change === 0 ? 'the same' : change > 0 ? 'more' : 'less';
}

/** One exercise cleared is not the client cleared. */
export function alarmsIn(reviewing: Reviewing): readonly AlarmReviewed[] {
  const { client, history } = reviewing;
  return history.sessions.flatMap(({ rows, pain, day }) =>
    [...rows.flatMap((row) => row.pain), ...pain].flatMap(({ alarm }): readonly AlarmReviewed[] => {
      if (alarm === undefined) return [];
      const cleared = isCleared(client.observations, day, null, reviewing);
      return [{ date: isoOfDay(day), sign: alarm, cleared }];
    }),
  );
}
