/** English for the rules outside the walk. */
import { BODY_PARTS } from '../model/exercise.js';
import type { BlockRuleName } from './reason-words.js';
import { both, clause, type Figure, only, type RuleWords } from './rule-words.js';

/** The rule's own value where the reason carries it. */
const held = (f: Figure, otherwise: string): string => f('value') || otherwise;

/** What the programme asked for, where a floor stands above it. */
const written = (f: Figure): string => clause(f('programme'), (n) => ` (the programme asks for ${n})`);

/** What another version was chosen for. */
const sparing = (cause: string): string =>
  BODY_PARTS.some((part) => part === cause)
    ? `, to spare the ${cause}`
    : clause(cause, () => `, the easier one for ${cause}`);

const begun = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

export const englishBlock: Readonly<Record<BlockRuleName, RuleWords>> = {
  'adult-from': only((f) => `Nobody under ${held(f, '18')} is planned for.`),
  'between-exercises': only((f) => `From one exercise to the next: ${held(f, '20 s')}.`),
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
  'change-of-bell': only((f) => `Changing one bell for another: ${held(f, '15 s')}.`),
  'circuit-reserve': both(
    'In a circuit one more rep is left in reserve: the next row comes before the breath is back.',
    'Turn about is tiring, so stop one rep sooner.',
  ),
  'clearance-holds': only('A clearance must reach to the end of the block, and be no older than a year by then.'),
  'cool-down-older': both(
    'An older client, or one with blood pressure to mind, gets a cool-down.',
    'Take your time to cool down.',
  ),
  'down-or-up': only((f) => `Down to the floor, or up from it: ${held(f, '20 s')}.`),
  'easier-in-kit': only('Every planned exercise needs an easier version this client may do with this kit.'),
  'easy-week-sets': both(
    'An easy week has fewer sets than the last work week.',
    'An easier week: fewer sets, on purpose.',
  ),
  'feeler-rise': both(
    'The feeler set finds the load; its table leads one load above the one felt, at most.',
    'Your feeler set finds the load, so nobody has to guess.',
  ),
  'first-weeks': only((f) => `The first ${held(f, '2 weeks')} of a first block are kept gentle.`),
  'floor-alone': both(
    (f) => `Training alone: never fewer than ${f('floor') || held(f, '2')} in reserve${written(f)}.`,
    'At home you always stop with good reps left.',
  ),
  'floor-first-weeks': both(
    (f) => `First weeks of a first block: never fewer than ${f('floor') || held(f, '4')} in reserve${written(f)}.`,
    'The first two weeks are gentle, on purpose.',
  ),
  'floor-novice': both(
    (f) => `Still new to training: never fewer than ${f('floor') || held(f, '3')} in reserve${written(f)}.`,
    'New to this: stop while it still looks good.',
  ),
  'floor-older': both(
    (f) => `From 65: never fewer than ${f('floor') || held(f, '3')} in reserve${written(f)}.`,
    'Stop while it still looks good.',
  ),
  'gain-cautioned': only(
    (f) =>
      `A caution is met${clause(f('caution'), (what) => ` (${what})`)}${clause(f('met by'), (name) => ` by the ${name}`)}: no gain in strength is counted on here.`,
  ),
  'gain-novice': only((f) => `A novice is taken to gain ${f('gain') || held(f, '1 %')} in a work week.`),
  'gain-trained': only((f) => `A trained client is taken to gain ${f('gain') || held(f, '0.5 %')} in a work week.`),
  'minutes-cap': only(
    (f) =>
      `Too long for the minutes there are${clause(f('minutes'), (minutes) => `: ${minutes} as written, ${f('cap')} to spend`)}.`,
  ),
  'new-movement-lighter': both(
    (f) =>
      `A movement new to the client starts one load lighter than ${clause(f('relative'), (name) => `what the ${name} shows`) || 'its relative would allow'}.`,
    'New to you, so it starts one load lighter.',
  ),
  'older-from': only((f) => `From ${held(f, '65')} a client counts as older.`),
  'one-side-tested': only(
    (f) =>
      `Only one side was tested${clause(f('untested'), (side) => `, not the ${side}`)}: a weak estimate until both are.`,
  ),
  'pause-seconds': only((f) => `A pause at the bottom lasts at least ${held(f, '2 s')}.`),
  'put-down': only((f) => `Putting a load down and picking it up again: ${held(f, '5 s')} a set.`),
  're-plating': only((f) => `Changing the plates of a handle or bar: ${held(f, '60 s')}.`),
  'rpe-to-reserve': only('Reps in reserve are ten less the rating of perceived exertion.'),
  'screening-holds': only((f) => `Screening answers older than ${held(f, '365 days')} are asked again.`),
  'seconds-a-rep': only((f) => `A controlled rep takes ${held(f, '3 s')} where the tempo says nothing.`),
  'side-gap-told': both(
    (f) =>
      `The sides differ${clause(f('gap'), (gap) => ` by ${gap}`)}${clause(f('weaker'), (side) => `; the ${side} is the weaker`)}. Both do what the weaker can.`,
    'Your weaker side goes first and sets the number for both.',
  ),
  'side-gap-why': only(
    (f) => `The sides differ${clause(f('gap'), (gap) => ` by ${gap}`)}, which is a lot. Ask why before you load it.`,
  ),
  'sign-off-lapses': only((f) => `A sign-off not used for ${held(f, '84 days')} must be seen again.`),
  'slow-lowering-seconds': only((f) => `A slow lowering takes at least ${held(f, '4 s')}.`),
  'start-moved': only(
    (f) =>
      `The weeks begin on the first training day${clause(f('first training day'), (date) => `, ${date}`)}, not on the start date${clause(f('starts'), (date) => `, ${date}`)}.`,
  ),
  'tempo-slow-lowering': only((f) => `A slow lowering leaves ${held(f, '80 %')} of the reps.`),
  'tempo-slow-with-a-pause': only((f) => `A slow lowering and a pause leave ${held(f, '70 %')} of the reps.`),
  'version-chosen': both(
    (f) =>
      `${begun(f('exercise') || 'another version')} in place of the ${f('programme') || 'one in the programme'}${sparing(f('cause'))}.`,
    (f) => `Chosen for you in place of the ${f('programme') || 'usual one'}.`,
  ),
  'warm-up': both((f) => `The warm-up takes ${held(f, '5 minutes')}.`, 'Warm up every time.'),
  'warm-up-load': both(
    'One lighter set comes before the first heavy one, at up to three quarters of its load.',
    'One lighter set first, to get the feel.',
  ),
  'warm-up-older': both(
    (f) => `An older client, or one with blood pressure to mind, warms up for ${held(f, '8 minutes')}.`,
    'Take your time to warm up.',
  ),
  'weaker-side': both(
    (f) =>
      `The ${f('weaker') || 'weaker'} side is the weaker${clause(f('gap'), (gap) => `, by ${gap}`)}: both do what it can, and it goes first.`,
    (f) => `Your ${f('weaker') || 'weaker'} side goes first and sets the number for both.`,
  ),
  'weak-reserve': only((f) => `A reserve above ${held(f, '5')} is a rough guess, so the test is weak evidence.`),
};
