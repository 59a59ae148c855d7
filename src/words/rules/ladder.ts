/** The rules of the ladder: their names, and what English says of each. */
import { both, clause, held, only, type RuleWords } from '../rule-words.js';

export const LADDER_RULES = [
  'ladder-counted',
  'ladder-earned',
  'ladder-easy',
  'ladder-easy-down',
  'ladder-gate',
  'ladder-gate-once',
  'ladder-held',
  'ladder-new-stage',
  'ladder-one-at-a-time',
  'ladder-top',
  'ladder-up',
] as const;
export type LadderRuleName = (typeof LADDER_RULES)[number];

export const englishLadder: Readonly<Record<LadderRuleName, RuleWords>> = {
  'ladder-counted': only('Sessions in which nothing may be made harder do not count towards the next step.'),
  'ladder-earned': both(
    (f) =>
      `The next step waits until this one has been done ${f('needed') || held(f, '2')} times running${clause(f('earned'), (n) => `; so far ${n}`)}.`,
    'Do this one well a few times before it gets harder.',
  ),
  'ladder-easy': both(
    'An easy week keeps the last dose, with fewer sets.',
    'An easier week: the same, but less of it.',
  ),
  'ladder-easy-down': both(
    (f) => `The sets could not fall, so the easy week goes ${held(f, '1')} step lower.`,
    'An easier week: one step back, on purpose.',
  ),
  'ladder-gate': both(
    'A new load or version comes next, once the step before it has been done as asked.',
    'Something new, if the sessions before went as planned.',
  ),
  'ladder-gate-once': only('One new load or version in a booklet; the next waits until you have seen how it went.'),
  'ladder-held': both(
    (f) => `Held back${clause(f('why'), (why) => ` (${why})`)}: nothing is made harder.`,
    'Held here for now, so that nothing gets harder.',
  ),
  'ladder-new-stage': only('No new load or version here: a caution is met, or only moderate work is planned.'),
  'ladder-one-at-a-time': only('A new load waits until the steps before it have been done with this one.'),
  'ladder-top': only(
    'Nothing further to go to: a longer range, a heavier load or a harder version would open the way.',
  ),
  'ladder-up': both('Done as asked, so one step up.', 'The last step went well, so this is a little more.'),
};
