/** A client with one block issued, and the review of it, for one rule at a time: say only what differs. */
import { exercisesById } from '../../src/engine/block-context.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { planReview } from '../../src/engine/review/plan-review.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Client } from '../../src/model/client.js';
import { isoOfDay } from '../../src/model/day.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { DoneSession, History } from '../../src/model/history.js';
import type { PainReport } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { invariant } from '../../src/model/result.js';
import type { Proposal, Review } from '../../src/model/review.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { aClient, aLibrary, anExercise, ask, aTest, bells, kg, on, oneSession } from './make-block.js';
import { doneFrom, type Place } from './make-history.js';

/** The squat asks the knee; the press is one-sided and needs a sign-off nowhere. */
export const EXERCISES: readonly Exercise[] = [
  anExercise('squat', { pattern: 'squat', asks: [ask('knee')] }),
  anExercise('press', { pattern: 'push', sides: 'each' }),
  anExercise('swing', { pattern: 'hinge', signOff: true, asks: [ask('lower back')] }),
];
const programme = oneSession('squat', 'press');

/** Trains on Mondays, Wednesdays and Fridays from 4 January 2027, its block the second. */
export const theClient = (client: Partial<Client> = {}): Client =>
  aClient({
    days: [1, 3, 5],
    kit: bells('8', '12', '16', '20', '24'),
    blocksBefore: 1,
    tests: [
      aTest('squat', 10, { load: kg('16'), date: on('2026-12-21') }),
      aTest('press', 8, { load: kg('12'), date: on('2026-12-21') }),
    ],
    ...client,
  });

const rotation = { rotations: [{ days: 3, order: programme.sessions.map(({ id }) => id) }] };
export const theProgramme: Programme = { ...programme, ...rotation };

function thePlan(client: Partial<Client> = {}): Plan {
  const library = aLibrary(EXERCISES, theProgramme);
  const { value, problems } = planBlock({ library, client: theClient(client), today: on('2026-12-28'), edition: 1 });
  invariant(value !== null, JSON.stringify(problems));
  return value;
}

/** 18 sessions, each done on its day as planned and as hard; `change` makes something else of one, `null` leaves it out. */
export function allDone(change: (session: DoneSession) => DoneSession | null = (one) => one): History {
  const last = ({ item }: Place) => item.sets.findLast(({ kind }) => kind === 'work')?.reserve ?? 20;
  const history = doneFrom(thePlan(), (place) => ({ reserve: [{ side: 'both', reserve: last(place) }] }));
  const sessions = history.sessions.flatMap((session) => change(session) ?? []);
  return { ...history, sessions, lastMark: sessions.at(-1)?.day ?? null };
}

/** The first so many of them. */
export const doneUpTo = (occurrence: number, change: (session: DoneSession) => DoneSession | null = (one) => one) =>
  allDone((session) => (session.occurrence > occurrence ? null : change(session)));

export interface ReviewMade {
  readonly history?: History;
  readonly client?: Partial<Client>;
  readonly today: string;
  readonly overrides?: readonly RuleOverride[];
  readonly programmes?: readonly Programme[];
}

export function reviewOf({ history = allDone(), client, today, overrides = [], programmes = [] }: ReviewMade): Review {
  return planReview({
    client: theClient(client),
    history,
    rules: layOverrides(overrides).value,
    today: on(today),
    exercises: exercisesById(EXERCISES),
    programmes: [theProgramme, ...programmes],
    words: { by: 'from marks', testAgain: (names) => `Again: ${names.join(', ')}` },
  });
}

export const proposalsOf = ({ proposals }: Review, rule: string): readonly Proposal[] =>
  proposals.filter(({ reason }) => reason.rule === rule);

/** `why gap; days 7 days` of each proposal of a rule. */
export const figuresOf = (review: Review, rule: string): readonly string[] =>
  proposalsOf(review, rule).map(({ reason }) =>
    reason.inputs.map(({ name, value, unit }) => `${name} ${value}${unit === '' ? '' : ` ${unit}`}`).join('; '),
  );

/** Each edit as a coach would say it. */
export const editsOf = (review: Review, rule: string): readonly string[] =>
  proposalsOf(review, rule).flatMap(({ edits }) =>
    edits.map((edit) => {
      switch (edit.kind) {
        case 'set':
          return `${edit.path.join(' ')}: ${edit.value}`;
        case 'set-in-entry':
          return `${edit.path.join(' ')} ${edit.key}: ${edit.value}`;
        case 'add-to-list':
          return `${edit.path.join(' ')} + ${Object.entries(edit.entry)
            .map(([key, value]) => `${key} ${value}`)
            .join(', ')}`;
        case 'replace-section-line':
          return `${edit.section}: ${edit.text}`;
        default:
          return edit.kind;
      }
    }),
  );

/** Pain said of the first row of a session, on the day given. */
export const withPain =
  (...pains: readonly (readonly [day: string, report: PainReport, row?: number])[]) =>
  (session: DoneSession): DoneSession => ({
    ...session,
    rows: session.rows.map((row, index) => {
      const own = pains.filter(([day, , at = 0]) => day === isoOfDay(session.day) && at === index);
      return { ...row, pain: own.map(([, report]) => report) };
    }),
  });
