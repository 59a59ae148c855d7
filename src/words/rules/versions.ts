/** The rules of versions, cautions and sign-offs: their names, and what English says of each. */
import { BODY_PARTS } from '../../model/exercise.js';
import { begun, both, clause, held, only, type RuleWords } from '../rule-words.js';

export const VERSION_RULES = [
  'caution-in-block',
  'ceiling-arms',
  'ceiling-load',
  'easier-in-kit',
  'sign-off-lapses',
  'version-chosen',
] as const;
export type VersionRuleName = (typeof VERSION_RULES)[number];

/** What another version was chosen for. */
const sparing = (cause: string): string =>
  BODY_PARTS.some((part) => part === cause)
    ? `, to spare the ${cause}`
    : clause(cause, () => `, the easier one for ${cause}`);

export const englishVersion: Readonly<Record<VersionRuleName, RuleWords>> = {
  'caution-in-block': only(
    (f) =>
      `${begun(f('degree') || 'a caution')}${clause(f('caution'), (what) => ` (${what})`)}: counted for the whole block, though ${
        [
          clause(f('from'), (date) => `it begins on ${date}`),
          clause(f('until'), (date) => `it ends on ${date}`),
          clause(f('review'), (date) => `you meant to look again by ${date}`),
        ]
          .filter((part) => part !== '')
          .join(' and ') || 'its dates fall inside it'
      }.`,
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
};
