/**
 * The weekly review as a coach reads it in a terminal: what to do first, then what was done, what can be lifted, what
 * hurt, and load. Lines of at most 80 columns. It judges nobody, and leaves what hurts and lasts to licensed practice.
 */

import type { PainPlace, Proposal, Review, SessionReviewed, WeekDone, WeekLoad } from '../model/review.js';
import { coachSpeechOf } from './coach-speech.js';
import { counted, listed } from './problems/said.js';
import { sayDate, sayDates } from './say-date.js';
import type { Names } from './say-figures.js';
import { sayReason } from './say-reason.js';
import { sayAbilities, sayEffort, sayRows, saySides } from './say-review-lifts.js';
import { plainSpaces } from './spacing.js';
import type { Speech } from './speech.js';
import { steadyLetters } from './steady-letters.js';
import { fitTo, wrapLine } from './wrap-lines.js';

/** How things are called that a review knows by their ids. */
export interface ReviewNames extends Names {
  readonly client: string;
  readonly programme: string;
}

/** One or more whole sentences. Spaces are plain ones: it is read in a terminal. */
export const sayProposal = ({ reason }: Proposal, names: Names, language: string): string =>
  plainSpaces(sayReason(reason, 'coach', coachSpeechOf(language), names));

const NAME = 20;
const NEED_WORDS: Readonly<Record<Review['need'], string>> = {
  alarm: 'ALARM SIGN',
  pain: 'pain',
  withdrawn: 'withdrawn',
  gap: 'no marks',
  'block ends': 'block ends',
  'worth a look': 'worth a look',
  'not begun': 'not begun',
  'as planned': 'nothing to do',
};

/** One line of the list of all clients. */
export function sayReviewLine(review: Review, { client }: ReviewNames, language: string): string {
  const about = plainSpaces(aboutNeed(review, coachSpeechOf(language)));
  return steadyLetters(
    `  ${fitTo(client, NAME)}  ${fitTo(NEED_WORDS[review.need], 13)}  ${fitTo(about, 41)}`.trimEnd(),
  );
}

function aboutNeed(review: Review, speech: Speech): string {
  const { need, alarms, block, silentDays, proposals } = review;
  switch (need) {
    case 'alarm': {
      const last = alarms.findLast(({ cleared }) => !cleared);
      return last === undefined ? '' : `${last.sign}, ${sayDate(last.date, speech)}`;
    }
    case 'pain': {
      const worst = openPain(review);
      return worst === null ? sessionsShort(review) : worst;
    }
    case 'withdrawn':
      return review.withdrawn === null ? '' : `on ${sayDate(review.withdrawn, speech)}, ${sessionsShort(review)}`;
    case 'gap':
      return silentDays === null ? '' : `${counted(silentDays, 'day')}, ${sessionsShort(review)}`;
    case 'block ends':
      return block === null ? '' : `on ${sayDate(block.ends, speech)}, ${sessionsShort(review)}`;
    case 'worth a look': {
      const quiet = review.rows.filter((row) => row.quiet >= 3).length;
      const things = [
        ...(proposals.length === 0 ? [] : [counted(proposals.length, 'proposal')]),
        ...(quiet === 0 ? [] : [`${counted(quiet, 'row')} left out`]),
      ];
      return `${listed(things, 'and')}, ${sessionsShort(review)}`;
    }
    case 'not begun':
      return block === null ? 'no edition issued' : `begins on ${sayDate(block.begins, speech)}`;
    case 'as planned':
      return sessionsShort(review);
  }

  function openPain({ pain }: Review): string | null {
    const open = pain.flatMap(({ where, side, reports }) => {
      const last = reports.findLast(({ cleared }) => !cleared);
      return last === undefined ? [] : [{ where, side, last }];
    });
    const latest = [...open].sort((a, b) => (a.last.date < b.last.date ? 1 : -1))[0];
    if (latest === undefined) return null;
    return `${placeOf(latest)}, ${latest.last.degree} of 10, ${sayDate(latest.last.date, speech)}`;
  }
}

function sessionsShort({ weeks }: Review): string {
  const begun = weeks.filter(({ over, done }) => over || done > 0);
  const planned = begun.reduce((sum, week) => sum + week.trainingDays, 0);
  const done = begun.reduce((sum, week) => sum + week.done, 0);
  return planned === 0 ? 'no week is over yet' : `${done} of ${counted(planned, 'session')}`;
}

/** Everything of one client, sections without anything to say left out. */
export function sayReview(review: Review, names: ReviewNames, language: string): readonly string[] {
  const speech = coachSpeechOf(language);
  const head = `${names.client}${headOf(review, names, speech)}`;
  const sections: readonly (readonly string[])[] = [
    sayProposals(review, names, language),
    saySessions(review, speech),
    sayRows(review, names),
    sayEffort(review, names),
    sayAbilities(review, names, speech),
    saySides(review, names),
    sayPain(review, names, speech),
    sayLoads(review, speech),
    review.notes.length === 0
      ? []
      : [
          'In their words',
          ...review.notes.flatMap(({ date, text }) => wrapLine(`  ${sayDate(date, speech)}  `, inOneLine(text))),
        ],
  ];
  const lines = sections.filter((section) => section.length > 0).flatMap((section) => ['', ...section]);
  return [...wrapLine('', head, 2), ...lines].map((line) => steadyLetters(plainSpaces(line)));
}

const inOneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

function headOf({ block, withdrawn }: Review, { programme }: ReviewNames, speech: Speech): string {
  if (block === null) return ': no edition has been issued';
  const { week, weeks, begins, ends } = block;
  const gone = withdrawn === null ? '' : `; withdrawn on ${sayDate(withdrawn, speech)}`;
  const when = week === 0 ? 'not begun' : week > weeks ? 'over' : `week ${week} of ${weeks}`;
  return `: block ${block.block}, ${programme}, ${when} (${sayDates(begins, ends, speech)}), edition ${block.edition}${gone}`;
}

function sayProposals({ proposals }: Review, names: ReviewNames, language: string): readonly string[] {
  const speech = coachSpeechOf(language);
  if (proposals.length === 0) return ['Nothing is proposed.'];
  return [
    'To do, first things first',
    ...proposals.flatMap((proposal, index) => {
      const written = proposal.edits.length > 0 ? ', can be written' : '';
      const said = `${sayReason(proposal.reason, 'coach', speech, names)} [${proposal.reason.rule}${written}]`;
      return wrapLine(`${String(index + 1).padStart(3)}. `, said);
    }),
  ];
}

/** Weeks that have begun, with their sessions; what is still to come is in the booklet. */
function saySessions({ weeks, sessions, today }: Review, speech: Speech): readonly string[] {
  const begun = weeks.filter(({ begins }) => begins <= today);
  if (begun.length === 0) return [];
  return [
    'Sessions, by the day they were done on',
    ...begun.flatMap((week, index) => sayWeek(week, index === begun.length - 1)),
  ];

  function sayWeek(week: WeekDone, last: boolean): readonly string[] {
    const from = `${sayDate(week.begins, speech)} to ${sayDate(week.ends, speech)}`;
    const head = `  Week ${week.week}, ${from}: ${amountOf(week)}${week.over ? '' : ' so far'}`;
    if (week.done === 0) return [head];
    const own = sessions.filter((one) => isOf(one, week, last));
    const missed = own.filter(({ done }) => done === null);
    const names = missed.map(({ name, planned }) => `${name} (${sayDate(planned, speech)})`);
    return [
      head,
      ...own.flatMap((one) => (one.done === null ? [] : saySession(one, one.done, speech))),
      ...(missed.length === 0 ? [] : wrapLine('    ', `Not done: ${listed(names, 'and')}`, 2)),
    ];
  }

  /** Done in it, or due in it and not done at all. */
  function isOf({ done, planned }: SessionReviewed, { begins, ends }: WeekDone, last: boolean): boolean {
    const day = done ?? (planned < today ? planned : null);
    return day !== null && (day >= begins || begins === weeks[0]?.begins) && (day <= ends || last);
  }
}

function saySession(one: SessionReviewed, done: string, speech: Speech): readonly string[] {
  const { planned, effort, minutes, minutesPlanned } = one;
  const moved = done === planned ? '' : ` (planned ${sayDate(planned, speech)})`;
  const said = [
    minutes === null ? 'minutes not said' : `${minutes} min of ${minutesPlanned}`,
    effort === null ? 'effort not said' : `effort ${effort}`,
    ...(one.today === null || one.today === 'as usual' ? [] : [`“${one.today}”`]),
  ];
  return wrapLine('    ', `${sayDate(done, speech)}: ${one.name}${moved}, ${said.join(', ')}`, 2);
}

/** `2 of 3`; where a break took some of them, how many. */
function amountOf({ done, planned, trainingDays }: WeekDone): string {
  if (done + trainingDays === 0) return 'nothing planned';
  const away = trainingDays - planned;
  return `${done} of ${trainingDays}${away === 0 ? '' : ` (${away} in a break)`}`;
}

const placeOf = ({ where, side }: Pick<PainPlace, 'where' | 'side'>): string =>
  where === 'elsewhere' ? 'elsewhere' : side === 'both' ? where : `${side} ${where}`;

const TRENDS: Readonly<Record<PainPlace['trend'], string>> = {
  once: 'on one day',
  less: 'less than the time before',
  'the same': 'as the time before',
  more: 'more than the time before',
};

/** Reports told one by one; before those how many more there are. */
const MOST_REPORTS = 6;

function sayPain({ alarms, pain }: Review, names: Names, speech: Speech): readonly string[] {
  if (alarms.length + pain.length === 0) return [];
  return [
    'Pain, as it was said (0 to 10)',
    ...alarms.flatMap(({ date, sign, cleared }) =>
      wrapLine('  ', `ALARM SIGN, ${sayDate(date, speech)}: ${sign}${cleared ? '; cleared since' : ''}`, 2),
    ),
    ...pain.flatMap((place) => {
      const shown = place.reports.slice(-MOST_REPORTS);
      const earlier = place.reports.length - shown.length;
      const reports = shown.map(({ date, degree, worseNextMorning, exercise, seen, cleared }) => {
        const more = [
          ...(exercise === null ? [] : [names.exercise(exercise)]),
          ...(worseNextMorning ? ['worse next morning'] : []),
          ...(seen ? ['seen by you'] : []),
          ...(cleared ? ['cleared'] : []),
        ];
        return `${degree} on ${sayDate(date, speech)}${more.length === 0 ? '' : ` (${more.join(', ')})`}`;
      });
      const before = earlier === 0 ? '' : `${earlier} before, then `;
      const quiet = place.quietDays === 0 ? 'today' : `${counted(place.quietDays, 'day')} ago`;
      const said = `${placeOf(place)}: ${before}${reports.join('; ')}. ${begun(TRENDS[place.trend])}; last ${quiet}.`;
      return wrapLine('  ', begun(said), 2);
    }),
    ...wrapLine('  ', 'What hurts and lasts is for a doctor or physiotherapist.'),
  ];
}

const begun = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function sayLoads({ loads }: Review, speech: Speech): readonly string[] {
  // Where nobody says effort or minutes there is nothing to be told week by week.
  const said = loads.filter((load) => load.kind === 'known' || (load.kind === 'running' && load.total > 0));
  if (said.length === 0) return [];
  return [
    'Load, effort of 10 times minutes (Foster 1998)',
    ...loads.flatMap((load) => wrapLine('  ', `Week ${load.week}: ${sayLoad(load, speech)}`, 2)),
    ...wrapLine(
      '  ',
      'Monotony is the mean of the seven days over their SD (of the population; with that of a sample it is 0.93 of this), strain is load times monotony. Above 2.0 is commonly called monotonous. Nothing is decided by it.',
    ),
  ];
}

function sayLoad(load: WeekLoad, speech: Speech): string {
  switch (load.kind) {
    case 'known':
      return `${whole(load.total)}, monotony ${load.monotony.toFixed(2)}, strain ${whole(load.strain)}`;
    case 'alike':
      return load.total === 0 ? 'no session' : `${whole(load.total)}; seven days alike, so monotony is not defined`;
    case 'not known':
      return `not known: effort or minutes were not said on ${datesOf(load.days, speech)}`;
    case 'running': {
      const unsaid = load.days.length === 0 ? '' : `; not said on ${datesOf(load.days, speech)}`;
      return `${whole(load.total)} so far${unsaid}`;
    }
  }
}

const whole = (figure: number): string => String(Math.floor(figure + 0.5));
const datesOf = (days: readonly string[], speech: Speech): string =>
  listed(
    days.map((day) => sayDate(day, speech)),
    'and',
  );
