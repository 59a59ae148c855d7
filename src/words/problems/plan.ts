/** Sentences for what planning meets. The coach reads them; what would settle each is the hint. */
import type { Dose, Effort } from '../../model/dose.js';
import type { PlanProblems, Unlock } from '../../model/problems-plan.js';
import { healthSayings } from './health.js';
import { sayRefusals } from './refusals.js';
import { counted, listed, quoted, type Sayings } from './said.js';
import { sayDay } from './say-day.js';
import { sayUnlocks } from './unlocks.js';

const FACTS_DATED = {
  test: 'This test',
  'sign-off': 'This sign-off',
  screening: 'The screening',
  clearance: 'The clearance',
  observation: 'This observation',
  'body mass': 'The body mass',
  'blood pressure': 'The blood pressure',
  birth: 'The birth',
  'check after the birth': 'The check after the birth',
} as const;

/** A dose by what it is called and how it is written. */
const DOSES: Readonly<Record<Dose['kind'], { readonly called: string; readonly written: string }>> = {
  sets: { called: 'sets of so many reps', written: '3 × 8–12' },
  timed: { called: 'sets of so many seconds', written: '3 × 20–40 s' },
  distance: { called: 'sets of so many metres', written: '3 × 20 m' },
  every: { called: 'reps at every signal', written: '10 min: 8 every minute' },
  'main-next': { called: 'reps with the main bell and then the next one up', written: '15 main + 5 next up' },
  steps: { called: 'rising or falling reps', written: '1-2-3 × 4' },
  rounds: { called: 'rounds', written: '3 rounds' },
};

const EFFORTS: Readonly<Record<Exclude<Effort['kind'], 'talk'>, string>> = {
  reserve: 'so many reps in reserve',
  rpe: 'an effort by RPE',
  percent: 'a part of a maximum',
};

const DAY_NAMES = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
/** `mon, thu`, as a coach writes them. */
const writtenDays = (days: string): string =>
  days
    .split(' ')
    .map((figure) => DAY_NAMES[Number(figure) - 1] ?? figure)
    .join(', ');

type Begun = PlanProblems['block-begun']['what'];
/** What was changed in the middle of a block. */
const BEGUN: Readonly<Record<Begun, (was: string, now: string) => string>> = {
  programme: (was, now) => `its programme was ${quoted(was)}, now ${quoted(now)}`,
  starts: (was, now) => `it began on ${was}, now ${now}`,
  days: (was, now) => `its days were ${writtenDays(was)}, now ${writtenDays(now)}`,
  weeks: (was, now) => `its programme had ${counted(Number(was), 'week')}, now ${now}`,
  sessions: (was, now) => `its sessions followed each other as ${was}, now ${now === '' ? 'nothing is said' : now}`,
};
const BEGUN_AS: Readonly<Record<Exclude<Begun, 'weeks' | 'sessions'>, (was: string) => string>> = {
  programme: (was) => `programme: ${was}`,
  starts: (was) => `starts: ${was}`,
  days: (was) => `days: ${writtenDays(was)}`,
};

/** What would open a version, before the other ways out. */
const opening = (unlocks: readonly Unlock[]): string => (unlocks.length === 0 ? '' : `${sayUnlocks(unlocks)}; or `);

export const planSayings: Sayings<PlanProblems> = {
  ...healthSayings,
  'not-handled': ({ fact, why }) => ({
    message: `${quoted(fact)} is on file and cannot be taken into account: ${why}. Nothing goes out that leaves it unread.`,
    hint: 'plan for this client by hand for now; delete the fact only if it is not true',
  }),
  'date-in-future': ({ what, date, today }) => ({
    message: `${FACTS_DATED[what]} is dated ${sayDay(date)}, and today is ${sayDay(today)}.`,
    hint: 'the day it was, today at the latest',
  }),
  'block-ended': ({ ends }) => ({
    message: `This block ended on ${sayDay(ends)}.`,
    hint: 'starts: the first day of the next block, and blocks before: one more',
  }),
  'block-begun': ({ what, was, now, block, done }) => ({
    message: `${counted(done, 'session')} of block ${block} ${done === 1 ? 'is' : 'are'} done, and ${BEGUN[what](was, now)}.`,
    hint:
      what === 'weeks' || what === 'sessions'
        ? `as it was, until the block is over; for a new block now, in the client’s file, blocks before: ${block}, and starts: its first day`
        : `${BEGUN_AS[what](was)}, to go on with the block; for a new block, blocks before: ${block}, and starts: its first day`,
  }),
  'programme-not-found': ({ programme }) => ({
    message: `There is no programme ${quoted(programme)}.`,
    hint: 'the file name of a programme, without .md',
  }),
  'exercise-not-found': ({ exercise, row }) => ({
    message: `The row ${quoted(row)} names ${quoted(exercise)}, which is not in the library.`,
    hint: 'a link to an exercise that is there',
  }),
  'no-weeks': ({ programme }) => ({
    message: `The programme ${quoted(programme)} has no weeks.`,
    hint: 'curve: with reserve: and a figure for each week, two to six',
  }),
  'no-training-days': () => ({
    message: 'This client has no training days.',
    hint: 'days: mon, thu',
  }),
  'rotation-not-stated': ({ days, sessions }) => ({
    message: `The client trains ${counted(days, 'day')} a week, the programme has ${counted(sessions, 'session')}, and it does not say how they rotate.`,
    hint: `in the programme, rotation: with ${days}: and the order of the sessions`,
  }),
  'rotation-unknown-session': ({ days, session }) => ({
    message: `The rotation for ${counted(days, 'day')} names the session ${quoted(session)}, which the programme does not have.`,
    hint: 'sessions by their letters: A, B',
  }),
  'effort-not-readable': ({ row, rpe }) => ({
    message: `The row ${quoted(row)} asks RPE ${rpe}, which says too little about reps in reserve.`,
    hint: 'RPE 7 to 10, or reserve 3',
  }),
  'dose-for-way': ({ row, exercise, way, dose, takes }) => ({
    message: `The row ${quoted(row)} asks ${DOSES[dose].called}, and ${exercise} (${way}) is not done so.`,
    hint: `for ${way}: ${listed(
      takes.map((kind) => DOSES[kind].written),
      'or',
    )}`,
  }),
  'signal-too-short': ({ row, exercise, reps, everySeconds, fits }) => ({
    message: `The row ${quoted(row)} asks ${reps} of ${exercise} every ${everySeconds} s, which leaves less rest than work before the next signal.`,
    hint: fits === 0 ? 'signals further apart' : `${fits} reps at most, or signals further apart`,
  }),
  'percent-not-kept': ({ row, exercise, percent, why }) =>
    why === 'not counted'
      ? {
          message: `The row ${quoted(row)} asks ${percent} % of a maximum, and what ${exercise} resists is not known without body mass.`,
          hint: 'body mass in the client’s file, or reserve 3 in place of the part',
        }
      : {
          message: `The row ${quoted(row)} asks ${percent} % of a maximum, and the lightest load for ${exercise} is above that.`,
          hint: 'a lighter item of kit, an easier version, or reserve 3 in place of the part',
        },
  'effort-for-way': ({ row, exercise, way, effort }) =>
    effort === 'talk'
      ? {
          message: `The row ${quoted(row)} goes by the talk test, and ${exercise} (${way}) goes by reps in reserve.`,
          hint: 'reserve 3, RPE 7, or an empty cell for the effort of the curve',
        }
      : {
          message: `The row ${quoted(row)} asks ${EFFORTS[effort]}, and ${exercise} (${way}) does not go by reps in reserve.`,
          hint: 'in sentences, in phrases, or an empty cell',
        },
  'kit-too-varied': ({ most }) => ({
    message: `This kit makes more than ${most} different loads.`,
    hint: 'the plates that are truly used',
  }),
  'no-version-allowed': ({ row, exercise, refused, unlocks = [] }) => ({
    message: `No version of ${exercise} may be planned for the row ${quoted(row)}. ${sayRefusals(refused, unlocks)}.`,
    hint: `whichever of these can be settled: ${opening(unlocks)}an easier version in the library`,
  }),
  'pattern-not-filled': ({ row, pattern, refused, unlocks = [] }) => ({
    message: `Nothing in the library fills ${quoted(pattern)} in the row ${quoted(row)} for this client.${refused.length === 0 ? '' : ` ${sayRefusals(refused, unlocks)}.`}`,
    hint: `${opening(unlocks)}an exercise of this pattern that this client may do with this kit`,
  }),
  'no-easier-version': ({ row, exercise, refused, unlocks = [] }) => ({
    message: `${exercise}, in the row ${quoted(row)}, has no easier version this client may do.${refused.length === 0 ? '' : ` ${sayRefusals(refused, unlocks)}.`}`,
    hint: `${opening(unlocks)}under Easier in the exercise a link, or a way of doing it more easily in words`,
  }),
  'nothing-leaves-the-floor': ({ row, week, floor }) => ({
    message: `In week ${week} nothing that can be planned for the row ${quoted(row)} leaves ${floor / 10} good reps.`,
    hint: 'a lighter item of kit, an easier version, or a wider range of reps',
  }),
  'session-too-long': ({ session, week, minutes, cap, neverCut }) => ({
    message: `Session ${session} in week ${week} still takes ${minutes} minutes after every cut you allow; ${cap} are free.`,
    hint: `more minutes, fewer sets, or fewer rows that are never cut${neverCut.length === 0 ? '' : ` (now: ${listed(neverCut, 'and')})`}`,
  }),
  'film-not-planned': ({ exercise }) => ({
    message: `A film of ${quoted(exercise)} is asked for, and this block does not have it.`,
    hint: 'an exercise of this block, or no film',
  }),
  'rule-not-found': ({ rule }) => ({
    message: `There is no rule ${quoted(rule)}.`,
    hint: 'the id of a rule, as `chalkleaf why` prints it',
  }),
  'rule-out-of-range': ({ rule, value, least, most }) => ({
    message: `Your value for ${quoted(rule)}, ${value}, is out of bounds.`,
    hint: `from ${least} to ${most}`,
  }),
};
