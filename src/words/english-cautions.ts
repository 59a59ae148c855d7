/**
 * What a client reads where a caution changes the work or keeps it gentle: what to do, never what is wrong with them.
 * The coach's own words come before these.
 */
import type { BodyPart, Quality } from '../model/exercise.js';
import { BODY_PARTS } from '../model/exercise.js';

interface Spoken {
  /** Another exercise, or an easier way, was chosen for it. */
  readonly changed: string;
  /** The exercise stays. */
  readonly kept: string;
}

const QUALITY_WORDS: Readonly<Record<Quality, Spoken>> = {
  balance: {
    changed: 'Chosen so that balance is never the hard part.',
    kept: 'Stay within reach of something steady.',
  },
  grip: {
    changed: 'Chosen so that your grip is not what gives out.',
    kept: 'Put it down before your grip gets tired.',
  },
  impact: { changed: 'Chosen because nothing lands hard.', kept: 'Keep it soft: nothing here should land hard.' },
  speed: { changed: 'Chosen because it can be done slowly.', kept: 'Take this one slowly.' },
  floor: {
    changed: 'Chosen so that you need not get down to the floor.',
    kept: 'Take your time getting down and up, with a chair to help.',
  },
  overhead: {
    changed: 'Chosen so that nothing goes over your head.',
    kept: 'Go only as high as is comfortable.',
  },
  'breath hold': {
    changed: 'Chosen so that you can breathe freely all the way.',
    kept: 'Keep breathing: out on the effort, and never hold it.',
  },
  'head down': { changed: 'Chosen so that your head stays up.', kept: 'Come up slowly.' },
  'lying on the back': {
    changed: 'Chosen so that you need not lie on your back.',
    kept: 'Do not stay on your back between the sets.',
  },
  'spinal load': { changed: 'Chosen to take the load off your back.', kept: 'Stay tall and keep the load easy.' },
  'loaded bend': {
    changed: 'Chosen so that you never bend with a load.',
    kept: 'Keep your back long when you bend with the load.',
  },
  'loaded twist': {
    changed: 'Chosen so that you never twist with a load.',
    kept: 'Turn your feet with the load.',
  },
  'deep bend': { changed: 'Chosen so that you need not go so deep.', kept: 'Go only as deep as is comfortable.' },
  'deep twist': {
    changed: 'Chosen so that you need not turn so far.',
    kept: 'Turn only as far as is comfortable.',
  },
  reach: { changed: 'Chosen so that you need not reach so far.', kept: 'Reach only as far as is comfortable.' },
  'lifting from the floor': {
    changed: 'Chosen so that nothing heavy is lifted from the floor.',
    kept: 'Lift from a chair or a box, and put it down there.',
  },
};

const PART_NAMES: Readonly<Record<BodyPart, string>> = {
  neck: 'neck',
  shoulder: 'shoulder',
  elbow: 'elbow',
  wrist: 'wrist',
  hand: 'hand',
  'upper back': 'upper back',
  'lower back': 'lower back',
  hip: 'hip',
  knee: 'knee',
  ankle: 'ankle',
  foot: 'foot',
  'pelvic floor': 'pelvic floor',
  belly: 'belly',
};

/** `side` is the left or right one, or empty. */
export function cautionWords(what: string, side: string, changed: boolean): string {
  const part = BODY_PARTS.find((name) => name === what);
  if (part !== undefined) {
    const name = [side, PART_NAMES[part]].filter((word) => word !== '').join(' ');
    return changed ? `This one is kind to your ${name}.` : `Mind your ${name}: stay where it is comfortable.`;
  }
  const known = (text: string): text is Quality => Object.hasOwn(QUALITY_WORDS, text);
  if (!known(what)) return '';
  return changed ? QUALITY_WORDS[what].changed : QUALITY_WORDS[what].kept;
}
