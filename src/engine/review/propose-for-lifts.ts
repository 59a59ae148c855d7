/** What the lifts ask of the coach: to test again, or to write down the bell that is worked with now. */

import type { MainBell } from '../../model/client.js';
import { dayOfIso } from '../../model/day.js';
import type { Edit } from '../../model/edit.js';
import type { Pattern } from '../../model/exercise.js';
import type { DoneSession } from '../../model/history.js';
import type { ExerciseId, Side } from '../../model/identity.js';
import type { PlanLoad } from '../../model/plan.js';
import type { Grams, Mass } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import type { Estimate, Proposal } from '../../model/review.js';
import { painHolds } from '../history/marks/pain.js';
import { reasonOf } from '../reason-of.js';
import { DONE_DAYS } from '../rules/done-days.js';
import { PROPOSE_MAIN_BELL } from '../rules/propose-main-bell.js';
import { PROPOSE_TEST } from '../rules/propose-test.js';
import { PROPOSE_TEST_WEAK } from '../rules/propose-test-weak.js';
import type { Known } from './abilities.js';
import { hurts, type Pain } from './pains.js';
import { count, type Reviewing, wasDone, word } from './reviewing.js';

/**
 * Estimates that disagree, newer than the coach's own test of that side; or none but weak ones, where no such test holds
 * any more. Nobody is tested in what
 * hurt lately. The line for the next session is written only where none stands.
 */
export function proposeTests(
  reviewing: Reviewing,
  known: readonly Known[],
  pains: readonly Pain[],
): readonly Proposal[] {
  const { client, exercises, rules, today, words } = reviewing;
  const sore = (id: string): boolean =>
    pains.some((pain) => hurts(pain) && pain.exercise === id && painHolds(pain.day, rules) >= today);
  const due = known.flatMap((one) => {
    const { exercise, side } = one.ability;
    const tested = testedOn(reviewing, one);
    const last = one.last.filter(({ date }) => (dayOfIso(date) ?? today) > tested);
    const holds = tested >= today - rules.valueOf(DONE_DAYS);
    const why = sore(exercise) ? null : whyTest(reviewing, last, holds);
    return why === null ? [] : [{ exercise, side, last, why }];
  });
  const names = [...new Set(due.map(({ exercise }) => exercises.get(exercise)?.name ?? exercise))];
  const edits: readonly Edit[] =
    client.workOnThis !== undefined || due.length === 0
      ? []
      : [{ kind: 'replace-section-line', section: 'Work on this', text: words.testAgain(names) }];
  const weak = due.filter(({ why }) => why === PROPOSE_TEST_WEAK);
  return [
    ...due.filter(({ why }) => why === PROPOSE_TEST).map((one) => ({ ...disagreeing(one), edits })),
    ...(weak.length === 0 ? [] : [{ ...onlyWeak(weak), edits }]),
  ];
}

interface Due {
  readonly exercise: ExerciseId;
  readonly side: Side | 'both';
  readonly last: readonly Estimate[];
}

function disagreeing({ exercise, side, last }: Due): Pick<Proposal, 'reason'> {
  const at = last.map((estimate) => estimate.at);
  const load = last.at(-1)?.load ?? null;
  const inputs = [
    word('exercise', exercise),
    word('side', side),
    ...(load === null ? [] : [word('at', load.label)]),
    count('lowest', Math.min(...at), 'tenths'),
    count('highest', Math.max(...at), 'tenths'),
    count('of', last.length),
  ];
  return { reason: reasonOf(PROPOSE_TEST, 'coach', inputs, 'weak') };
}

/** One for all of them: who says nothing of one exercise says nothing of the others. */
function onlyWeak(due: readonly Due[]): Pick<Proposal, 'reason'> {
  const exercises = [...new Set(due.map(({ exercise }) => exercise))];
  const unsaid = due.flatMap(({ last }) => last).some(({ by }) => by === 'unsaid');
  const inputs = [...exercises.map((id) => word('exercise', id)), ...(unsaid ? [word('why', 'unsaid')] : [])];
  return { reason: reasonOf(PROPOSE_TEST_WEAK, 'coach', inputs, 'weak') };
}

function whyTest({ rules }: Reviewing, last: readonly Estimate[], holds: boolean): Rule | null {
  const at = last.map((estimate) => estimate.at);
  if (at.length > 1 && Math.max(...at) - Math.min(...at) > rules.valueOf(PROPOSE_TEST)) return PROPOSE_TEST;
  if (holds) return null;
  return last.length >= rules.valueOf(PROPOSE_TEST_WEAK) && last.every(({ weak }) => weak) ? PROPOSE_TEST_WEAK : null;
}

/** The day of the coach's latest test of it; long ago where there is none. */
function testedOn({ client, exercises, today }: Reviewing, { ability }: Known): number {
  const tests = client.tests.filter(
    ({ exercise, side, date }) =>
      exercises.get(exercise)?.id === ability.exercise &&
      date <= today &&
      (side === ability.side || side === 'both' || ability.side === 'both'),
  );
  return Math.max(Number.NEGATIVE_INFINITY, ...tests.map(({ date }) => date));
}

interface OtherBell {
  readonly pattern: Pattern;
  readonly was: MainBell;
  readonly mass: Mass;
}

/** The heaviest bell of the work of a pattern, the same in each of the last sessions it was done in, easy weeks apart. */
export function proposeMainBells(reviewing: Reviewing): readonly Proposal[] {
  const { client, history, rules } = reviewing;
  const wanted = rules.valueOf(PROPOSE_MAIN_BELL);
  const others = client.mainBells.flatMap((was): readonly OtherBell[] => {
    const heaviest = history.sessions.flatMap((session) => heaviestOf(reviewing, session, was.pattern) ?? []);
    const last = heaviest.slice(-wanted);
    const [grams] = last;
    if (grams === undefined || last.length < wanted || last.some((one) => one !== grams)) return [];
    const mass = bellsOf(reviewing).find((one) => one.grams === grams);
    return mass === undefined || grams === was.mass.grams ? [] : [{ pattern: was.pattern, was, mass }];
  });
  const now = client.mainBells.map((bell) => others.find(({ was }) => was === bell)?.mass ?? bell.mass);
  const value = client.mainBells.map(({ pattern }, index) => `${pattern} ${textOf(now[index])}`).join(', ');
  return others.map(({ pattern, was, mass }) => ({
    reason: reasonOf(
      PROPOSE_MAIN_BELL,
      'coach',
      [
        word('pattern', pattern),
        word('bell', textOf(mass)),
        word('stated', textOf(was.mass)),
        count('sessions', wanted, 'sessions'),
      ],
      'measured',
    ),
    edits: [{ kind: 'set', path: ['main bells'], value }],
  }));
}

const textOf = (mass: Mass | undefined): string => (mass === undefined ? '' : `${mass.figure} ${mass.unit}`);
const bellsOf = ({ client }: Reviewing): readonly Mass[] =>
  client.kit.flatMap((item) => (item.kind === 'bell' ? [item.mass] : []));

/** `null` where none of the pattern's work was done with a bell, or in an easy week. */
function heaviestOf({ exercises }: Reviewing, session: DoneSession, pattern: Pattern): Grams | null {
  if (session.easy) return null;
  const grams = session.rows.flatMap(({ sets }) =>
    sets.flatMap((set) => {
      const own = set.kind === 'work' && wasDone(set) && exercises.get(set.exercise)?.facts.pattern === pattern;
      return own && set.load !== undefined ? (oneBell(set.load) ?? []) : [];
    }),
  );
  return grams.length === 0 ? null : Math.max(...grams);
}

/** What one bell weighs; of a pair the heavier. */
function oneBell(load: PlanLoad): Grams | null {
  if (load.band !== undefined || load.grams <= 0) return null;
  return load.pieces.length === 0 ? load.grams : Math.max(...load.pieces.map(({ grams }) => grams));
}
