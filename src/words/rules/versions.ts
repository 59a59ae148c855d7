/** The rules of versions, cautions and sign-offs, with those of breaks and tests: their names, and what English says of each. */
import { BODY_PARTS } from '../../model/exercise.js';
import { sayAsked } from '../english-asks.js';
import { listed } from '../listed.js';
import { begun, clause, type Figure, held, midway, type Saying } from '../rule-words.js';
import { BREAK_RULES, englishBreak } from './breaks.js';
import { sayOpening, sayPast } from './opening.js';

export const VERSION_RULES = [
  ...BREAK_RULES,
  'caution-in-block',
  'caution-met',
  'caution-review',
  'ceiling-arms',
  'ceiling-load',
  'easier-in-kit',
  'same-bell',
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

/** A caution that follows from a fact of health has that fact for an author, and no day of its own. */
const FACTS: Readonly<Record<string, string>> = {
  medicines: 'for a medicine',
  'blood pressure': 'for blood pressure',
  pregnancy: 'in pregnancy',
  birth: 'after a birth',
  'vertebral fracture': 'after a vertebral fracture',
  'low bone density': 'with low bone density',
  falls: 'after a fall',
};

/** `Take care with the left knee (Maren Oakes, since 3 January 2027)`; `Avoid impact (after a birth)`. */
const cautioned = (f: Figure): string => {
  const dated = [f('by'), clause(f('since'), (date) => `since ${date}`)].filter((part) => part !== '').join(', ');
  return `${heeded(f)}${clause(FACTS[f('by')] ?? dated, (words) => ` (${words})`)}`;
};

/** `Take care with the left knee`, `Spare the left knee`, `Avoid impact`. */
function heeded(f: Figure): string {
  const what = f('caution');
  if (what === '') return begun(f('degree') || 'a caution');
  const part = BODY_PARTS.some((name) => name === what);
  const called = [part ? 'the' : '', oneSide(f('side')), sayAsked(what)].filter((word) => word !== '').join(' ');
  if (f('degree') === 'take care') return `Take care with ${called}`;
  return part ? `Spare ${called}` : `Avoid ${called}`;
}

/** `, for the wrist and balance`. */
const sparingOf = (list: string): string => {
  const called = list
    .split(', ')
    .map((what) => (BODY_PARTS.some((part) => part === what) ? `the ${what}` : sayAsked(what)));
  return `, for ${listed(called)}`;
};

const oneSide = (side: string): string => (side === 'left' || side === 'right' ? side : '');

export const englishVersion: Readonly<Record<VersionRuleName, Saying>> = {
  ...englishBreak,
  'caution-in-block': (f) =>
    `${heeded(f)}${clause(f('by'), (name) => ` (${name})`)}: counted for the whole block, though ${
      [clause(f('from'), (date) => `it begins on ${date}`), clause(f('until'), (date) => `it ends on ${date}`)]
        .filter((part) => part !== '')
        .join(' and ') || 'its dates fall inside it'
    }.`,
  'caution-met': (f) =>
    `${cautioned(f)}: ${f('kept') === 'kept' ? 'the exercise stays, and no gain is counted on' : 'the exercise as written gives way'}.`,
  'caution-review': (f) =>
    `${cautioned(f)}: ${
      f('passed') === ''
        ? `you meant to look again${clause(f('review'), (date) => ` by ${date}`)}`
        : `you meant to look again by ${f('passed')}, and that day is past`
    }. Until you say otherwise it holds.`,
  'ceiling-arms': (f) => `Arms overhead need a clear height of ${held(f, '2300 mm')}.`,
  'ceiling-load': (f) => `A load overhead needs a clear height of ${held(f, '2500 mm')}.`,
  'easier-in-kit': 'Every planned exercise needs an easier version this client may do with this kit.',
  'same-bell': (f) => `A bell in another unit than its sign-off is the same bell within ${held(f, '1 %')}.`,
  'sign-off-lapses': (f) => `A sign-off not used for ${held(f, '84 days')} must be seen again.`,
  'version-chosen': (f) =>
    `${begun(f('exercise') || 'another version')} in place of the ${f('programme') || 'one in the programme'}${sparing(f('cause'))}.`,
  'way-unlocks': (f) =>
    `${begun(f('exercise') || 'the exercise')} only like this: ${midway(f('way')) || 'in an easier way of its own'}${clause(f('caution'), sparingOf)}.`,
  'would-unlock': (f) =>
    `${begun(f('exercise') || 'this version')} ${clause(f('unlock: past'), (why) => `stays closed: ${sayPast(why)}`) || `opens ${sayOpening(f)}`}.`,
};
