/** English for why the work is what it is, as a client reads it. No sentence is over 12 words. */
import type { WorkRuleTold } from './client-reason-words.js';
import { cautionWords } from './english-cautions.js';
import { clause, type Saying, sentence } from './rule-words.js';

const oneSide = (side: string): string => (side === 'left' || side === 'right' ? side : '');

export const englishReasonsWork: Readonly<Record<WorkRuleTold, Saying>> = {
  'walk-asked': 'As many as you can do and still stop fresh.',
  'walk-back-up': 'Back up to the load you had before.',
  'walk-big-step': 'Two good sessions at the top earn the next load.',
  'walk-easier-version': 'An easier version for now, done well.',
  'walk-easy-asked': 'An easier week, on purpose.',
  'walk-easy-least': 'An easier week, on purpose.',
  'walk-easy-one-fewer': 'An easier week: one rep fewer, on purpose.',
  'walk-easy-week': 'An easier week, on purpose.',
  'walk-fewer-reps': 'Fewer reps for now, so that each one is good.',
  'walk-fewest': 'A careful start at the bottom of the range.',
  'walk-floor': 'At home you always stop with good reps left.',
  'walk-harder-version': 'Two good sessions at the top earn the harder version.',
  'walk-held': 'We stay here for now, and do it well.',
  'walk-held-reps': 'No more than last time, for now.',
  'walk-normal-tempo': 'At an even pace for now, so that enough is left.',
  'walk-lower-load': 'A lighter load, so that every rep is good.',
  'walk-new-is-lighter': 'New to you, so it starts lighter.',
  'walk-range': 'The most we ask for here.',
  'walk-slower': 'Slower on the way down makes the same load harder.',
  'walk-small-step': 'You earned the next load up.',
  'walk-tempo-reset': 'A new load: back to the normal pace.',
  'walk-trial': 'One set to get to know the next load.',
  'walk-version-trial': 'One set to get to know the harder version.',
  'walk-volume': 'A little more than before, never a leap.',
  'begin-lighter': (f) =>
    f('by') === ''
      ? 'For now you do an easier version: the bell at home is a lot.'
      : 'For now you do an easier version, so that some good reps stay in hand.',
  'begin-tested': 'You begin with the one your coach has seen you do.',
  'circuit-reserve': 'One set follows hard on the other, so stop one rep sooner.',
  'feeler-rise': (f) => `Your feeler set finds the ${f('finds') || 'load'}, so nobody has to guess.`,
  'floor-alone': 'At home you always stop with good reps left.',
  'floor-cautioned': 'Stop while it still looks good.',
  'floor-first-weeks': 'The first two weeks are gentle, on purpose.',
  'floor-novice': 'New to this: stop while it still looks good.',
  'floor-older': 'Stop while it still looks good.',
  'floor-signal': 'At each signal you leave as many good reps as you do.',
  'lighter-bell': (f) =>
    `Your lighter one${clause(f('load'), (load) => `, ${load}`)}: this is for crisp work, not heavy work.`,
  'main-bell': (f) => `It begins with the one you know${clause(f('main'), (main) => `: ${main}`)}.`,
  'new-movement-lighter': 'New to you, so it starts one load lighter.',
  'next-up-bell': (f) => `This one goes a step up from your ${f('main') || 'usual load'}: few reps, each of them good.`,
  'percent-of-maximum': 'Kept light enough to move well.',
  'side-gap-own-bell': (f) => `Your ${f('side') || 'stronger'} side keeps its own load for the first sets.`,
  'side-gap-told': 'Your weaker side goes first and sets the number for both.',
  'unequal-hands': 'Change hands after every set: one is heavier.',
  'warm-up-load': 'One lighter set first, to get the feel.',
  'weaker-side': (f) => `Your ${f('weaker') || 'weaker'} side goes first and sets the number for both.`,
  'weakest-part': 'Set by the part that is hardest for you.',
  'dead-stop-reps': 'New to you: begin every rep from a dead stop.',
  'ladder-earned': 'Do this one well a few times before it gets harder.',
  'ladder-easy': 'An easier week: the same, but less of it.',
  'ladder-easy-down': 'An easier week: one step back, on purpose.',
  'ladder-gate': 'Something new, if the sessions before went as planned.',
  'ladder-held': 'Held here for now, so that nothing gets harder.',
  'ladder-up': 'The last step went well, so this is a little more.',
  'mobility-fixed': 'This one stays the same, on purpose.',
  'swing-cap': 'Short sets on purpose, so that every rep stays sharp.',
  'talk-limit': (f) =>
    f('talk') === 'phrases'
      ? 'Only as hard as you can still say short phrases.'
      : 'Only as hard as you can still say whole sentences.',
  'talk-sentences': 'Only as hard as you can still say whole sentences.',
  'circuit-apart': (f) =>
    f('circuit') === ''
      ? 'In this order your grip and your back rest in turn.'
      : 'One exercise at a time here, so that your grip and your back get their rest.',
  'circuit-bells': (f) =>
    f('circuit') === ''
      ? 'What you begin with is enough for all the rounds.'
      : 'One exercise at a time here: it saves you running between bells.',
  'cool-down-older': 'Take your time to cool down.',
  'easy-week-sets': 'An easier week: fewer sets, on purpose.',
  'fast-first': 'Fast work comes first, while your grip is fresh.',
  'floor-last': 'Floor work comes together, so you get down and up less often.',
  'queue-slides': 'After a break you carry on where you stopped: nothing to catch up.',
  'short-minutes': 'The short version counts as done.',
  'warm-up': 'Warm up every time.',
  'warm-up-older': 'Take your time to warm up.',
  'caution-met': (f) => sentence(f('say')) || cautionWords(f('caution'), oneSide(f('side')), f('kept') !== 'kept'),
  'version-chosen': (f) => `Chosen for you in place of the ${f('programme') || 'usual one'}.`,
  'way-unlocks': (f) => `Only like this for you: ${f('way') || 'the easier way'}.`,
};
