/** The rules of versions, cautions and sign-offs, with those of breaks and tests: their names, and what English says of each. */
import { BODY_PARTS } from '../../model/exercise.js';
import { begun, both, clause, type Figure, held, only, type RuleWords, sentence } from '../rule-words.js';
import { BREAK_RULES, englishBreak } from './breaks.js';
import { cautionWords } from './caution-words.js';

export const VERSION_RULES = [
  ...BREAK_RULES,
  'caution-in-block',
  'caution-met',
  'caution-review',
  'ceiling-arms',
  'ceiling-load',
  'easier-in-kit',
  'sign-off-lapses',
  'version-chosen',
  'way-unlocks',
  'would-unlock',
] as const;
export type VersionRuleName = (typeof VERSION_RULES)[number];

/** What another version was chosen for. */
const sparing = (cause: string): string =>
  BODY_PARTS.some((part) => part === cause)
    ? `, to spare the ${cause}`
    : clause(cause, () => `, the easier one for ${cause}`);

/** `Avoid (knee, left, by Coach since 3 January 2027)`. */
const cautioned = (f: Figure): string => {
  // A caution that follows from a fact of health has that fact for an author, in small letters, and no day of its own.
  const isFact = /^\p{Ll}/u.test(f('by'));
  const by = clause(f('by'), (name) => (isFact ? `because of the ${name} on file` : `by ${name}`));
  const since = isFact ? '' : clause(f('since'), (date) => `since ${date}`);
  const side = f('side') === 'both' ? '' : f('side');
  const parts = [f('caution'), side, [by, since].filter((part) => part !== '').join(' ')];
  const said = parts.filter((part) => part !== '').join(', ');
  return `${begun(f('degree') || 'a caution')}${clause(said, (words) => ` (${words})`)}`;
};

const oneSide = (side: string): string => (side === 'left' || side === 'right' ? side : '');

/** Each said once: a combination asks the same of several parts. */
const once = (listed: string): string => [...new Set(listed.split(', '))].join(', ');

/** `2 × bell`: a pair of bells. */
const pairs = (load: string): string => load.replace(/2 × (\p{L}+)/gu, 'a pair of $1s').replace(/^(?!a )/, 'a ');

/** Everything that would open a version, in the order it was refused. */
const unlocks = (f: Figure): string =>
  [
    clause(f('unlock: caution'), (what) => `the end of the caution on ${once(what)}`),
    clause(f('unlock: thing'), (thing) => `${once(thing)} at home`),
    clause(f('unlock: load'), (load) => `${pairs(once(load))} at home`),
    clause(f('unlock: ceiling'), (height) => `a clear height of ${height}, on file`),
    clause(f('unlock: floor'), (floor) => `a clear floor of ${floor}, on file`),
    clause(
      f('unlock: sign-off'),
      (how) => `your sign-off${clause(once(how).replace(/^(seen and )?passed ?/, ''), (far) => ` ${far}`)}`,
    ),
    clause(f('unlock: clearance'), () => 'clearance for vigorous effort'),
    clause(f('unlock: test'), () => 'a test of it, or a ratio on the link to it'),
    clause(f('unlock: part'), (part) => `in the library: ${part}`),
  ]
    .filter((part) => part !== '')
    .join('; ');

export const englishVersion: Readonly<Record<VersionRuleName, RuleWords>> = {
  ...englishBreak,
  'caution-in-block': only(
    (f) =>
      `${begun(f('degree') || 'a caution')}${clause(f('caution'), (what) => ` (${what})`)}: counted for the whole block, though ${
        [clause(f('from'), (date) => `it begins on ${date}`), clause(f('until'), (date) => `it ends on ${date}`)]
          .filter((part) => part !== '')
          .join(' and ') || 'its dates fall inside it'
      }.`,
  ),
  'caution-met': both(
    (f) =>
      `${cautioned(f)}: ${f('kept') === 'kept' ? 'the exercise stays, and nothing is counted on' : 'what asks it gives way'}.`,
    (f) => sentence(f('say')) || cautionWords(f('caution'), oneSide(f('side')), f('kept') !== 'kept'),
  ),
  'caution-review': only(
    (f) =>
      `${cautioned(f)}: ${
        f('passed') === ''
          ? `you meant to look again${clause(f('review'), (date) => ` by ${date}`)}`
          : `you meant to look again by ${f('passed')}, and that day is past`
      }. Until you say otherwise it holds.`,
  ),
  'ceiling-arms': only((f) => `Arms overhead need a clear height of ${held(f, '2300 mm')}.`),
  'ceiling-load': only((f) => `A load overhead needs a clear height of ${held(f, '2500 mm')}.`),
  'easier-in-kit': only('Every planned exercise needs an easier version this client may do with this kit.'),
  'sign-off-lapses': only((f) => `A sign-off not used for ${held(f, '84 days')} must be seen again.`),
  'version-chosen': both(
    (f) =>
      `${begun(f('exercise') || 'another version')} in place of the ${f('programme') || 'one in the programme'}${sparing(f('cause'))}.`,
    (f) => `Chosen for you in place of the ${f('programme') || 'usual one'}.`,
  ),
  'way-unlocks': both(
    (f) =>
      `${begun(f('exercise') || 'the exercise')} done only like this: ${f('way') || 'in an easier way of its own'}${clause(f('caution'), (what) => `, for the ${what}`)}.`,
    (f) => `Only like this for you: ${f('way') || 'the easier way'}.`,
  ),
  'would-unlock': only(
    (f) => `${begun(f('exercise') || 'this version')} would be open with ${unlocks(f) || 'what it was refused for'}.`,
  ),
};
