/** The rules of the rulebook that decide most of what a plan says of an exercise, by its facts alone. */
import type { Exercise, Way } from '../../src/model/exercise.js';

const OF_WAY: Readonly<Record<Way, readonly string[]>> = {
  strength: ['main-bell', 'walk-range'],
  bodyweight: ['walk-range'],
  swing: ['swing-cap', 'signal-work'],
  combination: ['weakest-part'],
  hold: ['hold-most', 'rung-seconds'],
  carry: ['rung-metres'],
  mobility: ['mobility-fixed'],
  conditioning: ['rung-minutes', 'talk-limit'],
};

const OF_CEILING = { any: [], 'arms overhead': ['ceiling-arms'], 'load overhead': ['ceiling-load'] } as const;
const OF_MEASURE = { 'chair stand': ['chair-stand-norm'], 'one-leg stand': ['one-leg-seconds'] } as const;

/** Ids in the order of the page: how it climbs, what it needs, what stands in its place, what pain comes to. */
export const rulesOf = ({ facts, words }: Exercise): readonly string[] => [
  ...OF_WAY[facts.way],
  ...(facts.sides === 'both' ? [] : ['weaker-side']),
  ...(facts.measure === undefined ? [] : OF_MEASURE[facts.measure]),
  ...(facts.rehearses.length > 0 ? ['warm-up'] : []),
  ...OF_CEILING[facts.room.ceiling],
  ...(facts.signOff ? ['sign-off-lapses'] : []),
  ...(words.easier.length > 0 ? ['version-chosen'] : []),
  'pain-easier',
  'pain-leave',
  'pain-alarm',
];
