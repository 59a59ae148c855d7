/** The rules of when sessions are, how long they take and how a phone leads through them: their names, and what English says of each. */
import { begun, clause, type Figure, held, type Saying } from '../rule-words.js';

export const SESSION_RULES = [
  'away-said',
  'between-exercises',
  'change-of-bell',
  'circuit-apart',
  'circuit-bells',
  'cool-down-older',
  'down-or-up',
  'easy-set',
  'easy-week-sets',
  'fast-first',
  'floor-last',
  'into-place',
  'minutes-cap',
  'partner-apart',
  'pause-seconds',
  'put-down',
  'queue-slides',
  're-plating',
  'rest-longer',
  'seconds-a-metre',
  'seconds-a-rep',
  'seconds-a-round',
  'seconds-a-swing',
  'sessions-lost',
  'short-minutes',
  'short-warm-up',
  'slow-lowering-seconds',
  'start-moved',
  'warm-up',
  'warm-up-most',
  'warm-up-older',
  'warm-up-older-most',
  'warm-up-rounds',
  'warm-up-standing',
] as const;
export type SessionRuleName = (typeof SESSION_RULES)[number];

/** Why one is longer than others': the ground that holds. */
const GROUNDS: Readonly<Record<string, string>> = {
  age: 'for the client’s age',
  'blood pressure': 'for blood pressure',
  pregnancy: 'in pregnancy',
  birth: 'after a birth',
};
const longer = (f: Figure): string =>
  clause(f('because'), (grounds) => {
    const said = grounds.split(', ').map((one) => GROUNDS[one] ?? `for the caution on holding the breath (${one})`);
    return `, longer ${said.join(' and ')}`;
  });

export const englishSession: Readonly<Record<SessionRuleName, Saying>> = {
  'away-said': (f) =>
    `Once the last mark is ${held(f, '7 days')} old and a session was due, the phone says how long it has been.`,
  'between-exercises': (f) => `From one exercise to the next: ${held(f, '20 s')}.`,
  'change-of-bell': (f) => `Changing one bell for another: ${held(f, '15 s')}.`,
  'circuit-apart': (f) =>
    f('circuit') === ''
      ? 'The circuit’s order keeps hard grips apart, and hinges apart.'
      : `${clause(f('circuit'), begun)}: done one exercise at a time, since no order keeps hard grips or hinges apart.`,
  'circuit-bells': (f) =>
    f('circuit') === ''
      ? 'Held to the loads the circuit begins with, so that two pieces of kit are enough for all its rounds.'
      : `${clause(f('circuit'), begun)}: done one exercise at a time, since it needs more than ${f('most')} pieces of kit in hand, or other plates in between.`,
  'cool-down-older': (f) => `The cool-down takes ${f('minutes') || held(f, '5 minutes')}${longer(f)}.`,
  'down-or-up': (f) => `Down to the floor, or up from it: ${held(f, '20 s')}.`,
  'easy-set': (f) => `A set of a warm-up or cool-down takes ${held(f, '30 s')} a side.`,
  'easy-week-sets': 'An easy week has fewer sets than the last work week.',
  'fast-first': 'Fast work comes first, before the grip tires.',
  'floor-last': 'Floor work comes together, so that there are the fewest trips down and up.',
  'into-place': (f) => `A hold on the phone begins ${held(f, '5 s')} after the tap, to get into place.`,
  'minutes-cap': (f) =>
    `Too long for the minutes there are${clause(f('minutes'), (minutes) => `: ${minutes} as written, ${f('cap')} to spend`)}.`,
  'pause-seconds': (f) => `A pause at the bottom lasts at least ${held(f, '2 s')}.`,
  'put-down': (f) => `Putting a load down and picking it up again: ${held(f, '5 s')} a set.`,
  'queue-slides': (f) =>
    `A break moves sessions on${clause(f('from'), (from) => `, from ${from}`)}${clause(f('until'), (until) => ` to ${until}`)}: the next one comes after it, and the rest follow in order.`,
  're-plating': (f) => `Changing the plates of a handle or bar: ${held(f, '60 s')}.`,
  'rest-longer': (f) => `One tap makes a rest on the phone ${held(f, '30 s')} longer.`,
  'seconds-a-metre': (f) => `Carrying or travelling a metre takes ${held(f, '1.5 s')}, turns included.`,
  'seconds-a-rep': (f) => `A controlled rep takes ${held(f, '3 s')} where the tempo says nothing.`,
  'seconds-a-round': (f) => `One round of what an exercise describes takes ${held(f, '60 s')}.`,
  'seconds-a-swing': (f) => `One rep of swing work takes ${held(f, '2.7 s')}, its pauses included.`,
  'sessions-lost': (f) =>
    `The block has no day left for every session${clause(f('sessions'), (count) => `: ${count} left out at its end`)}. Nothing is crammed in.`,
  'short-minutes': (f) => `A short version takes at most ${held(f, '10 minutes')}, and counts as done.`,
  'short-warm-up': (f) => `A short version keeps at most ${held(f, '3 minutes')} of the warm-up.`,
  'slow-lowering-seconds': (f) => `A slow lowering takes at least ${held(f, '4 s')}.`,
  'partner-apart':
    'Two who train together are planned apart, each from their own page. They cannot both hold the same bell at once: give them different times, or let them take turns set by set and count the wait.',
  'start-moved': (f) =>
    `The weeks begin on the first training day${clause(f('first training day'), (date) => `, ${date}`)}, not on the start date${clause(f('starts'), (date) => `, ${date}`)}.`,
  'warm-up': (f) => `The warm-up takes ${f('minutes') || held(f, '5 minutes')}.`,
  'warm-up-most': (f) => `A warm-up takes at most ${held(f, '8 minutes')}.`,
  'warm-up-older': (f) => `The warm-up takes ${f('minutes') || held(f, '8 minutes')}${longer(f)}.`,
  'warm-up-older-most': (f) =>
    `For an older client, or one who is not to hold the breath, a warm-up takes at most ${held(f, '10 minutes')}.`,
  'warm-up-rounds': (f) => `A warm-up or cool-down goes at most ${held(f, '3 rounds')} through its exercises.`,
  'warm-up-standing':
    'Older clients, those who fell, and those with a caution on the floor or the head down warm up standing.',
};
