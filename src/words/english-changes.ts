/** English for what a new edition changes, and for one that has ended or was withdrawn. No sentence is over 20 words. */
import { BODY_PARTS } from '../model/exercise.js';
import type { ChangeWords, SaidChange, WhenChanged, WholeChange, WhyChanged } from './change-words.js';
import { begun } from './rule-words.js';
import { NO_BREAK } from './spacing.js';

const WHY: Readonly<Record<Exclude<WhyChanged['kind'], 'pain'>, string>> = {
  care: ', to be on the safe side',
  seen: ', for what your coach saw',
  marks: ', by your marks',
  heavy: ', because it was heavy last time',
  'chose-easier': ', because you chose the easier one',
  'had-more': ', because you had more left than asked',
  earned: ', because you earned it',
  away: ', after your time away',
  ill: ', to come back gently',
  none: '',
};

/** Not everybody who sees a booklet lie about needs to read where. */
const UNNAMED: readonly string[] = ['pelvic floor', 'belly'];

const why = (of: WhyChanged): string => {
  if (of.kind !== 'pain') return WHY[of.kind];
  const known = BODY_PARTS.some((part) => part === of.where) && !UNNAMED.includes(of.where);
  return known ? `, because your ${of.where} was sore` : ', because it hurt';
};

function when(of: WhenChanged): string {
  if (of.kind === 'between') return `From ${of.day} until ${of.until}`;
  return of.kind === 'on' ? `On ${of.day}` : `From ${of.day}`;
}

const AMOUNT: Readonly<Record<SaidChange['counts'], Readonly<Record<SaidChange['way'], string>>>> = {
  reps: { down: 'has fewer reps', up: 'has more reps', other: 'has other reps' },
  seconds: { down: 'is shorter', up: 'is longer', other: 'has another length' },
  metres: { down: 'goes less far', up: 'goes further', other: 'has another distance' },
};

/** A band goes by its name. */
const withLoad = ({ load, steady }: SaidChange): string => {
  if (load === null) return 'is done with another load';
  if (load === '') return 'is done without a load';
  return `${steady ? 'is' : 'begins'} with ${/\d/.test(load) ? '' : 'the '}${load}`;
};

function newSets({ sets, steady }: SaidChange): string {
  return steady ? `has ${sets}${NO_BREAK}${sets === 1 ? 'set' : 'sets'}` : 'has another number of sets';
}

const EFFORT: Readonly<Record<SaidChange['way'], string>> = {
  down: 'leave more in reserve',
  up: 'leave less in reserve',
  other: 'leave another number in reserve',
};

/** Words of two names that one sentence holds. */
const NAMES_TOGETHER = 8;

/** What of it is otherwise, after the day. */
const said: Readonly<Record<SaidChange['what'], (of: SaidChange) => string>> = {
  added: ({ name }) => `there is the ${name} as well`,
  removed: ({ name }) => `the ${name} is left out`,
  version: ({ name, instead }) =>
    `${name} ${instead}`.split(/\s+/).length > NAMES_TOGETHER
      ? `you do the ${name}. It takes the place of the ${instead}`
      : `you do the ${name} in place of the ${instead}`,
  load: (of) => `the ${of.name} ${withLoad(of)}`,
  amount: ({ name, counts, way }) => `the ${name} ${AMOUNT[counts][way]}`,
  sets: (of) => `the ${of.name} ${newSets(of)}`,
  effort: ({ name, way }) => `${EFFORT[way]} in the ${name}`,
  tempo: ({ name, tempo }) => `the ${name} is ${tempo === '' ? 'at its usual speed' : tempo}`,
  rest: ({ name }) => `the rest after the ${name} is another`,
  conditions: ({ name }) => `the ${name} goes up in another way`,
};

const MOST_WORDS = 20;
const isLong = (sentence: string): boolean => sentence.split(/\s+/).length > MOST_WORDS;

/** A cause that would make the sentence long has one of its own. */
function withCause(what: string, cause: string): string {
  return cause !== '' && isLong(`${what}${cause}`) ? `${what}. This is${cause.slice(1)}.` : `${what}${cause}.`;
}

const WHOLE: Readonly<Record<WholeChange['why'], string>> = {
  away: 'you have been away, so ',
  'will-be-away': 'you will be away, so ',
  ill: 'you have had a break, so ',
  none: '',
};

function sessionsLeft({ left, last }: WholeChange): string {
  if (left === 0) return 'no session is left in this block';
  return left === 1
    ? `1${NO_BREAK}session is left, on ${last}`
    : `${left}${NO_BREAK}sessions are left, the last on ${last}`;
}

const sessionsOn = (of: WholeChange): string =>
  of.left < 2 ? sessionsLeft(of) : `the next session is on ${of.next}, the last on ${of.last}`;

export const englishChanges: ChangeWords = {
  title: (edition, date) => (edition === 0 ? 'Draft, not issued' : `Edition${NO_BREAK}${edition}, ${date}`),
  row: (change) => {
    const what = said[change.what](change);
    const whole = `${when(change.when)} ${what}`;
    const from = `From ${change.when.day} ${what}`;
    return withCause(change.when.kind === 'between' && isLong(whole) ? from : whole, why(change.why));
  },
  begins: (change) => {
    if (change.what === 'added') return `New: the ${change.name}.`;
    if (change.what === 'removed') return `The ${change.name} is left out for now.`;
    return withCause(begun(said[change.what](change)), why(change.why));
  },
  block: (goesOn) => (goesOn ? 'New block: it begins where the last one ended.' : 'This is a new block.'),
  programme: (name) => `It is another programme: ${name}.`,
  moved: (to) => `Your sessions have moved: the next one is on ${to}.`,
  sessions: (count) => `There are ${count}${NO_BREAK}${count === 1 ? 'session' : 'sessions'} in this block now.`,
  fewer: (of) => `${begun(`${WHOLE[of.why]}${sessionsLeft(of)}`)}.`,
  later: (of) => `${begun(`${WHOLE[of.why]}${sessionsOn(of)}`)}.`,
  stops: (date) => `Ask before you train on after ${date}.`,
  sameWork: 'The work is the same as in the edition before.',
  useThis: (marks) => `Train from this edition from now on.${marks ? ' Your marks stay.' : ''}`,

  ended: {
    title: 'This booklet has ended',
    lines: (date, coach) => [`Its last day was ${date}.`, `Ask ${coach} for the next one before you train on.`],
  },
  withdrawn: {
    title: 'Withdrawn: do not train from this',
    lines: (date, coach) => [
      `This booklet was withdrawn on ${date}.`,
      'Do not train from it, nor from a copy on paper.',
      `Ask ${coach} what to do now.`,
    ],
  },
};
