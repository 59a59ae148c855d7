/** What an exercise needs, in words. */
import type { Exercise } from '../../src/model/exercise.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import type { Speech } from '../../src/words/speech.js';

interface Said {
  readonly words: LibraryWords;
  readonly speech: Speech;
}

const loadsOf = ({ facts }: Exercise, { words }: Said): readonly string[] => [
  ...facts.kit.load.map(words.load),
  ...(facts.kit.load.length === 0 || facts.kit.unloaded ? [words.nothingNeeded] : []),
];

const thingsOf = ({ facts }: Exercise, { speech }: Said): readonly string[] =>
  facts.kit.things.map((thing) => speech.words.loads.kind[thing]);

export const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

/** Headings an exercise stands under by its kit; *nothing* only where nothing at all is needed. */
export function kitOf(of: Exercise, said: Said): readonly string[] {
  const things = thingsOf(of, said);
  const loads = loadsOf(of, said).filter((load) => load !== said.words.nothingNeeded || things.length === 0);
  return [...loads, ...things].map(capital);
}

/** `One bell or one dumbbell; chair`. */
export function kitText(of: Exercise, said: Said): string {
  const things = thingsOf(of, said);
  const loads = loadsOf(of, said);
  const alone = loads.length === 1 && loads[0] === said.words.nothingNeeded && things.length > 0;
  return capital([...(alone ? [] : [said.words.either(loads)]), ...things].join('; '));
}

/** Everything that may be needed, each by its name: of loads any one will do. */
export const toolsOf = (of: Exercise, said: Said): readonly string[] => [
  ...of.facts.kit.load.map(said.words.load),
  ...thingsOf(of, said),
];
