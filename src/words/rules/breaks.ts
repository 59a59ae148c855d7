/** The rules of breaks, of floors after them and of tests: their names, and what English says of each. */
import { both, clause, type Figure, held, only, type RuleWords } from '../rule-words.js';

export const BREAK_RULES = [
  'birth-test',
  'break-away',
  'break-counts',
  'break-floor',
  'break-floor-weeks',
  'break-held',
  'break-held-ill',
  'break-hurt',
  'break-ill',
  'break-joined',
  'chair-stand-low',
  'chair-stand-norm',
  'chair-stand-seconds',
  'gain-return',
  'gain-steady',
  'measures-apart',
  'missed-session',
  'one-leg-seconds',
  'pregnancy-test',
  'return-cut-first',
  'return-cut-fourth',
  'return-cut-second',
  'return-cut-third',
  'return-days-first',
  'return-days-second',
  'return-lighter',
  'return-rest-first',
  'return-rest-second',
  'return-volume',
  'strength-kept',
  'strength-kept-older',
  'strength-unknown',
  'test-most',
  'test-not-counted',
  'test-once',
  'test-reserve',
  'test-waits',
] as const;
export type BreakRuleName = (typeof BREAK_RULES)[number];

/** ` (14 days, until 3 January 2027)`. */
const length = (f: Figure): string =>
  clause(f('days'), (days) => ` (${days}${clause(f('until'), (until) => `, until ${until}`)})`);

/** Breaks end to end count as one. */
const together = (f: Figure): string => clause(f('together'), (days) => ` (${days} off in all)`);

const ILL =
  'You have been ill, so this is gentle. Still feverish, or anything wrong in the chest? See your doctor before you train.';

/** Of what the client marked, its day; of the coach's own test only that there was one. */
const testedBefore = (f: Figure): string => {
  const marked = f('marked');
  return marked === '' ? 'Tested before' : `Marked on ${marked}, before`;
};

/** `one load`; empty where it begins as heavy as before. */
const lighter = (f: Figure): string => f('loads lighter').replace(/^1(?=\s)/, 'one');

/** Of a rule that speaks of no row, where there could be a lighter load. */
const weakly = (f: Figure): string =>
  f('days') === ''
    ? 'taken as weak, and one load lighter where there is one'
    : `taken as weak${clause(lighter(f), (loads) => `, and ${loads} lighter`)}`;

/** Without a lighter load to begin with. */
const fromThere = (f: Figure): string =>
  `You have been away a while: it starts from ${f('marked') === '' ? 'your last test' : 'what you marked last'}, no further yet.`;

const WHY_GENTLE: Readonly<Record<string, string>> = {
  away: 'You have been away, so this is gentle on purpose.',
  ill: ILL,
  hurt: 'You have been hurt, so this starts gently. If the pain comes back, stop, and ask your doctor or physiotherapist.',
};

const backAfter = (f: Figure): string => {
  const cause = f('cause');
  return cause === '' ? 'Back after a break' : `Back after being ${cause}`;
};

const testAgain = (f: Figure): string =>
  clause(f('test again'), (date) => ` Test again on ${date}, before the bells go back up.`);

const stood = (f: Figure): string =>
  clause(f('stands'), (n) => `${n} stands in the chair test`) || 'Few stands in the chair test';

const cut = (share: string) =>
  only((f) => `${backAfter(f)}${length(f)}: ${f('cut') || held(f, share)} fewer sets this week.`);

/** Why a test is left out, or moved. */
const WAITS: Readonly<Record<string, string>> = {
  pregnancy: ' in pregnancy',
  birth: ' in the first 12 weeks after a birth',
  'vertebral fracture': ' after a vertebral fracture: form comes before effort',
  moderate: ' at the start of a moderate plan',
  break: ': the weeks after a break are gentle',
  'first weeks': ' at the start: the first weeks are gentle',
};

const tooMany = (f: Figure, week: string, most: string): string =>
  `${clause(f('sessions'), (n) => `${n} in the ${week} week back`) || `More in the ${week} week back`}: ${f('most') || held(f, most)} are enough. Let some go.`;

export const englishBreak: Readonly<Record<BreakRuleName, RuleWords>> = {
  'birth-test': both(
    'Tested before the birth: that says nothing now, so a feeler set finds the load, from light.',
    'Your first set finds the load anew. Begin light.',
  ),
  'break-away': only(
    (f) => `Away for ${f('days') || held(f, '14 days')}${together(f)}: the first weeks back are gentle.${testAgain(f)}`,
  ),
  'break-counts': only((f) => `A break that ended more than ${held(f, '28 days')} ago is over.`),
  'break-floor': both(
    (f) => `${backAfter(f)}: never fewer than ${f('floor') || held(f, '4')} in reserve in the first weeks.`,
    'The first weeks back are gentle, on purpose.',
  ),
  'break-floor-weeks': only((f) => `The first ${held(f, '2 weeks')} back keep more in reserve.`),
  'break-held': both(
    (f) => `${backAfter(f)}${length(f)}: nothing is made harder yet.`,
    (f) => WHY_GENTLE[f('cause')] ?? 'Nothing is made harder yet.',
  ),
  'break-held-ill': both((f) => `Back after a short illness${length(f)}: nothing is made harder for a week.`, ILL),
  'break-hurt': only(
    (f) =>
      `Hurt, and away for ${f('days') || held(f, '1 days')}${together(f)}: the first weeks back are gentle. What a physiotherapist says goes first.${testAgain(f)}`,
  ),
  'break-ill': only(
    (f) =>
      `Ill for ${f('days') || held(f, '7 days')}${together(f)}: the first weeks back are gentle. After a fever, or anything in the chest, a doctor says when.${testAgain(f)}`,
  ),
  'break-joined': only((f) => `Breaks with no more than ${held(f, '1 day')} between them are one break.`),
  'chair-stand-low': only(
    (f) => `${stood(f)}, which is few at any age: strong legs come first here, and support stays near.`,
  ),
  'chair-stand-norm': only(
    (f) =>
      `${stood(f)}${clause(f('women'), (women) => `; of people that age, half do ${women} (women) or ${f('men')} (men)`)}.`,
  ),
  'chair-stand-seconds': both(
    (f) => `The chair test takes ${held(f, '30 s')}: full stands, arms crossed, the chair against a wall.`,
    'A test of the strength in your legs. It comes at the start and at the end, to compare.',
  ),
  'gain-return': only('Gentle weeks after a break: no gain in strength is counted on in this block.'),
  'gain-steady': only('The work is kept steady for now: no gain in strength is counted on.'),
  'missed-session': only(
    (f) =>
      `A break too short to change anything${length(f)}: the next session is simply the next. Nothing published says more.`,
  ),
  'one-leg-seconds': both(
    (f) => `The one-leg stand is held for ${held(f, '30 s')} at most, within reach of something steady.`,
    'A test of your balance. It comes at the start and at the end, to compare. Stay within reach of something steady.',
  ),
  'pregnancy-test': both(
    (f) => `Tested before the pregnancy: ${weakly(f)}.`,
    (f) =>
      `${f('marked') === '' ? 'Tested' : 'Marked'} before your pregnancy: it starts ${clause(lighter(f), (loads) => `${loads} lighter`) || 'from there, no further yet'}.`,
  ),
  'return-cut-first': cut('50 %'),
  'return-cut-fourth': cut('10 %'),
  'return-cut-second': cut('30 %'),
  'return-cut-third': cut('20 %'),
  'return-days-first': only((f) => tooMany(f, 'first', '3 sessions')),
  'return-days-second': only((f) => tooMany(f, 'second', '4 sessions')),
  'return-lighter': both(
    (f) => `After ${f('days') || 'so long a break'} it starts one load lighter than the last good one.`,
    (f) => `You have been away a while, so it starts ${lighter(f) || 'one load'} lighter.`,
  ),
  'return-rest-first': only((f) => `First week back: the rest is ${held(f, '4')} times the work.`),
  'return-rest-second': only((f) => `Second week back: the rest is ${held(f, '3')} times the work.`),
  'return-volume': only('No exercise has more sets than a first week back allows.'),
  'strength-kept': both(
    (f) => `${testedBefore(f)} a break of ${f('days') || held(f, '21 days')}: ${weakly(f)}.`,
    fromThere,
  ),
  'strength-kept-older': both(
    (f) =>
      `${testedBefore(f)} a break of ${f('days') || held(f, '14 days')}, and from 65 strength goes sooner: ${weakly(f)}.`,
    fromThere,
  ),
  'strength-unknown': both(
    (f) =>
      `${testedBefore(f)} a break of ${f('days') || held(f, '35 days')}: that says nothing now, so a feeler set finds the load.`,
    'After so long, your first set finds the load anew.',
  ),
  'test-most': only((f) => `A test set goes no further than ${held(f, '5')} reps above the range.`),
  'measures-apart': only(
    () => 'The published measures stand in a session without a test of the same muscles, where the week has one.',
  ),
  'test-not-counted': only(
    (f) =>
      `${clause(f('row'), (row) => `The ${row} has`) || 'A row has'} no reps to count up to a limit, so it is not tested.`,
  ),
  'test-once': only(
    () => 'An exercise is tested once at the start of a block and once at its end, whatever sessions it stands in.',
  ),
  'test-reserve': both(
    (f) =>
      `A test set: the same exercise, load and rest as always, stopped with ${f('reserve') || held(f, '1')} good reps left.`,
    (f) =>
      `A test, to see where you stand. As many good reps as you can, and stop with ${f('reserve') || held(f, '1')} left.`,
  ),
  'test-waits': only(
    (f) =>
      `${f('moved') === '' ? 'No test' : `The first test waits until ${f('moved')}`}${clause(f('row'), (rows) => ` of ${rows}`)}${WAITS[f('why')] ?? ''}.`,
  ),
};
