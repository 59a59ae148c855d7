/** The rules of when sessions are and how long they take: their names, and what English says of each. */
import { both, clause, held, only, type RuleWords } from '../rule-words.js';

export const SESSION_RULES = [
  'between-exercises',
  'change-of-bell',
  'cool-down-older',
  'down-or-up',
  'easy-week-sets',
  'minutes-cap',
  'pause-seconds',
  'put-down',
  're-plating',
  'seconds-a-rep',
  'slow-lowering-seconds',
  'start-moved',
  'warm-up',
  'warm-up-older',
] as const;
export type SessionRuleName = (typeof SESSION_RULES)[number];

export const englishSession: Readonly<Record<SessionRuleName, RuleWords>> = {
  'between-exercises': only((f) => `From one exercise to the next: ${held(f, '20 s')}.`),
  'change-of-bell': only((f) => `Changing one bell for another: ${held(f, '15 s')}.`),
  'cool-down-older': both(
    'An older client, or one with blood pressure to mind, gets a cool-down.',
    'Take your time to cool down.',
  ),
  'down-or-up': only((f) => `Down to the floor, or up from it: ${held(f, '20 s')}.`),
  'easy-week-sets': both(
    'An easy week has fewer sets than the last work week.',
    'An easier week: fewer sets, on purpose.',
  ),
  'minutes-cap': only(
    (f) =>
      `Too long for the minutes there are${clause(f('minutes'), (minutes) => `: ${minutes} as written, ${f('cap')} to spend`)}.`,
  ),
  'pause-seconds': only((f) => `A pause at the bottom lasts at least ${held(f, '2 s')}.`),
  'put-down': only((f) => `Putting a load down and picking it up again: ${held(f, '5 s')} a set.`),
  're-plating': only((f) => `Changing the plates of a handle or bar: ${held(f, '60 s')}.`),
  'seconds-a-rep': only((f) => `A controlled rep takes ${held(f, '3 s')} where the tempo says nothing.`),
  'slow-lowering-seconds': only((f) => `A slow lowering takes at least ${held(f, '4 s')}.`),
  'start-moved': only(
    (f) =>
      `The weeks begin on the first training day${clause(f('first training day'), (date) => `, ${date}`)}, not on the start date${clause(f('starts'), (date) => `, ${date}`)}.`,
  ),
  'warm-up': both((f) => `The warm-up takes ${held(f, '5 minutes')}.`, 'Warm up every time.'),
  'warm-up-older': both(
    (f) => `An older client, or one with blood pressure to mind, warms up for ${held(f, '8 minutes')}.`,
    'Take your time to warm up.',
  ),
};
