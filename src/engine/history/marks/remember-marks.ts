/**
 * What marks and pain say before anything is planned: tests from marked sets, breaks from weeks without a mark, cautions
 * from pain, sign-offs taken back, and where each row ended. HISTORY.md is the definition.
 */
import { type Day, isoOfDay } from '../../../model/day.js';
import type { ExerciseId } from '../../../model/identity.js';
import type { Finding } from '../../../model/plan.js';
import type { Reason, ReasonInput, Rule } from '../../../model/reason.js';
import { reasonOf } from '../../reason-of.js';
import { DONE_GAP } from '../../rules/done-gap.js';
import { DONE_MEDIAN } from '../../rules/done-median.js';
import { DONE_QUIET } from '../../rules/done-quiet.js';
import { DONE_UNSAID } from '../../rules/done-unsaid.js';
import { PAIN_BACK } from '../../rules/pain-back.js';
import { PAIN_EASIER } from '../../rules/pain-easier.js';
import { PAIN_GENTLE } from '../../rules/pain-gentle.js';
import { PAIN_LEAVE } from '../../rules/pain-leave.js';
import { PAIN_NEXT_MORNING } from '../../rules/pain-next-morning.js';
import { PAIN_SIGN_OFF } from '../../rules/pain-sign-off.js';
import { NO_RECALL, type Recall, type Remembered, type Remembering, type Sore } from '../recall.js';
import { markedGaps, quietRows } from './gaps.js';
import { ladderEnd } from './ladder-ends.js';
import { byRow, type MarkedRow, recentRows, workDone } from './marked-rows.js';
import { type MarkedTest, markedTests } from './marked-tests.js';
import {
  alarmProblems,
  backInputs,
  hurtWith,
  PAIN_BANDS,
  type PainBand,
  type PainCleared,
  type PainIn,
  painCautions,
  painHolds,
  painInputs,
  painsCleared,
  painsOf,
  signOffsLeft,
} from './pain.js';
import { greatestDone, rowEnds } from './row-ends.js';
import { sinceBreak } from './since-break.js';
import { trialsDone } from './trials-done.js';

/** Where nothing was marked, the client as they are, and nothing remembered. */
export function rememberMarks(remembering: Remembering): Remembered {
  const { client, history } = remembering;
  const pains = painsOf(remembering);
  const cleared = painsCleared(remembering);
  if (history.sessions.length + pains.length + cleared.length === 0) {
    return { client, recalls: new Map(), findings: [], problems: [] };
  }
  const rows = recentRows(remembering);
  const gaps = markedGaps(remembering);
  const broken: Remembering = { ...remembering, client: { ...client, breaks: [...client.breaks, ...gaps] } };
  const tests = markedTests(broken, rows);
  const { signOffs, taken } = signOffsLeft(remembering, pains);
  const recalls = new Map<ExerciseId, Recall>();
  recallTests(recalls, tests);
  recallEnds(recalls, broken, rows);
  for (const [id, trials] of trialsDone(remembering, rows)) add(recalls, id, () => ({ trials }));
  recallPains(recalls, remembering, pains);
  recallBack(recalls, remembering, cleared);
  return {
    client: {
      ...client,
      tests: [...client.tests, ...tests.map(({ test }) => test)],
      breaks: broken.client.breaks,
      cautions: [...client.cautions, ...painCautions(remembering, pains)],
      signOffs,
    },
    recalls,
    findings: [
      ...painFindings(remembering, pains, taken),
      ...gaps.map(({ from, until }) => {
        const days = { name: 'days', value: until - from + 1, unit: 'days' };
        return told(DONE_GAP, [days, word('from', isoOfDay(from)), word('until', isoOfDay(until))]);
      }),
      ...quietRows(remembering, rows).map(({ exercise, sessions }) =>
        told(DONE_QUIET, [word('exercise', exercise), { name: 'sessions', value: sessions, unit: 'sessions' }]),
      ),
    ],
    problems: alarmProblems(remembering),
  };
}

const word = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });
const told = (rule: Rule, inputs: readonly ReasonInput[]): Finding => ({
  rule: rule.id,
  audience: 'coach',
  weeks: [],
  reason: reasonOf(rule, 'coach', inputs, 'measured'),
});
const both = (rule: Rule, inputs: readonly ReasonInput[], confidence?: Reason['confidence']): readonly Reason[] => [
  reasonOf(rule, 'client', inputs, confidence),
  reasonOf(rule, 'coach', inputs, confidence),
];

type Recalling = Map<ExerciseId, Recall>;

function add(
  recalls: Recalling,
  id: ExerciseId,
  change: (before: Recall) => Partial<Recall>,
  reasons: readonly Reason[] = [],
): void {
  const before = recalls.get(id) ?? NO_RECALL;
  recalls.set(id, { ...before, ...change(before), reasons: [...before.reasons, ...reasons] });
}

function recallTests(recalls: Recalling, tests: readonly MarkedTest[]): void {
  for (const { test, by, of } of tests) {
    const inputs: readonly ReasonInput[] = [
      word('exercise', test.exercise),
      word('marked', isoOfDay(test.date)),
      ...(test.load === undefined ? [] : [{ name: 'load', value: test.load.grams, unit: 'g' }]),
      { name: 'reps', value: test.reps, unit: 'reps' },
      { name: 'reserve', value: test.reserve, unit: 'tenths' },
      word('side', test.side),
      { name: 'of', value: of, unit: '' },
    ];
    const unsaid = by === 'unsaid';
    const reasons = unsaid ? both(DONE_UNSAID, inputs, 'weak') : both(DONE_MEDIAN, inputs, 'measured');
    add(recalls, test.exercise, ({ weak }) => ({ weak: weak || unsaid }), reasons);
  }
}

function recallEnds(recalls: Recalling, remembering: Remembering, rows: readonly MarkedRow[]): void {
  const { client, exercises, today } = remembering;
  const greatest = greatestDone(remembering, rows);
  const testedSince = (id: ExerciseId, day: Day): boolean =>
    client.tests.some(({ exercise, date }) => exercises.get(exercise)?.id === id && date > day && date <= today);
  for (const [key, all] of byRow(rows)) {
    const done = all.filter(({ row }) => workDone(row).length > 0);
    const own = sinceBreak(remembering, done, (one) => one.day);
    for (const { exercise, last, because } of rowEnds(remembering, own)) {
      if (testedSince(exercise, last.day)) continue;
      const end = { ...last, greatest: greatest.get(exercise) ?? null };
      const latest = (before: Recall) => (before.last === null || before.last.day <= end.day ? end : before.last);
      add(
        recalls,
        exercise,
        (before) => ({ last: latest(before), lastIn: new Map([...before.lastIn, [key, end]]) }),
        because === null ? [] : both(because.rule, because.inputs, 'measured'),
      );
    }
    const ladder = ladderEnd(remembering, own);
    if (ladder === null || testedSince(ladder.exercise, ladder.last.day)) continue;
    const { exercise, last, because } = ladder;
    add(
      recalls,
      exercise,
      ({ rungIn }) => ({ rungIn: new Map([...rungIn, [key, last]]) }),
      because === null ? [] : both(because.rule, because.inputs, 'measured'),
    );
  }
}

const RULE_OF_BAND: Readonly<Record<PainBand, Rule>> = {
  gentle: PAIN_GENTLE,
  easier: PAIN_EASIER,
  leave: PAIN_LEAVE,
};

/** While it holds; what is left out until the coach has cleared it. Of several in one exercise the gravest is told. */
function recallPains(recalls: Recalling, remembering: Remembering, pains: readonly PainIn[]): void {
  const { rules, today } = remembering;
  const holding = pains.filter(({ band, day }) => band === 'leave' || painHolds(day, rules) >= today);
  const rank = ({ band }: PainIn): number => PAIN_BANDS.indexOf(band);
  for (const pain of holding) {
    const { exercise, report, band, day } = pain;
    const until = painHolds(day, rules);
    const inputs = painInputs(pain, rules);
    const alike = holding.filter((one) => one.exercise === exercise);
    const gravest = alike.reduce((a, b) => (rank(b) >= rank(a) ? b : a));
    const next = report.worseNextMorning === true ? both(PAIN_NEXT_MORNING, inputs, 'measured') : [];
    add(
      recalls,
      exercise.id,
      ({ hold, sore, leave, ...before }) => ({
        ...(band === 'gentle'
          ? {}
          : soreAfter({ ...before, sore }, { day, under: hurtWith(remembering, pain), lighter: 1 })),
        hold: hold !== null && hold.until > until ? hold : { until, why: 'pain', maxReps: null },
        leave: leave ?? (band === 'leave' ? { from: day, where: report.where, side: report.side ?? 'both' } : null),
      }),
      pain === gravest ? [...both(RULE_OF_BAND[band], inputs, 'measured'), ...next] : [],
    );
  }
}

/**
 * What was left out comes back lighter than it was done last, and held as after pain; lighter until it has been done
 * again, however long that takes. Of several in one exercise what was cleared last is told.
 */
function recallBack(recalls: Recalling, remembering: Remembering, all: readonly PainCleared[]): void {
  const { history, rules, today } = remembering;
  const lighter = rules.valueOf(PAIN_BACK);
  const latest = new Map(all.map((pain) => [pain.exercise.id, pain]));
  for (const [id, pain] of latest) {
    const { cleared } = pain;
    if ((recalls.get(id)?.leave ?? null) !== null) continue;
    const until = painHolds(cleared, rules);
    const holds = until >= today;
    const again = history.sessions.some(({ day, rows }) => {
      const sets = day > cleared && day <= today ? rows.flatMap(workDone) : [];
      return sets.some(({ exercise }) => remembering.exercises.get(exercise) === pain.exercise);
    });
    if (!holds && again) continue;
    const under = holds ? hurtWith(remembering, pain) : null;
    add(
      recalls,
      id,
      ({ hold, ...before }) => ({
        ...soreAfter(before, { day: cleared, under, lighter }),
        hold: holds && (hold === null || hold.until <= until) ? { until, why: 'pain', maxReps: null } : hold,
      }),
      both(PAIN_BACK, backInputs(pain, rules, holds), 'measured'),
    );
  }
}

/** Of two the later, under the lighter load of both; nothing is earned. */
function soreAfter(
  { sore: before, lastIn, rungIn, last }: Pick<Recall, 'sore' | 'last' | 'lastIn' | 'rungIn'>,
  sore: Sore,
): Partial<Recall> {
  const under = [before?.under ?? null, sore.under].filter((grams) => grams !== null);
  const later = before !== null && before.day > sore.day ? before : sore;
  return {
    sore: { ...later, under: under.length === 0 ? null : Math.min(...under) },
    last: last === null ? null : { ...last, earned: 0, tops: 0 },
    lastIn: new Map([...lastIn].map(([row, one]) => [row, { ...one, earned: 0, tops: 0 }])),
    rungIn: new Map([...rungIn].map(([row, one]) => [row, { ...one, earned: 0 }])),
  };
}

/** What only the coach can decide: what is left out, and what must be seen again. */
function painFindings({ rules }: Remembering, pains: readonly PainIn[], taken: readonly PainIn[]): readonly Finding[] {
  const latest = (all: readonly PainIn[]): readonly PainIn[] =>
    all.filter((one, index) => all.findLastIndex(({ exercise }) => exercise === one.exercise) === index);
  const left = latest(pains.filter(({ band, seen }) => band === 'leave' && seen !== true));
  return [
    ...left.map((pain) => told(PAIN_LEAVE, painInputs(pain, rules))),
    ...latest(taken).map((pain) => told(PAIN_SIGN_OFF, painInputs(pain, rules))),
  ];
}
