/** The rules of the weekly review: their names, and what English says of each. Told to the coach alone. */
import { clause, type Figure, held, type Saying } from '../rule-words.js';

export const REVIEW_RULES = [
  'propose-break',
  'propose-caution',
  'propose-caution-days',
  'propose-fewer-days',
  'propose-look',
  'propose-main-bell',
  'propose-message',
  'propose-minutes',
  'propose-minutes-over',
  'propose-next-block',
  'propose-repeat',
  'propose-sign-off',
  'propose-test',
  'propose-test-weak',
  'review-load',
  'review-share',
] as const;
export type ReviewRuleName = (typeof REVIEW_RULES)[number];

/** `left `, or nothing where it is of neither side. */
const side = (f: Figure): string => (f('side') === 'left' || f('side') === 'right' ? `${f('side')} ` : '');

/** `the left knee`; nothing where it is not said. */
const part = (f: Figure): string =>
  f('where') === '' ? '' : f('where') === 'elsewhere' ? 'elsewhere' : `the ${side(f)}${f('where')}`;

const inIt = (f: Figure): string => clause(f('exercise'), (name) => ` in the ${name}`);
const on = (f: Figure): string => clause(f('marked'), (day) => ` on ${day}`);
const doneOf = (f: Figure): string => clause(f('planned'), (planned) => `${f('done')} of ${planned} sessions done`);

/** `, on the left side, from 8 to 12 reps in it at 16 kg`, as far as it is known. */
const spread = (f: Figure): string => {
  const of = clause(side(f).trim(), (one) => `, on the ${one} side`);
  const at = clause(f('at'), (load) => ` at ${load}`);
  return `${of}${clause(f('lowest'), (least) => `, from ${least} to ${f('highest')} reps in it${at}`)}`;
};

function message(f: Figure): string {
  switch (f('why')) {
    case 'alarm':
      return `Ring today: a sign of alarm was marked${on(f)} (${f('sign')}). It is for a doctor, or the emergency number, before any training. Nothing is planned until you write that it is cleared.`;
    case 'pain':
      return `Write to them: pain of ${f('degree')} in 10${part(f) === '' ? '' : `, ${part(f)}`}${inIt(f)}${on(f)}. Ask when it comes, how it is the next morning, and what eases it. If it lasts or grows, a doctor or physiotherapist looks before it is trained again.`;
    case 'gap':
      return `Write to them: ${f('days')} without a mark${clause(f('sessions'), (many) => `, ${many} planned since`)}${clause(f('marked'), (day) => `; the last was on ${day}`)}. Ask how they are, whether anything hurts, and whether the days still suit.`;
    default:
      return `Write to the client after ${held(f, '7 days')} without a mark, after pain for which something is left out, or after a sign of alarm.`;
  }
}

function caution(f: Figure): string {
  if (f('caution') === '') return `Pain that came on ${held(f, '2')} days, or was strong once, asks for a caution.`;
  const days = f('days') === '1' ? '' : ` on ${f('days')} days`;
  const what = f('caution') === 'avoid' ? 'avoid it' : 'take care with it';
  return `Pain in ${part(f)}${days}, up to ${f('degree')} in 10, last${on(f)}: ${what} from today, and look again on ${f('review')}. What causes it is for a doctor or physiotherapist to say.`;
}

function next(f: Figure, otherwise: string, said: string): string {
  if (f('starts') === '') return otherwise;
  const when = f('ended') === '' ? `The block ends on ${f('ends')}` : `The block ended on ${f('ended')}`;
  const done = clause(doneOf(f), (sessions) => `, with ${sessions}${f('ended') === '' ? ' so far' : ''}`);
  const others = clause(f('other programme'), (names) => ` Other programmes that fit these days: ${names}.`);
  return `${when}${done}: ${said} from ${f('starts')}.${others}`;
}

export const englishReview: Readonly<Record<ReviewRuleName, Saying>> = {
  'propose-break': (f) =>
    f('from') === ''
      ? 'Weeks without a mark are proposed as a break: away, unless you know better.'
      : `No mark from ${f('from')} to ${f('until')}: write it down as a break. It says away; make it ill or hurt if that is what it was.`,
  'propose-caution': caution,
  'propose-caution-days': (f) =>
    `Pain of the last ${held(f, '14 days')} counts towards a caution, which is looked at again after as long.`,
  'propose-fewer-days': (f) =>
    f('planned') === ''
      ? `Few sessions done in ${held(f, '3 weeks')} running: talk about days, or about another programme.`
      : `${doneOf(f)} in the last ${f('weeks')}, on ${f('days a week')} days a week: ask which days they can keep, or choose a programme with fewer.`,
  'propose-look': (f) =>
    part(f) === ''
      ? `A place that was trained for ${held(f, '21 days')} without pain: look at its caution again.`
      : `No pain in ${part(f)} for ${f('days')} while it was trained: look at it again, and end the caution${clause(f('from'), (from) => ` of ${from}`)} if you and whoever set it agree.`,
  'propose-main-bell': (f) =>
    f('bell') === ''
      ? `The bell used in the last ${held(f, '3 sessions')} of a pattern is its main bell.`
      : `The ${f('pattern')} was done with the ${f('bell')} in the last ${f('sessions')}; the page says ${f('stated')}.`,
  'propose-message': message,
  'propose-minutes': (f) =>
    f('least') === ''
      ? `Sessions that take longer, ${held(f, '3')} running: talk about minutes, rests or rows.`
      : `The last ${f('sessions')} took ${f('least') === f('most') ? f('least') : `${f('least')} to ${f('most')}`} minutes longer than planned: ask what takes the time. A row can be cut, or more than ${f('minutes')} agreed on.`,
  'propose-minutes-over': (f) =>
    `A session that takes more than ${held(f, '10 %')} longer than planned counts as longer.`,
  'propose-next-block': (f) => next(f, 'A block that ends asks for the next one.', 'go on'),
  'propose-repeat': (f) =>
    next(f, 'A block of which few sessions were done is proposed once more.', 'do the same programme once more,'),
  'propose-sign-off': (f) =>
    f('exercise') === ''
      ? 'A sign-off taken back by pain or an alarm: see it done again before it goes home.'
      : `See the ${f('exercise')} done again before it goes home: after pain of ${f('degree')} in 10${on(f)} its sign-off no longer counts.`,
  'propose-test': (f) =>
    f('exercise') === ''
      ? `Estimates that disagree by more than ${held(f, '2')} reps: test again.`
      : `Test the ${f('exercise')} again: the last ${f('of')} estimates disagree${spread(f)}.`,
  'propose-test-weak': (f) =>
    f('exercise') === ''
      ? `Only weak estimates, ${held(f, '3')} running: test it.`
      : `Test these, their marks alone say too little: ${f('exercise')}.${f('why') === 'unsaid' ? ' Or ask them to say after the last set how many good ones were left.' : ''}`,
  'review-load': 'The load of a week is effort of 10 times minutes, summed over seven days. Nothing is decided by it.',
  'review-share': (f) => `Fewer than ${f('value') || '2 of 3'} sessions planned is few.`,
};
