/** The rules of when sessions are and how long they take: their names, and what English says of each. */
import { begun, both, clause, type Figure, held, only, type RuleWords } from '../rule-words.js';

export const SESSION_RULES = [
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
  'minutes-cap',
  'partner-apart',
  'pause-seconds',
  'put-down',
  'queue-slides',
  're-plating',
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

export const englishSession: Readonly<Record<SessionRuleName, RuleWords>> = {
  'between-exercises': only((f) => `From one exercise to the next: ${held(f, '20 s')}.`),
  'change-of-bell': only((f) => `Changing one bell for another: ${held(f, '15 s')}.`),
  'circuit-apart': both(
    (f) =>
      f('circuit') === ''
        ? 'The circuit’s order keeps hard grips apart, and hinges apart.'
        : `${clause(f('circuit'), begun)}: done one exercise at a time, since no order keeps hard grips or hinges apart.`,
    (f) =>
      f('circuit') === ''
        ? 'In this order your grip and your back rest in turn.'
        : 'One exercise at a time here, so that your grip and your back get their rest.',
  ),
  'circuit-bells': both(
    (f) =>
      f('circuit') === ''
        ? 'Held to the loads the circuit begins with, so that two pieces of kit are enough for all its rounds.'
        : `${clause(f('circuit'), begun)}: done one exercise at a time, since it needs more than ${f('most')} pieces of kit in hand, or other plates in between.`,
    (f) =>
      f('circuit') === ''
        ? 'What you begin with is enough for all the rounds.'
        : 'One exercise at a time here: it saves you running between bells.',
  ),
  'cool-down-older': both(
    (f) => `The cool-down takes ${f('minutes') || held(f, '5 minutes')}${longer(f)}.`,
    'Take your time to cool down.',
  ),
  'down-or-up': only((f) => `Down to the floor, or up from it: ${held(f, '20 s')}.`),
  'easy-set': only((f) => `A set of a warm-up or cool-down takes ${held(f, '30 s')} a side.`),
  'easy-week-sets': both(
    'An easy week has fewer sets than the last work week.',
    'An easier week: fewer sets, on purpose.',
  ),
  'fast-first': both(
    'Fast work comes first, before the grip tires.',
    'Fast work comes first, while your grip is fresh.',
  ),
  'floor-last': both(
    'Floor work comes together, so that there are the fewest trips down and up.',
    'Floor work comes together, so you get down and up less often.',
  ),
  'minutes-cap': only(
    (f) =>
      `Too long for the minutes there are${clause(f('minutes'), (minutes) => `: ${minutes} as written, ${f('cap')} to spend`)}.`,
  ),
  'pause-seconds': only((f) => `A pause at the bottom lasts at least ${held(f, '2 s')}.`),
  'put-down': only((f) => `Putting a load down and picking it up again: ${held(f, '5 s')} a set.`),
  'queue-slides': both(
    (f) =>
      `A break moves sessions on${clause(f('from'), (from) => `, from ${from}`)}${clause(f('until'), (until) => ` to ${until}`)}: the next one comes after it, and the rest follow in order.`,
    'After a break you carry on where you stopped: nothing to catch up.',
  ),
  're-plating': only((f) => `Changing the plates of a handle or bar: ${held(f, '60 s')}.`),
  'seconds-a-metre': only((f) => `Carrying or travelling a metre takes ${held(f, '1.5 s')}, turns included.`),
  'seconds-a-rep': only((f) => `A controlled rep takes ${held(f, '3 s')} where the tempo says nothing.`),
  'seconds-a-round': only((f) => `One round of what an exercise describes takes ${held(f, '60 s')}.`),
  'seconds-a-swing': only((f) => `One rep of swing work takes ${held(f, '2.7 s')}, its pauses included.`),
  'sessions-lost': only(
    (f) =>
      `The block has no day left for every session${clause(f('sessions'), (count) => `: ${count} left out at its end`)}. Nothing is crammed in.`,
  ),
  'short-minutes': both(
    (f) => `A short version takes at most ${held(f, '10 minutes')}, and counts as done.`,
    'The short version counts as done.',
  ),
  'short-warm-up': only((f) => `A short version keeps at most ${held(f, '3 minutes')} of the warm-up.`),
  'slow-lowering-seconds': only((f) => `A slow lowering takes at least ${held(f, '4 s')}.`),
  'partner-apart': only(
    'Two who train together are planned apart, each from their own page. They cannot both hold the same bell at once: give them different times, or let them take turns set by set and count the wait.',
  ),
  'start-moved': only(
    (f) =>
      `The weeks begin on the first training day${clause(f('first training day'), (date) => `, ${date}`)}, not on the start date${clause(f('starts'), (date) => `, ${date}`)}.`,
  ),
  'warm-up': both((f) => `The warm-up takes ${f('minutes') || held(f, '5 minutes')}.`, 'Warm up every time.'),
  'warm-up-most': only((f) => `A warm-up takes at most ${held(f, '8 minutes')}.`),
  'warm-up-older': both(
    (f) => `The warm-up takes ${f('minutes') || held(f, '8 minutes')}${longer(f)}.`,
    'Take your time to warm up.',
  ),
  'warm-up-older-most': only(
    (f) =>
      `For an older client, or one who is not to hold the breath, a warm-up takes at most ${held(f, '10 minutes')}.`,
  ),
  'warm-up-rounds': only((f) => `A warm-up or cool-down goes at most ${held(f, '3 rounds')} through its exercises.`),
  'warm-up-standing': only(
    'Older clients, those who fell, and those with a caution on the floor or the head down warm up standing.',
  ),
};
