/** English for the rules of the walk: one sentence for the coach, and one for the client where it helps. */
import type { TellingName, WalkRuleName } from './reason-words.js';
import { clause, type Figure, heldFor, type Saying } from './rule-words.js';

/** `12.6 to failure`, and what is left of it where that is a little less than asked for. */
const toFailure = (f: Figure): string =>
  clause(
    f('predicted'),
    (n) =>
      ` (${n} to failure${Number(f('reserve')) < Number(f('asked')) ? `: ${f('reserve')} left, near enough` : ''})`,
  );

/** `(earned 1 of 2)`. */
const earned = (f: Figure): string => clause(f('earned'), (n) => ` (earned ${n} of ${f('needed')})`);

/** What whole sets there would need, in reps to failure. */
const needed = (f: Figure): string =>
  clause(
    f('bottom'),
    (n) => ` ${Number(n) + Number(f('floor'))} to failure: the range begins at ${n}, and ${f('floor')} must be left`,
  ) || ' more reps to failure: the range must leave the least reserve allowed';

export const englishWalk: Readonly<Record<WalkRuleName, Saying>> = {
  'walk-asked': (f) => `The most reps in the range that leave the ${f('asked') || 'reserve'} asked for${toFailure(f)}.`,
  'walk-back-up': 'Back up to the load held before: the bottom of the range fits there again.',
  'walk-below-tested': (f) =>
    `Only a load held before is won back without earning it${clause(f('held'), (held) => `: it is ${held} now, and began at ${f('tested')}`)}.`,
  'walk-big-step': (f) =>
    `${f('load') || 'The next load'} is a big step up${clause(f('held'), (held) => ` from ${held}`)}: taken only if it is earned, with what to do otherwise beside it${toFailure(f)}.`,
  'walk-bodyweight-version-first': 'A bodyweight row comes to a harder version before slower tempi.',
  'walk-bottom-and-asked': (f) =>
    `Won back only when the bottom of the range leaves the reserve asked for there${clause(f('predicted'), (n) => ` (${n} to failure; the range begins at ${f('bottom')}, and ${f('asked')} are asked for)`)}.`,
  'walk-bottom-and-floor': (f) => `Whole sets would need${needed(f)}.`,
  'walk-derived': 'Nothing can be predicted there: no body mass on file, or no known ratio between the two versions.',
  'walk-earned-at-top': 'Only sets at the top of the range earn a step.',
  'walk-earned-once': (f) =>
    `Even a small step takes one session at the top of the range with the reserve asked for${earned(f)}.`,
  'walk-earned-reserve': 'Only sets that leave the reserve asked for, or near enough, earn a step.',
  'walk-earned-reset': 'A changed load, tempo or version starts with nothing earned.',
  'walk-earned-twice': (f) =>
    `A big step or a harder version takes two sessions running at the top of the range, or a good trial set${earned(f)}.`,
  'walk-easier-version':
    'No load of this version leaves the least reserve allowed: the nearest easier version that does.',
  'walk-easy-asked': (f) =>
    `An easier week: the most reps that leave the ${f('asked') || 'reserve'} asked for${toFailure(f)}.`,
  'walk-easy-cap': 'No more reps in an easy week than in the last work week.',
  'walk-easy-depth': 'An easy set goes at most two reps below the range.',
  'walk-easy-least': 'Even the fewest reps of this easier week cannot leave the reserve asked for: those are planned.',
  'walk-easy-one-fewer': 'No set could be taken away in the easy week, so a rep is.',
  'walk-easy-week':
    'An easier week: the load and version of the last work week again, with fewer reps and more in reserve.',
  'walk-fewer-reps':
    'Nothing in the range leaves the least reserve allowed: the same load, with fewer reps than the range.',
  'walk-fewest':
    'The range cannot keep to the reserve asked for or to the limit on volume: its fewest reps that leave the least allowed.',
  'walk-floor': (f) =>
    `One rep more would leave fewer than the ${f('floor') || 'reserve'} that must be left${clause(f('predicted'), (n) => ` (${n} to failure)`)}.`,
  'walk-gain': (f) =>
    `What the client can lift is taken to grow a little after each work week${clause(f('gain'), (n) => `: ${n}`)}.`,
  'walk-gate-once': 'One gate for this row in one edition; the next waits for what was done.',
  'walk-gates-allowed': 'Earned and open, and not offered: this plan keeps steady.',
  'walk-half-reps': 'Reserves nearer than half a rep are not told apart.',
  'walk-harder-version': (f) =>
    `Nothing else is open: the next harder version, taken only if it is earned${toFailure(f)}.`,
  'walk-heavier-first': 'Of two as near, the heavier.',
  'walk-held': (f) => `Held${clause(f('why'), heldFor)}: nothing is made harder for now.`,
  'walk-held-reps': 'While held, no more reps than were last done before.',
  'walk-normal-tempo': (f) =>
    `At the slower tempo nothing in the range leaves the least reserve allowed${clause(f('floor'), (floor) => ` (${floor})`)}: the same load at normal tempo, before a lower one.`,
  'walk-lower-load': 'Nothing in the range leaves the least reserve allowed at this load: a lower load, in the range.',
  'walk-more-reps-first': 'Of two as heavy, the one of more reps.',
  'walk-nearest-asked': 'Of what leaves the least reserve allowed, the nearest to the reserve asked for.',
  'walk-new-is-lighter': 'A movement that is new starts one load lighter than the one it follows.',
  'walk-no-trial-after-gate': 'After a gate, no more trial sets in this edition.',
  'walk-range': (f) =>
    `The top of the range${clause(f('top'), (n) => `, ${n}`)}${clause(f('reserve'), (n) => (Number(n) === Number(f('asked')) ? `, leaving the ${n} asked for` : `, leaving ${n} where ${f('asked')} are asked for`))}.`,
  'walk-slower': (f) => `No step of load is open, so the tempo is the next slower one${toFailure(f)}.`,
  'walk-slower-earned': (f) => `A slower tempo takes two sessions running at the top of the range${earned(f)}.`,
  'walk-slower-leaves-floor': (f) => `That tempo would need${needed(f)}.`,
  'walk-small-step': (f) =>
    `A small step up${clause(f('held'), (held) => ` from ${held}`)}, earned, so it is taken${toFailure(f)}.`,
  'walk-small-step-size': (f) =>
    `A step of load is small up to ${f('value') || '10 %'} above what is held; above that it is big.`,
  'walk-tempi-used-up': 'In strength work a harder version comes last.',
  'walk-tempo-factor': 'A slower tempo leaves fewer reps: the prediction is multiplied by its factor.',
  'walk-tempo-reset': 'A rise in load, or a new version, brings the tempo back to normal.',
  'walk-tolerance': (f) => `The asked reserve may be missed by ${f('value') || 'a fifth of a rep'}.`,
  'walk-trial': (f) =>
    `${f('load') || 'The next load'} is a big step up${clause(f('held'), (held) => ` from ${held}`)}, so the first set tries it, each work week until whole sets are earned.`,
  'walk-trial-allowed': 'Trial sets are not allowed for this client or this row.',
  'walk-trial-closes': 'An open trial closes when load, tempo or version changes by another way.',
  'walk-trial-in-range': (f) => `A try needs a load that can be done in its range, and that takes${needed(f)}.`,
  'walk-trial-margin': (f) =>
    `A trial set needs reps to spare${clause(f('predicted'), (n) => ` (${n} to failure; ${f('floor')} must be left, and ${f('margin')} more)`)}.`,
  'walk-trial-once-a-week': 'One trial set of this row a week.',
  'walk-trial-two-sets': (f) =>
    `A trial set takes the place of one of at least two${clause(f('sets'), (n) => `: there ${n === '1' ? 'is' : 'are'} ${n}`)}.`,
  'walk-trial-waits': 'While a trial is open, nothing else is made harder.',
  'walk-version-trial': 'The harder version is not open yet, so the first set tries it.',
  'walk-volume': 'Reps times load in one set: not far above the greatest so far.',
  'walk-volume-first': 'Without earlier marks the first session is free of the limit on volume.',
  'walk-volume-one-rep': 'One rep above the greatest set so far is always allowed.',
  'walk-volume-share': 'One set may pass the greatest so far by a tenth.',
  'walk-weak-above': (f) => `More than ${f('value') || '12'} reps and reserve together is weak evidence.`,
  'walk-weak-no-rise': 'What it rests on is weak evidence: a big step is tried, never taken.',
  'walk-weak-trial': 'On a weak estimate a trial set asks three reps at most.',
  'walk-weak-twice': (f) =>
    `What it rests on is weak evidence, so even a small step takes two sessions${clause(f('earned'), (n) => ` (earned ${n})`)}.`,
};

export const englishTellings: Readonly<Record<TellingName, Saying>> = {
  'kit-too-light': (f) =>
    `Ready for more, and nothing heavier in the house${clause(f('bell'), (bell) => `: one of ${bell} would help most`)}.`,
  'nothing-climbs': (f) =>
    `Nothing climbs in this row over the whole block${clause(f('reps'), (reps) => `: it stays at ${reps}`)}.`,
  'range-too-high': (f) =>
    `The range is too high for this load${clause(f('reach'), (reach) => `: it allows ${reach} with ${f('asked')} in reserve, and the range begins at ${f('bottom')}`)}.`,
  'to-earn-a-try': (f) =>
    `To earn a try at ${f('load') || 'the next load'}, this range must reach ${f('reach') || 'higher'}.`,
};
