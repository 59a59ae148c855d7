/**
 * Whether what hurt was worse the next morning: asked once, before the next session and only where something did hurt on the last
 * day of training. The report is then said anew with the answer in it, so that it stands once in the log and counts as the
 * planner counts it.
 */
import type { ClientItem } from '../../model/client-plan.js';
import type { IsoDate } from '../../model/day.js';
import type { LogEvent, PainReport } from '../../model/log.js';
import type { MorningScreen, TodayScreen } from '../../model/training.js';
import { exercisesIn, firstWay, withHarder } from './chain.js';
import type { InSession } from './in-session.js';
import { bandOf, hurtIn } from './kept-out.js';
import { adviceFor, sideIn, whereOf } from './pain-screen.js';
import type { Mark, Stepped } from './told.js';
import { eased, type TrainingState } from './training-state.js';

type PainEvent = Extract<LogEvent, { readonly kind: 'pain' }>;

interface Sore {
  /** The worst of them, of several alike the latest. */
  readonly worst: PainEvent;
  /** All that was said that day of the same place and side. */
  readonly reports: readonly PainEvent[];
  readonly date: IsoDate;
}

const dayOf = ({ at }: LogEvent): IsoDate => at.slice(0, 10);

const isAnswered = (event: LogEvent): boolean => event.kind === 'pain' && event.report.worseNextMorning !== undefined;

/**
 * In this edition or a later one: a new one is the coach's answer. What hurt before this very session is asked of by how today is,
 * and after a sign of alarm nothing is.
 */
function soreIn({ told, state, marks, place }: InSession): Sore | null {
  const { plan, today } = told;
  // One question, however much hurt.
  if (marks.some((event) => isAnswered(event) && dayOf(event) === today)) return null;
  const before = marks.map(dayOf).filter((day) => day < today);
  const last = before.sort().at(-1);
  const said = marks.filter(
    (event): event is PainEvent =>
      event.kind === 'pain' &&
      dayOf(event) === last &&
      event.edition >= plan.edition &&
      event.occurrence !== place.occurrence &&
      event.report.degree > 0 &&
      event.report.alarm === undefined &&
      !isAnswered(event),
  );
  const [first, ...others] = said;
  if (first === undefined || last === undefined) return null;
  const worst = others.reduce((a, b) => (b.report.degree >= a.report.degree ? b : a), first);
  if (state.passedBy.includes(nameOf(worst))) return null;
  const { where, side } = worst.report;
  return { worst, reports: said.filter(({ report }) => report.where === where && report.side === side), date: last };
}

/** What it is called where it was passed by. */
const nameOf = ({ id }: PainEvent): string => `morning/${id}`;

export function morningScreen(at: InSession): MorningScreen | null {
  const sore = soreIn(at);
  if (sore === null) return null;
  const { report } = sore.worst;
  const { degree } = report;
  const side = sideIn(report);
  return {
    kind: 'morning',
    place: at.place,
    where: whereOf(report),
    ...(side === undefined ? {} : { side }),
    degree,
    date: sore.date,
    advice: adviceIfWorse(at, report),
  };
}

/** As the planner counts it. */
function adviceIfWorse({ told: { plan } }: InSession, report: PainReport): MorningScreen['advice'] {
  if (bandOf(plan, report) === 'leave') return 'waits';
  return bandOf(plan, { ...report, worseNextMorning: true }) === 'leave' ? 'leave' : 'easier';
}

/**
 * What was said of a session as a whole leaves nothing out of a later one by itself. So it is said back, until how today is was
 * answered anew; what was said this very day is known.
 */
export function soreBefore({ told: { plan, today }, marks }: InSession): NonNullable<TodayScreen['sore']> | null {
  const said = marks.findLast((event) => event.kind === 'opened' || (event.kind === 'pain' && event.row === undefined));
  if (said?.kind !== 'pain' || said.edition < plan.edition || dayOf(said) === today) return null;
  const { report } = said;
  return adviceFor(plan, report.degree) === 'gently' ? null : { ...report, where: whereOf(report), date: dayOf(said) };
}

/** `null`: nobody knows any more. */
export function answerMorning(at: InSession, worse: boolean | null): Stepped {
  const { state } = at;
  const sore = soreIn(at);
  if (sore === null) return { state, marks: [] };
  if (worse === null) return { state: { ...state, passedBy: [...state.passedBy, nameOf(sore.worst)] }, marks: [] };
  const marks = sore.reports.flatMap(({ id, occurrence, row, report }): readonly Mark[] => [
    { kind: 'void', event: id },
    {
      kind: 'pain',
      occurrence,
      ...(row === undefined ? {} : { row }),
      report: { ...report, worseNextMorning: worse },
    },
  ]);
  return { state: worse ? heeded(at, sore) : state, marks };
}

/** What was said to follow, unless the rest is planned again: there the planner's own rule sees to it. */
function heeded(at: InSession, { worst, reports }: Sore): TrainingState {
  const { told, state, marks, today } = at;
  const { plan } = told;
  if (plan.replan !== undefined) return state;
  if (reports.some(({ row }) => row === undefined)) return eased(state);
  const hurt = reports.flatMap((event) => [...hurtIn(plan, marks, event)]);
  const sore = withHarder(plan, hurt);
  const leaves = adviceIfWorse(at, worst.report) !== 'easier';
  const items = today.work.map(({ item }) => item);
  const hurting = items.filter((item) => exercisesIn(item).some((exercise) => sore.has(exercise)));
  const wayOf = (item: ClientItem): number => firstWay(item, today.sore);
  const ways = hurting.filter((item) => wayOf(item) >= 0).map((item) => [item.row, wayOf(item)] as const);
  const easier = { ...state.easier, ...Object.fromEntries(ways) };
  // Where there is no easier way of it, it is not done.
  const leave = hurting.filter((item) => leaves || wayOf(item) < 0).map(({ row }) => row);
  return { ...state, easier, leave: [...new Set(leave)] };
}
