/** The pages around the sessions: cover, how to use it, safety, calendar, and the record at the end. */
import type { CalendarPart, CoverPart, HowToPart, RecordPart, SafetyPart, WeekHead } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import { compareIds } from '../model/identity.js';
import type { Plan, PlanSession, PlanSet } from '../model/plan.js';
import { plainLine } from '../model/prose.js';
import type { Shows } from '../words/booklet-words.js';
import { sayDate, sayDates, sayFullDate } from '../words/say-date.js';
import { saySet } from '../words/say-dose.js';
import { isLoaded, sayLoad } from '../words/say-load.js';
import { composeChanges } from './compose-changes.js';
import { stripId, stripTitle } from './compose-session.js';
import { alwaysFound, foundInWeeks, signsFor } from './findings.js';
import { mindedAtAll, mindsLifting } from './minded.js';
import { type Strip, type Subject, stripsOf } from './subject.js';

export function composeCover(subject: Subject, changes?: readonly Change[]): CoverPart {
  const { library, client, plan, speech, who } = subject;
  const { booklet } = speech.words;
  const programme = library.programmes.find(({ id }) => id === plan.programme);
  const notice = composeChanges(subject, changes);
  return {
    kind: 'cover',
    ...(notice === undefined ? {} : { notice }),
    client: client.name,
    title: booklet.title,
    programme: programme?.name ?? plan.programme,
    dates: sayDates(firstDateOf(plan), lastDateOf(subject), speech),
    edition: booklet.edition(plan.edition),
    studio: booklet.studioAt(library.studio.name, library.studio.place),
    coach: library.studio.coach,
    weeks: plan.weeks.map(
      (week): WeekHead => ({
        week: week.number,
        date: week.begins,
        dateText: sayDate(week.begins, speech),
        easy: week.deload,
        minutes: Math.max(0, ...week.sessions.map(({ minutes }) => minutes)),
      }),
    ),
    notMedical: booklet.notMedical(who),
  };
}

function lastDateOf({ plan }: Subject): string {
  const dates = plan.weeks.flatMap(({ begins, sessions }) => [begins, ...sessions.map(({ date }) => date)]);
  // Calendar dates of ISO 8601 stand in order as text.
  return dates.sort(compareIds).at(-1) ?? plan.starts;
}

/** Weeks begin on the first training day, which may be after the day the client starts. */
export const firstDateOf = (plan: Plan): string => plan.weeks[0]?.begins ?? plan.starts;

export function composeHowTo(subject: Subject): HowToPart {
  const { booklet } = subject.speech.words;
  return {
    kind: 'how-to',
    title: booklet.howToTitle,
    paragraphs: booklet.howTo(showsOf(subject)).map(plainLine),
    key: booklet.key,
  };
}

function showsOf(subject: Subject): Shows {
  const { plan, speech } = subject;
  const sessions = plan.weeks.flatMap((week) => week.sessions);
  const groups = sessions.flatMap((session) => session.groups);
  const items = groups.flatMap((group) => group.items);
  const sets = items.flatMap((item) => item.sets);
  const held = [...sets, ...items.flatMap(({ easier }) => easier.flatMap((way) => way.sets))];
  const loaded = sets.find(
    (set) => set.kind === 'work' && isPlain(set) && isLoaded(sayLoad(set.load, plan.inputs.kit, speech)),
  );
  return {
    example: loaded === undefined ? '' : saySet(sayLoad(loaded.load, plan.inputs.kit, speech), loaded, speech),
    exampleReps: `${loaded?.reps ?? ''}`,
    gates: sets.some(({ gate }) => gate !== undefined),
    feelers: sets.some(({ kind }) => kind === 'feeler'),
    trials: sets.some(({ kind }) => kind === 'trial'),
    sides: sets.some(({ side }) => side !== undefined),
    plates: sets.some(({ load }) => sayLoad(load, plan.inputs.kit, speech).pieces !== ''),
    bands: sets.some(({ load }) => load?.band !== undefined),
    bells: !held.some(isHeavy) ? '' : mindsLifting(subject) ? 'raised' : 'floor',
    tests: sets.some(({ kind }) => kind === 'test'),
    talk: items.some(({ talk }) => talk !== undefined),
    signals: groups.some(({ everySeconds }) => everySeconds !== undefined),
    short: sessions.some((session) => session.short.sets.length > 0),
  };
}

/** Something is in the hands, and it is not a band; or an answer to a feeler set puts it there. */
const isHeavy = ({ load, choose = [] }: PlanSet): boolean =>
  [load, ...choose.map((choice) => choice.load)].some((one) => (one?.grams ?? 0) > 0);

/** A set of so many reps and nothing else. */
const isPlain = ({ reps, seconds, steps, then: next }: PlanSet): boolean =>
  reps !== undefined && seconds === undefined && steps === undefined && next === undefined;

export function composeSafety(subject: Subject): SafetyPart {
  const { who } = subject;
  const { booklet } = subject.speech.words;
  const own = [
    ...signsFor(subject),
    ...stopsOf(subject),
    ...alwaysFound(subject),
    ...mindedAtAll(subject).map(booklet.forYou),
  ];
  return {
    kind: 'safety',
    title: booklet.safetyTitle,
    emergencyTitle: booklet.emergencyTitle,
    emergency: booklet.emergency.map(plainLine),
    call: booklet.call(who.emergencyNumber),
    painTitle: booklet.painTitle,
    pain: booklet.pain(who),
    paragraphs: [...own, ...booklet.safety(who, showsOf(subject))].map(plainLine),
  };
}

/** After the last day sessions are planned for somebody has to be asked. */
const stopsOf = ({ plan, speech }: Subject): readonly string[] =>
  plan.stops === undefined ? [] : [speech.words.booklet.askAfter(sayFullDate(plan.stops.after, speech))];

export function composeCalendar(subject: Subject): CalendarPart {
  const { plan, speech } = subject;
  const { booklet } = speech.words;
  const strips = stripsOf(plan);
  return {
    kind: 'calendar',
    title: booklet.calendarTitle(plan.weeks.length),
    weeks: plan.weeks.map((week) => ({
      week: week.number,
      label: booklet.weekLabel(week.number),
      easy: week.deload,
      empty: week.sessions.length > 0 ? '' : booklet.noSessions,
      sessions: week.sessions.flatMap((session) => {
        const strip = strips.find((one) => one.columns.some((column) => column.session === session));
        return strip === undefined ? [] : [calendarEntry(subject, strip, session)];
      }),
    })),
    notes: [
      ...stopsOf(subject),
      ...foundInWeeks(subject).map(({ weeks, text }) => booklet.inWeeks(speech.words.sets.weekList(weeks), text)),
    ].map(plainLine),
  };
}

function calendarEntry(
  subject: Subject,
  strip: Strip,
  session: PlanSession,
): CalendarPart['weeks'][number]['sessions'][number] {
  return {
    session: stripId(strip),
    name: stripTitle(subject, strip),
    date: session.date,
    dateText: sayDate(session.date, subject.speech),
    occurrence: session.occurrence,
    ...(isTested(session) ? { test: subject.speech.words.labels.test } : {}),
  };
}

const isTested = ({ groups }: PlanSession): boolean =>
  groups.some(({ items }) => items.some(({ sets }) => sets.some(({ kind }) => kind === 'test')));

/** A line for each session, and a few over. */
const LINES_OVER = 4;

export function composeRecord({ plan, speech, who }: Subject): RecordPart {
  const { booklet } = speech.words;
  const sessions = plan.weeks.reduce((sum, week) => sum + week.sessions.length, 0);
  return {
    kind: 'record',
    title: booklet.recordTitle,
    lines: sessions + LINES_OVER,
    paragraphs: booklet.record(who).map(plainLine),
  };
}
