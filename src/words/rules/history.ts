/** The rules of what came back and what was seen: their names, and what English says of each. */
import { both, clause, type Figure, held, only, type RuleWords } from '../rule-words.js';

/** Of marks and of pain. */
const MARK_RULES = [
  'done-days',
  'done-earned',
  'done-easier',
  'done-gap',
  'done-greatest',
  'done-median',
  'done-missed',
  'done-over-target',
  'done-quiet',
  'done-side',
  'done-unsaid',
  'pain-alarm',
  'pain-easier',
  'pain-gentle',
  'pain-hold-days',
  'pain-leave',
  'pain-next-morning',
  'pain-sign-off',
] as const;

/** Of what the coach saw. */
const SEEN_RULES = [] as const;

export const HISTORY_RULES = [...MARK_RULES, ...SEEN_RULES] as const;
export type HistoryRuleName = (typeof HISTORY_RULES)[number];

/** `3 December 2026: 60 kg × 8, 2 left`, as far as the reason says. */
const markedSet = (f: Figure): string => {
  const amount = [f('load'), f('reps')].filter((part) => part !== '').join('\u00a0×\u00a0');
  const said = [amount, clause(f('reserve'), (left) => `${left} left`)].filter((part) => part !== '').join(', ');
  return `${clause(f('marked'), (day) => ` on ${day}`)}${clause(said, (set) => `: ${set}`)}`;
};

/** ` on the left side`. */
const onSide = (f: Figure): string => {
  const side = f('side');
  return side === 'left' || side === 'right' ? ` on the ${side} side` : '';
};

/** ` of 5 in the knee on 3 December 2026`. */
const painSaid = (f: Figure): string =>
  `${clause(f('degree'), (degree) => ` of ${degree}`)}${clause(f('where'), (where) => (where === 'elsewhere' ? '' : ` in the ${where}`))}${clause(f('marked'), (day) => ` on ${day}`)}`;

const inIt = (f: Figure): string => clause(f('exercise'), (name) => ` in the ${name}`);

const englishMarks: Readonly<Record<(typeof MARK_RULES)[number], RuleWords>> = {
  'done-days': only((f) => `Marks older than ${held(f, '42 days')} say nothing of what can be lifted now.`),
  'done-earned': both(
    (f) => `Earned by marks before this block: ${f('earned') || '1'} at the top of the range${onSide(f)}.`,
    'You reached the top of the range last time.',
  ),
  'done-easier': both(
    (f) =>
      `The easier version was chosen for the work ${held(f, '2 occurrences')} running${clause(f('marked'), (day) => `, last on ${day}`)}: it begins easier, and nothing is earned.`,
    'You chose the easier one, so this begins easier.',
  ),
  'done-gap': only(
    (f) =>
      `No mark for ${f('days') || held(f, '14 days')}${clause(f('from'), (from) => ` (${from} to ${f('until')})`)} although sessions were planned: taken as a break away. If it was none, write what it was.`,
  ),
  'done-greatest': only('The greatest set marked is the one that no leap in volume is measured from.'),
  'done-median': both(
    (f) =>
      `Rests on a set marked${markedSet(f)}${onSide(f)}${clause(f('of'), (n) => (n === '1' ? '' : `, the one in the middle or the lower of ${n}`))}.`,
    (f) => `Set by your marks${clause(f('marked'), (day) => ` of ${day}`)}.`,
  ),
  'done-missed': both(
    (f) =>
      `A set fell short of the range${clause(f('marked'), (day) => ` on ${day}`)}: it begins with ${clause(f('load'), (load) => `the last load that kept to it, ${load}`) || 'what kept to it, or one load lighter'}, and nothing is earned.`,
    'The last one was heavy, so this begins a little easier.',
  ),
  'done-over-target': both(
    (f) => `More was left than asked, twice running, by ${held(f, '2')} or more: the next step is earned.`,
    'You had more left than asked, twice.',
  ),
  'done-quiet': only(
    (f) =>
      `${f('exercise') === '' ? 'A row' : `The ${f('exercise')}`} was left out of ${f('sessions') || held(f, '3 sessions')} running: ask why, or change it.`,
  ),
  'done-side': only('Each side is known by its own marks, and a gap between them is told as one between tests is.'),
  'done-unsaid': both(
    (f) =>
      `No reserve was said, so the set marked${markedSet(f)}${onSide(f)} counts with what the plan itself predicted: weak evidence.`,
    (f) => `Set by your marks${clause(f('marked'), (day) => ` of ${day}`)}. Say how many you had left.`,
  ),
  'pain-alarm': only(
    (f) =>
      `A sign of alarm was marked${clause(f('marked'), (day) => ` on ${day}`)}: nothing is planned until you have looked.`,
  ),
  'pain-easier': both(
    (f) =>
      `Pain${painSaid(f)} was said${inIt(f)}: it is made easier, and nothing is made harder${clause(f('until'), (day) => ` until ${day}`)}.`,
    'It hurt last time, so this is easier for now.',
  ),
  'pain-gentle': both(
    (f) =>
      `Some pain${painSaid(f)} was said${inIt(f)}: it goes on, and nothing is made harder${clause(f('until'), (day) => ` until ${day}`)}.`,
    'It hurt a little last time, so nothing gets harder yet.',
  ),
  'pain-hold-days': only((f) => `Nothing is made harder for ${held(f, '14 days')} after pain was said.`),
  'pain-leave': both(
    (f) =>
      `Pain${painSaid(f)} was said${inIt(f)}: it is left out until you have spoken, a licensed person has looked where it lasts, and you write that it is cleared.`,
    'It hurt, so something else for now. Tell your doctor or physiotherapist if it lasts.',
  ),
  'pain-next-morning': both(
    (f) => `Pain${painSaid(f)}${inIt(f)} was worse the next morning, and counts as one band higher.`,
    'It was worse the next morning, so more care is taken.',
  ),
  'pain-sign-off': only(
    (f) =>
      `Pain${painSaid(f)} was said${inIt(f)}, which needs a sign-off: the sign-off no longer counts. See it done again, or write that it is cleared.`,
  ),
};

const englishSeen: Readonly<Record<(typeof SEEN_RULES)[number], RuleWords>> = {};

export const englishHistory: Readonly<Record<HistoryRuleName, RuleWords>> = { ...englishMarks, ...englishSeen };
