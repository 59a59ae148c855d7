/** The rules of the ladder: their names, and what English says of each. */
import { both, clause, type Figure, held, heldFor, only, type RuleWords } from '../rule-words.js';

export const LADDER_RULES = [
  'dead-stop-reps',
  'hold-most',
  'ladder-counted',
  'ladder-earned',
  'ladder-easy',
  'ladder-easy-down',
  'ladder-gate',
  'ladder-gate-once',
  'ladder-held',
  'ladder-new-stage',
  'ladder-one-at-a-time',
  'ladder-start-lightest',
  'ladder-start-main-bell',
  'ladder-start-role',
  'ladder-start-signed-off',
  'ladder-start-tested',
  'ladder-step-grams',
  'ladder-step-share',
  'ladder-top',
  'ladder-up',
  'ladder-weeks',
  'mobility-fixed',
  'next-up-first',
  'next-up-passed',
  'rung-metres',
  'rung-minutes',
  'rung-reps',
  'rung-seconds',
  'rung-signal-reps',
  'signal-minutes-first',
  'signal-reps-first',
  'stages-ahead',
  'swing-cap',
  'talk-limit',
  'talk-sentences',
] as const;
export type LadderRuleName = (typeof LADDER_RULES)[number];

const times = (n: string): string => ({ '1': 'once', '2': 'twice' })[n] ?? `${n} times`;
const soFar = (n: string): string => (n === '0' ? '; not once so far' : `; so far ${times(n)}`);

/** With which load, where one is known. */
const withLoad = (f: Figure): string => clause(f('load'), (load) => ` (${load})`);

export const englishLadder: Readonly<Record<LadderRuleName, RuleWords>> = {
  'dead-stop-reps': both(
    (f) => `A fast lift that is new begins with ${held(f, '5')} reps at most, each from a dead stop.`,
    'New to you: begin every rep from a dead stop.',
  ),
  'ladder-counted': only('Sessions in which nothing may be made harder do not count towards the next step.'),
  'ladder-earned': both(
    (f) =>
      `The next step waits until this one has been done ${times(f('needed') || held(f, '2'))} running${clause(f('earned'), soFar)}.`,
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
    (f) => `Held back${clause(f('why'), heldFor)}: nothing is made harder for now.`,
    'Held here for now, so that nothing gets harder.',
  ),
  'ladder-new-stage': only(
    (f) =>
      `No new load or version here: ${clause(f('caution'), (what) => `a caution is met (${what})`) || 'a caution is met, or only moderate work is planned'}.`,
  ),
  'ladder-one-at-a-time': only('A new load waits until the steps before it have been done with this one.'),
  'ladder-start-lightest': only(
    (f) => `Nothing is known of this one yet, so it begins with the lightest there is${withLoad(f)}: please look.`,
  ),
  'ladder-start-main-bell': only((f) => `Not tested, so it begins with the main bell of the movement${withLoad(f)}.`),
  'ladder-start-role': only((f) => `It begins with the bell that the row asks for${withLoad(f)}.`),
  'ladder-start-signed-off': only(
    (f) =>
      `Not tested, so it begins with the bell it was signed off with${withLoad(f)}: too light teaches the wrong thing.`,
  ),
  'ladder-start-tested': only((f) => `It begins with the load last tested, or the heaviest below it${withLoad(f)}.`),
  'ladder-step-grams': only((f) => `A next load may always be ${held(f, '4 kg')} heavier.`),
  'ladder-step-share': only(
    (f) => `A next load is heavier by ${held(f, '50 %')} at most, or by one step of the bells.`,
  ),
  'ladder-top': only(
    'Nothing further to go to: a longer range, a heavier load or a harder version would open the way.',
  ),
  'ladder-up': both('Done as asked, so one step up.', 'The last step went well, so this is a little more.'),
  'ladder-weeks': only(
    (f) =>
      `A new load or version waits until the step before it was done in ${f('needed') || held(f, '2')} different weeks.`,
  ),
  'mobility-fixed': both('Mobility work stays as it is.', 'This one stays the same, on purpose.'),
  'next-up-first': only((f) => `Reps with the next bell up begin with ${held(f, '50 %')} of those in the programme.`),
  'hold-most': only(
    (f) =>
      `No hold is kept up for more than ${held(f, '120 s')} in one set${clause(f('written'), (long) => `; ${long} is written`)}. More sets, a heavier load or a harder version come first.`,
  ),
  'next-up-passed': only('The next bell up is not in the house, or not signed off, so only the main one is planned.'),
  'rung-metres': only((f) => `Metres climb by ${held(f, '5')} at a time.`),
  'rung-minutes': only((f) => `Work by the signal climbs by ${held(f, '2')} minutes at a time.`),
  'rung-reps': only((f) => `Reps climb by ${held(f, '2')} at a time.`),
  'rung-seconds': only((f) => `Seconds climb by ${held(f, '5')} at a time.`),
  'rung-signal-reps': only((f) => `Reps at every signal climb by ${held(f, '1')} at a time, in the same minutes.`),
  'signal-minutes-first': only((f) => `New work by the signal begins with ${held(f, '60 %')} of the minutes.`),
  'signal-reps-first': only((f) => `Work by the signal begins with ${held(f, '75 %')} of the reps.`),
  'stages-ahead': only((f) => `Up to ${held(f, '2')} loads or versions ahead are listed; one at most is opened.`),
  'swing-cap': both(
    (f) => `No more than ${f('most') || held(f, '15')} fast reps in a set: after that they lose their snap.`,
    'Short sets on purpose, so that every rep stays sharp.',
  ),
  'talk-limit': both('The breath works no harder than this plan allows.', (f) =>
    f('talk') === 'phrases'
      ? 'Only as hard as you can still say short phrases.'
      : 'Only as hard as you can still say whole sentences.',
  ),
  'talk-sentences': both(
    'The row does not say how hard, so whole sentences can still be said.',
    'Only as hard as you can still say whole sentences.',
  ),
};
