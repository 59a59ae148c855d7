/** The rules of the ladder: their names, and what English says of each. */
import { clause, type Figure, held, heldFor, type Saying } from '../rule-words.js';

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

export const englishLadder: Readonly<Record<LadderRuleName, Saying>> = {
  'dead-stop-reps': (f) => `A fast lift that is new begins with ${held(f, '5')} reps at most, each from a dead stop.`,
  'ladder-counted': 'Sessions in which nothing may be made harder do not count towards the next step.',
  'ladder-earned': (f) =>
    `The next step waits until this one has been done ${times(f('needed') || held(f, '2'))} running${clause(f('earned'), soFar)}.`,
  'ladder-easy': 'An easy week keeps the last dose, with fewer sets.',
  'ladder-easy-down': (f) => `The sets could not fall, so the easy week goes ${held(f, '1')} step lower.`,
  'ladder-gate': 'A new load or version comes next, once the step before it has been done as asked.',
  'ladder-gate-once': 'One new load or version in a booklet; the next waits until you have seen how it went.',
  'ladder-held': (f) => `Held back${clause(f('why'), heldFor)}: nothing is made harder for now.`,
  'ladder-new-stage': (f) =>
    `No new load or version here: ${clause(f('caution'), (what) => `a caution is met (${what})`) || 'a caution is met, or only moderate work is planned'}.`,
  'ladder-one-at-a-time': 'A new load waits until the steps before it have been done with this one.',
  'ladder-start-lightest': (f) =>
    `Nothing is known of this one yet, so it begins with the lightest there is${withLoad(f)}: please look.`,
  'ladder-start-main-bell': (f) => `Not tested, so it begins with the main bell of the movement${withLoad(f)}.`,
  'ladder-start-role': (f) => `It begins with the bell that the row asks for${withLoad(f)}.`,
  'ladder-start-signed-off': (f) =>
    `Not tested, so it begins with the bell it was signed off with${withLoad(f)}: too light teaches the wrong thing.`,
  'ladder-start-tested': (f) => `It begins with the load last tested, or the heaviest below it${withLoad(f)}.`,
  'ladder-step-grams': (f) => `A next load may always be ${held(f, '4 kg')} heavier.`,
  'ladder-step-share': (f) => `A next load is heavier by ${held(f, '50 %')} at most, or by one step of the bells.`,
  'ladder-top': 'Nothing further to go to: a longer range, a heavier load or a harder version would open the way.',
  'ladder-up': 'Done as asked, so one step up.',
  'ladder-weeks': (f) =>
    `A new load or version waits until the step before it was done in ${f('needed') || held(f, '2')} different weeks.`,
  'mobility-fixed': 'Mobility work stays as it is.',
  'next-up-first': (f) => `Reps with the next bell up begin with ${held(f, '50 %')} of those in the programme.`,
  'hold-most': (f) =>
    `No hold is kept up for more than ${held(f, '120 s')} in one set${clause(f('written'), (long) => `; ${long} is written`)}. More sets, a heavier load or a harder version come first.`,
  'next-up-passed': 'The next bell up is not in the house, or not signed off, so only the main one is planned.',
  'rung-metres': (f) => `Metres climb by ${held(f, '5')} at a time.`,
  'rung-minutes': (f) => `Work by the signal climbs by ${held(f, '2')} minutes at a time.`,
  'rung-reps': (f) => `Reps climb by ${held(f, '2')} at a time.`,
  'rung-seconds': (f) => `Seconds climb by ${held(f, '5')} at a time.`,
  'rung-signal-reps': (f) => `Reps at every signal climb by ${held(f, '1')} at a time, in the same minutes.`,
  'signal-minutes-first': (f) => `New work by the signal begins with ${held(f, '60 %')} of the minutes.`,
  'signal-reps-first': (f) => `Work by the signal begins with ${held(f, '75 %')} of the reps.`,
  'stages-ahead': (f) => `Up to ${held(f, '2')} loads or versions ahead are listed; one at most is opened.`,
  'swing-cap': (f) => `No more than ${f('most') || held(f, '15')} fast reps in a set: after that they lose their snap.`,
  'talk-limit': 'The breath works no harder than this plan allows.',
  'talk-sentences': 'The row does not say how hard, so whole sentences can still be said.',
};
