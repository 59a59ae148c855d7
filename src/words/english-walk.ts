/** English for the rules of the walk: one sentence for the coach, and one for the client where it helps. */
import type { TellingName, WalkRuleName } from './reason-words.js';
import { both, clause, only, type RuleWords } from './rule-words.js';

export const englishWalk: Readonly<Record<WalkRuleName, RuleWords>> = {
  'walk-asked': both(
    (f) =>
      `The most reps in the range that leave the asked reserve${clause(f('asked'), (n) => ` of ${n}`)}, less the tolerance.`,
    'As many as you can do and still stop fresh.',
  ),
  'walk-back-up': both(
    'Back up to the load lost on the way: the bottom of the range fits there again.',
    'Back up to the weight you had before.',
  ),
  'walk-below-tested': only(
    (f) =>
      `Only a load lost on the way is won back without earning it${clause(f('held'), (held) => `: ${held} is held, ${f('tested')} was where the walk began`)}.`,
  ),
  'walk-big-step': both(
    'A big step of load: taken behind a gate, with what to do otherwise printed beside it.',
    'Two good sessions at the top earn the next weight.',
  ),
  'walk-bodyweight-version-first': only('A bodyweight row comes to a harder version before slower tempi.'),
  'walk-bottom-and-asked': only(
    (f) =>
      `Won back only when the bottom of the range leaves the asked reserve there${clause(f('predicted'), (n) => `: ${n} predicted, ${f('bottom')} and ${f('asked')} in reserve wanted, less ${f('tolerance')}`)}.`,
  ),
  'walk-bottom-and-floor': only(
    (f) =>
      `The next one up must allow the bottom of the range and the floor of reserve${clause(f('predicted'), (n) => `: ${n} predicted, ${f('bottom')} and ${f('floor')} in reserve wanted`)}.`,
  ),
  'walk-derived': only(
    'Nothing can be predicted there: no body mass on file, or no known ratio between the two versions.',
  ),
  'walk-earned-at-top': only('Only sets at the top of the range earn a step.'),
  'walk-earned-once': only(
    (f) =>
      `A small step is earned once, at the top of the range with the asked reserve${clause(f('earned'), (n) => `: earned ${n} of ${f('needed')}`)}.`,
  ),
  'walk-earned-reserve': only('Only sets that leave the asked reserve, less the tolerance, earn a step.'),
  'walk-earned-reset': only('A changed load, tempo or version starts with nothing earned.'),
  'walk-earned-twice': only(
    (f) =>
      `A big step or a harder version is earned twice running, or by a trial set${clause(f('earned'), (n) => `: earned ${n} of ${f('needed')}`)}.`,
  ),
  'walk-easier-version': both(
    'No load of this version leaves the floor of reserve: the nearest easier version that does.',
    'An easier version for now, done well.',
  ),
  'walk-easy-asked': both(
    (f) => `An easy week leaves the reserve it asks for${clause(f('asked'), (n) => `, ${n}`)}, less the tolerance.`,
    'An easier week, on purpose.',
  ),
  'walk-easy-cap': only('No more reps in an easy week than in the last work week.'),
  'walk-easy-depth': only('An easy set goes at most two reps below the range.'),
  'walk-easy-least': both(
    'The asked reserve cannot be left in this easy week: the fewest reps it may have.',
    'An easier week, on purpose.',
  ),
  'walk-easy-one-fewer': both(
    'No set could be taken away in the easy week, so a rep is.',
    'An easier week: one rep fewer, on purpose.',
  ),
  'walk-easy-week': both(
    'An easy week: the last work option again, with fewer reps and more in reserve.',
    'An easier week, on purpose.',
  ),
  'walk-fewer-reps': both(
    'Nothing in the range leaves the floor of reserve: the load held, with fewer reps than the range.',
    'Fewer reps for now, so that each one is good.',
  ),
  'walk-fewest': both(
    'The range cannot keep the asked reserve or the limit on volume: its fewest reps that leave the floor.',
    'A careful start at the bottom of the range.',
  ),
  'walk-floor': both(
    (f) => `Never fewer than the floor${clause(f('floor'), (n) => ` of ${n}`)} in reserve.`,
    'At home you always stop with good reps left.',
  ),
  'walk-gain': only(
    (f) =>
      `What the client can lift is taken to grow a little after each work week${clause(f('gain'), (n) => `: ${n}`)}.`,
  ),
  'walk-gate-once': only('One gate for this row in one edition; the next waits for what was done.'),
  'walk-half-reps': only('Reserves nearer than half a rep are not told apart.'),
  'walk-harder-version': both(
    'Nothing else is open: the next harder version, behind a gate.',
    'Two good sessions at the top earn the harder version.',
  ),
  'walk-heavier-first': only('Of two as near, the heavier.'),
  'walk-held': both(
    (f) => `Held: nothing is made harder for now${clause(f('why'), (why) => ` (${why})`)}.`,
    'We stay here for now, and do it well.',
  ),
  'walk-held-reps': both('While held, no more reps than were last done before.', 'No more than last time, for now.'),
  'walk-lower-load': both(
    'Nothing in the range leaves the floor of reserve at this load: a lower load, in the range.',
    'A lighter weight, so that every rep is good.',
  ),
  'walk-more-reps-first': only('Of two as heavy, the one of more reps.'),
  'walk-nearest-asked': only('Of what leaves the floor, the nearest to the asked reserve.'),
  'walk-new-is-lighter': both(
    'A movement that is new starts one load lighter than the one it follows.',
    'New to you, so it starts lighter.',
  ),
  'walk-no-trial-after-gate': only('After a gate, no more trial sets in this edition.'),
  'walk-range': both(
    (f) => `The top of the range${clause(f('top'), (n) => `, ${n},`)} with the asked reserve to spare.`,
    'The most we ask for here.',
  ),
  'walk-slower': both(
    'No step of load is open: the next slower tempo.',
    'Slower on the way down makes the same weight harder.',
  ),
  'walk-slower-earned': only(
    (f) => `A slower tempo is earned twice running${clause(f('earned'), (n) => `: earned ${n} of ${f('needed')}`)}.`,
  ),
  'walk-slower-leaves-floor': only(
    (f) =>
      `A slower tempo must leave the floor of reserve with some reps of the range${clause(f('predicted'), (n) => `: ${n} predicted, ${f('bottom')} and ${f('floor')} in reserve wanted`)}.`,
  ),
  'walk-small-step': both('A small step of load, earned: taken.', 'You earned the next weight up.'),
  'walk-small-step-size': only(
    (f) => `A step of load is small up to ${f('value') || '10 %'} above what is held; above that it is big.`,
  ),
  'walk-tempi-used-up': only('A strength row comes to a harder version once its tempi are used up.'),
  'walk-tempo-factor': only('A slower tempo leaves fewer reps: the prediction is multiplied by its factor.'),
  'walk-tempo-reset': both(
    'A rise in load, or a new version, brings the tempo back to normal.',
    'A new weight: back to the normal pace.',
  ),
  'walk-tolerance': only((f) => `The asked reserve may be missed by ${f('value') || 'a fifth of a rep'}.`),
  'walk-trial': both(
    'A big step not open yet: the first set tries the next load, each work week until it becomes a rise.',
    'One set to get to know the next weight.',
  ),
  'walk-trial-allowed': only('Trial sets are not allowed for this client or this row.'),
  'walk-trial-closes': only('An open trial closes when load, tempo or version changes by another way.'),
  'walk-trial-in-range': only(
    (f) =>
      `The next load is tried only once the one held can be done in its range${clause(f('predicted'), (n) => `: ${n} predicted there, ${f('bottom')} and ${f('floor')} in reserve wanted`)}.`,
  ),
  'walk-trial-margin': only(
    (f) =>
      `A trial set needs reps to spare above the floor${clause(f('predicted'), (n) => `: ${n} predicted, ${f('floor')} in reserve and ${f('margin')} more wanted`)}.`,
  ),
  'walk-trial-once-a-week': only('One trial set of this row a week.'),
  'walk-trial-two-sets': only(
    (f) =>
      `A trial set takes the place of one of at least two${clause(f('sets'), (n) => `: there ${n === '1' ? 'is' : 'are'} ${n}`)}.`,
  ),
  'walk-trial-waits': only('While a trial is open, nothing else is made harder.'),
  'walk-version-trial': both(
    'A harder version not open yet: the first set tries it.',
    'One set to get to know the harder version.',
  ),
  'walk-volume': both(
    'Reps times load in one set: not far above the greatest so far.',
    'A little more than before, never a leap.',
  ),
  'walk-volume-first': only('Without earlier marks the first session is free of the limit on volume.'),
  'walk-volume-one-rep': only('One rep above the greatest set so far is always allowed.'),
  'walk-volume-share': only('One set may pass the greatest so far by a tenth.'),
  'walk-weak-above': only((f) => `More than ${f('value') || '12'} reps and reserve together is weak evidence.`),
  'walk-weak-no-rise': only('The test is weak evidence: a big step is tried, never taken.'),
  'walk-weak-twice': only(
    (f) =>
      `The test is weak evidence: even a small step is earned twice${clause(f('earned'), (n) => `, earned ${n}`)}.`,
  ),
};

export const englishTellings: Readonly<Record<TellingName, RuleWords>> = {
  'kit-too-light': only(
    (f) =>
      `Ready for more, and nothing heavier in the house${clause(f('bell'), (bell) => `: one of ${bell} would help most`)}.`,
  ),
  'nothing-climbs': only(
    (f) => `Nothing climbs in this row over the whole block${clause(f('reps'), (reps) => `: it stays at ${reps}`)}.`,
  ),
  'range-too-high': only(
    (f) =>
      `The range is too high for this load${clause(f('reach'), (reach) => `: it allows ${reach} with ${f('asked')} in reserve, and the range begins at ${f('bottom')}`)}.`,
  ),
  'to-earn-a-try': only(
    (f) => `To earn a try at ${f('load') || 'the next load'}, this range must reach ${f('reach') || 'higher'}.`,
  ),
};
