/** The rules of what came back and what was seen: their names, and what English says of each. */
import { clause, type Figure, held, type Saying } from '../rule-words.js';

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
  'done-trial',
  'done-unsaid',
  'pain-alarm',
  'pain-back',
  'pain-easier',
  'pain-gentle',
  'pain-hold-days',
  'pain-leave',
  'pain-next-morning',
  'pain-sign-off',
] as const;

/** Of what the coach saw. */
const SEEN_RULES = [
  'seen-balance',
  'seen-breath',
  'seen-days',
  'seen-grip',
  'seen-heavy',
  'seen-hold-days',
  'seen-hurrying',
  'seen-light',
  'seen-missed-reps',
  'seen-new',
  'seen-pain',
  'seen-reserve',
  'seen-shorter-side',
  'seen-well',
] as const;

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

/** The body alone has no load. */
const withLoad = (f: Figure): string => (f('load') === '' ? 'of it' : `with the ${f('load')}`);
const often = (f: Figure): string => (f('weeks') === '2' ? 'twice' : `${f('weeks')} times`);

const englishMarks: Readonly<Record<(typeof MARK_RULES)[number], Saying>> = {
  'done-days': (f) => `Marks older than ${held(f, '42 days')} say nothing of what can be lifted now.`,
  'done-earned': (f) => `Earned by marks before this block: ${f('earned') || '1'} at the top of the range${onSide(f)}.`,
  'done-easier': (f) =>
    `The easier version was chosen for the work ${held(f, '2 sessions')} running${clause(f('marked'), (day) => `, last on ${day}`)}: it begins easier, and nothing is earned.`,
  'done-gap': (f) =>
    `No mark for ${f('days') || held(f, '14 days')}${clause(f('from'), (from) => ` (${from} to ${f('until')})`)} although sessions were planned: taken as a break away. If it was none, write what it was.`,
  'done-greatest': 'The greatest set marked is the one that no leap in volume is measured from.',
  'done-median': (f) =>
    `Rests on a set marked${markedSet(f)}${onSide(f)}${clause(f('of'), (n) => (n === '1' ? '' : `, the one in the middle or the lower of ${n}`))}.`,
  'done-missed': (f) =>
    `A set fell short of the range${clause(f('marked'), (day) => ` on ${day}`)}: it begins with ${clause(f('load'), (load) => `the last load that kept to it, ${load}`) || 'what kept to it, or one load lighter'}, and nothing is earned.`,
  'done-over-target': (f) =>
    `More was left than asked, twice running, by ${held(f, '2')} or more: the next step is earned.`,
  'done-quiet': (f) =>
    `${f('exercise') === '' ? 'A row' : `The ${f('exercise')}`} was left out of ${f('sessions') || held(f, '3 sessions')} running: ask why, or change it.`,
  'done-side': 'Each side is known by its own marks, and a gap between them is told as one between tests is.',
  'done-trial': (f) =>
    f('tried') === ''
      ? f('reps') === ''
        ? 'A load that was tried and done as asked often enough is the next one, however weak the estimate.'
        : 'For the first time with what was only tried: the fewest reps of the range.'
      : `${f('tried')} ${withLoad(f)} done ${often(f)} as asked: open, however weak the estimate${clause(f('predicted'), (n) => ` (${n} to failure)`)}. It begins with the fewest reps of the range.`,
  'done-unsaid': (f) =>
    `No reserve was said, so the set marked${markedSet(f)}${onSide(f)} counts with what the plan itself predicted: weak evidence.`,
  'pain-alarm': (f) =>
    `A sign of alarm was marked${clause(f('marked'), (day) => ` on ${day}`)}: nothing is planned until you have looked.`,
  'pain-back': (f) =>
    `${f('sign') === '' ? `Pain${painSaid(f)}${inIt(f)}` : `A sign of alarm${clause(f('marked'), (day) => ` on ${day}`)}`} was cleared${clause(f('cleared'), (day) => ` on ${day}`)}: it begins ${(f('loads') || held(f, '1 load')).replace(/^1(?=\s)/, 'one')} lighter than it was done last, as far as there is a lighter one, and nothing is made harder${clause(f('until'), (day) => ` until ${day}`)}.`,
  'pain-easier': (f) =>
    `Pain${painSaid(f)} was said${inIt(f)}: it is made easier, and nothing is made harder${clause(f('until'), (day) => ` until ${day}`)}.`,
  'pain-gentle': (f) =>
    `Some pain${painSaid(f)} was said${inIt(f)}: it goes on, and nothing is made harder${clause(f('until'), (day) => ` until ${day}`)}.`,
  'pain-hold-days': (f) => `Nothing is made harder for ${held(f, '14 days')} after pain was said.`,
  'pain-leave': (f) =>
    `Pain${painSaid(f)} was said${inIt(f)}: it is left out until you have spoken, a licensed person has looked where it lasts, and you write that it is cleared.`,
  'pain-next-morning': (f) => `Pain${painSaid(f)}${inIt(f)} was worse the next morning, and counts as one band higher.`,
  'pain-sign-off': (f) =>
    `Pain${painSaid(f)} was said${inIt(f) || ' in what needs a sign-off'}: the sign-off no longer counts. See it done again, or write that it is cleared.`,
};

/** ` (seen 16 November 2026)`. */
const seenOn = (f: Figure): string => clause(f('seen'), (day) => ` (seen ${day})`);

/** `, one load lighter`, where there is a load to go down. */
const downBy = (f: Figure): string => clause(f('loads'), (loads) => `, begun ${loads} lighter`);

const until = (f: Figure): string => clause(f('until'), (day) => ` until ${day}`);

/** `box squat instead`, or the exercise itself in an easier way. */
const eased = (f: Figure): string =>
  f('exercise') === f('programme') ? 'done in an easier way' : `${f('exercise') || 'an easier version'} instead`;

const atLeast = (f: Figure): string => clause(f('floor'), (reps) => `, at least ${reps} left in reserve`);

/** `left` or `right` as a language has it. */
const thatSide = (f: Figure): string => f('side') || 'shorter';

const englishSeen: Readonly<Record<(typeof SEEN_RULES)[number], Saying>> = {
  'seen-balance': (f) =>
    f('programme') === ''
      ? `Balance was lost${seenOn(f)} and no easier version for it is open: nothing is made harder${until(f)}.`
      : `Balance was lost in the ${f('programme')}: ${eased(f)}, until you write that it moves well.`,
  'seen-breath': (f) => `The breath was held${seenOn(f)}${atLeast(f)}, and nothing is made harder${until(f)}.`,
  'seen-days': (f) => `What you saw speaks for ${held(f, '42 days')}, and says nothing after that.`,
  'seen-grip': (f) =>
    f('programme') === ''
      ? `The grip went first${seenOn(f)} and no easier version for it is open${downBy(f)}.`
      : `The grip went first in the ${f('programme')}: ${eased(f)}, until you write that it moves well.`,
  'seen-heavy': (f) => `It was heavy${seenOn(f)}${downBy(f)}; nothing is earned yet.`,
  'seen-hold-days': (f) => `For ${held(f, '14 days')} after such a thing was seen nothing is made harder.`,
  'seen-hurrying': (f) =>
    `The reps were hurried${seenOn(f)}: begun with a slow lowering where the row has one, and nothing is made harder${until(f)}.`,
  'seen-light': (f) =>
    `It was light${seenOn(f)}: the next load up counts as earned, and is open once its reps are predicted.`,
  'seen-missed-reps': (f) => `Reps were missed${seenOn(f)}${downBy(f)}${atLeast(f)}${until(f)}; nothing is earned yet.`,
  'seen-new': (f) =>
    `New to the movement${seenOn(f)}: a weak estimate${downBy(f)}, and nothing is made harder${until(f)}.`,
  'seen-pain': 'Pain that you saw counts as pain that a client marks, until you write that it is cleared.',
  'seen-reserve': (f) => `After missed reps or a breath held, ${held(f, '1')} more is left in reserve.`,
  'seen-shorter-side': (f) =>
    f('drill for') === ''
      ? `Shorter on the ${thatSide(f)} side${seenOn(f)}: it goes first, the other does what it can, and nothing is made harder${until(f)}.`
      : `For the ${thatSide(f)} side, which was shorter in the ${f('drill for')}.`,
  'seen-well': (f) =>
    `It moves well${seenOn(f)}${clause(f('ended'), (ended) => `, so this no longer counts: ${ended}`)}.`,
};

export const englishHistory: Readonly<Record<HistoryRuleName, Saying>> = { ...englishMarks, ...englishSeen };
