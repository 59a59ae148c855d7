/** Sentences for what planning meets. The coach reads them; what would settle each is the hint. */
import type { ScreeningQuestion } from '../../model/client.js';
import type { Dose, Effort } from '../../model/dose.js';
import { BODY_PARTS } from '../../model/exercise.js';
import type { PlanProblems, Refusal, RefusalCause, Unlock } from '../../model/problems-plan.js';
import { sayAsked } from '../english-asks.js';
import { sayFullDate } from '../say-date.js';
import { NO_BREAK } from '../spacing.js';
import { speechOf } from '../speech.js';
import { counted, listed, quoted, type Sayings } from './said.js';
import { sayUnlocks } from './unlocks.js';

const CAUSES: Readonly<Record<RefusalCause, (detail: string) => string>> = {
  avoid: (detail) => `it asks for ${asked(detail)}, and a caution says avoid`,
  'take-care': (detail) => `it asks much ${isPart(detail) ? 'of ' : ''}${asked(detail)}, and a caution says take care`,
  thing: (detail) => `not in the kit: ${detail}`,
  load: (detail) => `the kit makes no load for it: ${detail}`,
  'ceiling-unknown': (detail) => `the ceiling is not stated, and it needs ${metres(detail)}`,
  'ceiling-low': (detail) => `the ceiling is too low: it needs ${metres(detail)}`,
  'floor-unknown': (detail) => `the clear floor is not stated, and it needs ${metres(detail)}`,
  'floor-small': (detail) => `the clear floor is too small: it needs ${metres(detail)}`,
  'sign-off-missing': () => 'not signed off',
  'sign-off-lapsed': (detail) => `the sign-off has lapsed: last seen on ${detail}`,
  'sign-off-load': (detail) => (detail === '' ? 'signed off without a load' : `signed off only up to ${detail}`),
  moderate: () => 'it is fast work, and only moderate effort is cleared',
  part: (detail) => `a part of it is not in the library: ${detail}`,
  pain: (detail) => (detail === 'elsewhere' ? 'it hurt' : `it hurt the ${detail}`),
};

const isPart = (what: string): boolean => BODY_PARTS.some((part) => part === what);
/** `the wrist`, `balance`. */
const asked = (what: string): string => (isPart(what) ? `the ${what}` : sayAsked(what));

/** Millimetres as metres, one or two of them. */
const metres = (detail: string): string => `${detail.replace(/\d+/g, (figure) => String(Number(figure) / 1000))} m`;

/**
 * What takes the place of an exercise that hurt is looked for as if that part were to be avoided: no caution says so.
 * One that the coach wrote has its own way out among `unlocks`.
 */
const isFromPain = ({ exercise, cause, detail }: Refusal, refused: readonly Refusal[], unlocks: readonly Unlock[]) =>
  cause === 'avoid' &&
  refused.some((other) => other.cause === 'pain' && other.detail === detail) &&
  !unlocks.some(
    (unlock) =>
      unlock.kind === 'caution' && unlock.exercise === exercise && unlock.what === detail && unlock.degree === 'avoid',
  );

const isHurt = (exercise: string, refused: readonly Refusal[]): boolean =>
  refused.some((other) => other.exercise === exercise && other.cause === 'pain');

const refusals = (refused: readonly Refusal[], unlocks: readonly Unlock[]): string =>
  refused
    .flatMap((refusal) => {
      const { exercise, cause, detail } = refusal;
      if (!isFromPain(refusal, refused, unlocks)) return [`${exercise} (${CAUSES[cause](detail)})`];
      return isHurt(exercise, refused) ? [] : [`${exercise} (it asks for ${asked(detail)}, which hurt)`];
    })
    .join('; ');

/** Why a version was refused: `not signed off`; empty for a cause nobody knows. */
export function sayRefusal(cause: string, detail: string): string {
  const known = (text: string): text is RefusalCause => Object.hasOwn(CAUSES, text);
  return known(cause) ? CAUSES[cause](detail) : '';
}

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

const speech = speechOf('en-GB');
const sayDay = (date: string): string => sayFullDate(date, speech).replaceAll(NO_BREAK, ' ');

/** After `whether there is`. */
const ASKED: Readonly<Record<ScreeningQuestion, string>> = {
  'regular exercise': 'regular exercise',
  'known disease': 'a known disease',
  symptoms: 'any symptom',
};

const CLEAR = 'what a doctor or other licensed person says, under clearance; local rules go first';

const clearedSince = (day: string): string =>
  `what a licensed person has said on ${day} or later, under clearance; local rules go first`;

export const planSayings: Sayings<PlanProblems> = {
  'not-handled': ({ fact, why }) => ({
    message: `${quoted(fact)} is on file and cannot be taken into account: ${why}. Nothing goes out that leaves it unread.`,
    hint: 'plan for this client by hand for now; delete the fact only if it is not true',
  }),
  'alarm-reported': ({ signs, date }) => ({
    message: `A sign of alarm was marked on ${sayDay(date)}: ${listed(signs, 'and')}. No booklet goes out, and nothing is planned.`,
    hint: 'speak to the client now; such a sign is for emergency care or a doctor, as local rules have it. Once a licensed person has said that training may go on, write cleared under observations, with the day',
  }),
  'under-age': ({ youngest, least }) => ({
    message: `This client may be ${youngest}; a booklet is for people of ${least} and over.`,
    hint: 'the right birth year, if this one is wrong',
  }),
  'screening-missing': () => ({
    message: 'The questions before exercise have not been asked.',
    hint: 'screening: with date, regular exercise, known disease and symptoms',
  }),
  'screening-unclear': ({ questions }) => ({
    message: `Whether there is ${listed(questions.map((question) => ASKED[question]))} is not known.`,
    hint: 'ask, and write yes or no',
  }),
  'screening-out-of-date': ({ date, mostDays }) => ({
    message: `The questions were asked on ${date}, which is not within the ${mostDays} days before the block.`,
    hint: 'ask again, and write the new date',
  }),
  'date-in-future': ({ what, date, today }) => ({
    message: `${FACTS_DATED[what]} is dated ${sayDay(date)}, and today is ${sayDay(today)}.`,
    hint: 'the day it was, today at the latest',
  }),
  'block-ended': ({ ends }) => ({
    message: `This block ended on ${sayDay(ends)}.`,
    hint: 'starts: the first day of the next block, and blocks before: one more',
  }),
  symptoms: () => ({
    message: 'There are symptoms. No booklet goes out: this client sees a doctor first.',
    hint: 'send them to their doctor, and ask the questions again once the doctor has seen them',
  }),
  'clearance-needed': ({ regularExercise }) => ({
    message: `There is known disease${regularExercise === 'yes' ? '' : ' and no regular exercise so far'}: ask first.`,
    hint: CLEAR,
  }),
  'clearance-lapses': ({ until, blockEnds }) => ({
    message: `The clearance holds until ${until}, and the block runs to ${blockEnds}. No session is planned after it ends.`,
    hint: 'a clearance that covers the block',
  }),
  'moderate-only': ({ because }) => ({
    message: `This is a moderate plan (${listed(because, 'and')}): more left in reserve, whole sentences, nothing fast, nothing tried.`,
    hint: because.every((cause) => cause === 'clearance' || cause === 'known disease')
      ? 'under clearance, what a licensed person says about harder work; nothing where moderate is right'
      : 'nothing where moderate is right: no clearance makes it a harder one',
  }),
  'pressure-too-high': ({ systolic, diastolic, over, under, date }) => ({
    message: `The blood pressure at rest was ${systolic}/${diastolic} on ${sayDay(date)}, above ${over}/${under}. No booklet goes out.`,
    hint: 'send them to their doctor; write the newer reading once there is one',
  }),
  'pressure-ask-first': ({ systolic, diastolic, over, under, date }) => ({
    message: `The blood pressure at rest was ${systolic}/${diastolic} on ${sayDay(date)}, above ${over}/${under}: ask first.`,
    hint: `${clearedSince('that day')}; or a newer reading`,
  }),
  'pregnancy-refused': ({ conditions }) => ({
    message: `In this pregnancy there is ${listed(conditions, 'and')}. No booklet goes out.`,
    hint: 'what the midwife or doctor says decides; plan again when they have allowed exercise and it is no longer so',
  }),
  'pregnancy-ask-first': ({ conditions, began }) => ({
    message: `In this pregnancy there is ${listed(conditions, 'and')}: ask the midwife or doctor first.`,
    hint: clearedSince(sayDay(began)),
  }),
  'due-date-passed': ({ due, begins }) => ({
    message: `The child is due on ${sayDay(due)}, and the block begins on ${sayDay(begins)}.`,
    hint: 'birth: in place of pregnancy, once there is one; or the day the midwife now gives',
  }),
  'due-date-unlikely': ({ due, today, mostDays }) => ({
    message: `The child is due on ${sayDay(due)}, more than ${mostDays} days after today, ${sayDay(today)}.`,
    hint: 'the day due, as the midwife or doctor gives it',
  }),
  'birth-not-checked': ({ date }) => ({
    message: `Nobody licensed has looked since the birth on ${sayDay(date)}: ask first.`,
    hint: 'under birth, checked: the day a midwife, doctor or physiotherapist allowed exercise',
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
    message: `No version of ${exercise} may be planned for the row ${quoted(row)}. ${refusals(refused, unlocks)}.`,
    hint: `whichever of these can be settled: ${opening(unlocks)}an easier version in the library`,
  }),
  'pattern-not-filled': ({ row, pattern, refused, unlocks = [] }) => ({
    message: `Nothing in the library fills ${quoted(pattern)} in the row ${quoted(row)} for this client.${refused.length === 0 ? '' : ` ${refusals(refused, unlocks)}.`}`,
    hint: `${opening(unlocks)}an exercise of this pattern that this client may do with this kit`,
  }),
  'no-easier-version': ({ row, exercise, refused, unlocks = [] }) => ({
    message: `${exercise}, in the row ${quoted(row)}, has no easier version this client may do.${refused.length === 0 ? '' : ` ${refusals(refused, unlocks)}.`}`,
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
  'rule-not-found': ({ rule }) => ({
    message: `There is no rule ${quoted(rule)}.`,
    hint: 'the id of a rule, as `chalkleaf why` prints it',
  }),
  'rule-out-of-range': ({ rule, value, least, most }) => ({
    message: `Your value for ${quoted(rule)}, ${value}, is out of bounds.`,
    hint: `from ${least} to ${most}`,
  }),
};
