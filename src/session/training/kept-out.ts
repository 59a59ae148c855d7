/**
 * What waits for the coach: an exercise that hurt so much that it was to be left out is not done in a later session either, until
 * an edition answers. Where the phone plans again the planner's own rule sees to it.
 */
import { PAIN_BANDS, type PainBand } from '../../engine/history/marks/pain.js';
import type { ClientPlan, ClientSession } from '../../model/client-plan.js';
import type { IsoDate } from '../../model/day.js';
import { type ExerciseId, type RowId, readSetKey } from '../../model/identity.js';
import type { LogEvent, PainReport } from '../../model/log.js';
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
  readonly degree: number;
  readonly date: IsoDate;
}

/** In order of the session's exercises, each for the latest of what was said of it. */
export function keptOut(told: Told, marks: readonly LogEvent[], session: ClientSession): readonly KeptOut[] {
  const { plan } = told;
  if (plan.replan !== undefined) return [];
  const said = new Map<ExerciseId, Pick<KeptOut, 'degree' | 'date'>>();
  for (const event of marks) {
    if (event.kind !== 'pain' || event.row === undefined) continue;
    // A new edition is the coach's answer; in the session itself it was for the client to choose.
    if (event.edition < plan.edition || event.occurrence === session.occurrence) continue;
    const { report } = event;
    if (report.alarm !== undefined || bandOf(plan, report) !== 'leave') continue;
    const hurt = { degree: report.degree, date: dayOf(event, marks) };
    for (const exercise of doneIn(plan, marks, event.occurrence, event.row)) said.set(exercise, hurt);
  }
  return session.groups
    .filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down')
    .flatMap(({ items }) => items)
    .flatMap(({ row, exercise }): readonly KeptOut[] => {
      const hurt = said.get(exercise);
      return hurt === undefined ? [] : [{ row, exercise, ...hurt }];
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

/** What was planned in a row, and what was done in it. */
function doneIn(
  { weeks }: ClientPlan,
  marks: readonly LogEvent[],
  occurrence: number,
  row: RowId,
): ReadonlySet<ExerciseId> {
  const planned = weeks
    .flatMap(({ sessions }) => sessions)
    .filter((session) => session.occurrence === occurrence)
    .flatMap(({ groups }) => groups.flatMap(({ items }) => items))
    .filter((item) => item.row === row)
    .map(({ exercise }) => exercise);
  const done = marks.flatMap((event) => {
    if (event.kind !== 'set' || event.done === 'left out') return [];
    const key = readSetKey(event.key);
    return key?.row === row && key.occurrence === occurrence ? [event.exercise] : [];
  });
  return new Set([...planned, ...done]);
}
