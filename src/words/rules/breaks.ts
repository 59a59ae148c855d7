/** The rules of breaks, of floors after them and of tests: their names, and what English says of each. */
import { clause, type Figure, held, type Saying } from '../rule-words.js';

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

const backAfter = (f: Figure): string => {
  const cause = f('cause');
  return cause === '' ? 'Back after a break' : `Back after being ${cause}`;
};

const testAgain = (f: Figure): string =>
  clause(f('test again'), (date) => ` Test again on ${date}, before the bells go back up.`);

const stood = (f: Figure): string =>
  clause(f('stands'), (n) => `${n} stands in the chair test`) || 'Few stands in the chair test';

const cut =
  (share: string): Saying =>
  (f) =>
    `${backAfter(f)}${length(f)}: ${f('cut') || held(f, share)} fewer sets this week.`;

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

export const englishBreak: Readonly<Record<BreakRuleName, Saying>> = {
  'birth-test': 'Tested before the birth: that says nothing now, so a feeler set finds the load, from light.',
  'break-away': (f) =>
    `Away for ${f('days') || held(f, '14 days')}${together(f)}: the first weeks back are gentle.${testAgain(f)}`,
  'break-counts': (f) => `A break that ended more than ${held(f, '28 days')} ago is over.`,
  'break-floor': (f) =>
    `${backAfter(f)}: never fewer than ${f('floor') || held(f, '4')} in reserve in the first weeks.`,
  'break-floor-weeks': (f) => `The first ${held(f, '2 weeks')} back keep more in reserve.`,
  'break-held': (f) => `${backAfter(f)}${length(f)}: nothing is made harder yet.`,
  'break-held-ill': (f) => `Back after a short illness${length(f)}: nothing is made harder for a week.`,
  'break-hurt': (f) =>
    `Hurt, and away for ${f('days') || held(f, '1 days')}${together(f)}: the first weeks back are gentle. What a physiotherapist says goes first.${testAgain(f)}`,
  'break-ill': (f) =>
    `Ill for ${f('days') || held(f, '7 days')}${together(f)}: the first weeks back are gentle. After a fever, or anything in the chest, a doctor says when.${testAgain(f)}`,
  'break-joined': (f) => `Breaks with no more than ${held(f, '1 day')} between them are one break.`,
  'chair-stand-low': (f) =>
    `${stood(f)}, which is few at any age: strong legs come first here, and support stays near.`,
  'chair-stand-norm': (f) =>
    `${stood(f)}${clause(f('women'), (women) => `; of people that age, half do ${women} (women) or ${f('men')} (men)`)}.`,
  'chair-stand-seconds': (f) =>
    `The chair test takes ${held(f, '30 s')}: full stands, arms crossed, the chair against a wall.`,
  'gain-return': 'Gentle weeks after a break: no gain in strength is counted on in this block.',
  'gain-steady': 'The work is kept steady for now: no gain in strength is counted on.',
  'missed-session': (f) =>
    `A break too short to change anything${length(f)}: the next session is simply the next. Nothing published says more.`,
  'one-leg-seconds': (f) =>
    `The one-leg stand is held for ${held(f, '30 s')} at most, within reach of something steady.`,
  'pregnancy-test': (f) => `Tested before the pregnancy: ${weakly(f)}.`,
  'return-cut-first': cut('50 %'),
  'return-cut-fourth': cut('10 %'),
  'return-cut-second': cut('30 %'),
  'return-cut-third': cut('20 %'),
  'return-days-first': (f) => tooMany(f, 'first', '3 sessions'),
  'return-days-second': (f) => tooMany(f, 'second', '4 sessions'),
  'return-lighter': (f) => `After ${f('days') || 'so long a break'} it starts one load lighter than the last good one.`,
  'return-rest-first': (f) => `First week back: the rest is ${held(f, '4')} times the work.`,
  'return-rest-second': (f) => `Second week back: the rest is ${held(f, '3')} times the work.`,
  'return-volume': 'No exercise has more sets than a first week back allows.',
  'strength-kept': (f) => `${testedBefore(f)} a break of ${f('days') || held(f, '21 days')}: ${weakly(f)}.`,
  'strength-kept-older': (f) =>
    `${testedBefore(f)} a break of ${f('days') || held(f, '14 days')}, and from 65 strength goes sooner: ${weakly(f)}.`,
  'strength-unknown': (f) =>
    `${testedBefore(f)} a break of ${f('days') || held(f, '35 days')}: that says nothing now, so a feeler set finds the load.`,
  'test-most': (f) => `A test set goes no further than ${held(f, '5')} reps above the range.`,
  'measures-apart':
    'The published measures stand in a session without a test of the same muscles, where the week has one.',
  'test-not-counted': (f) =>
    `${clause(f('row'), (row) => `The ${row} has`) || 'A row has'} no reps to count up to a limit, so it is not tested.`,
  'test-once':
    'An exercise is tested once at the start of a block and once at its end, whatever sessions it stands in.',
  'test-reserve': (f) =>
    `A test set: the same exercise, load and rest as always, stopped with ${f('reserve') || held(f, '1')} good reps left.`,
  'test-waits': (f) =>
    `${f('moved') === '' ? 'No test' : `The first test waits until ${f('moved')}`}${clause(f('row'), (rows) => ` of ${rows}`)}${WAITS[f('why')] ?? ''}.`,
};
