/** What every page of the library is made from: exercises, programmes, words, and drawings where there are any. */
import type { Exercise } from '../../src/model/exercise.js';
import type { ExerciseId } from '../../src/model/identity.js';
import type { Drawings } from '../../src/model/picture.js';
import type { PublicLibrary } from '../../src/model/public-library.js';
import type { LibraryWords } from '../../src/words/library-words.js';
import type { Speech } from '../../src/words/speech.js';
import type { PlacedPhotograph } from '../photograph.js';
import type { Neighbours } from './neighbours.js';

export interface LibraryProps {
  readonly library: PublicLibrary;
  readonly neighbours: (of: Exercise) => Neighbours;
  readonly words: LibraryWords;
  readonly speech: Speech;
  /** Of those exercises that have one, and no photograph. */
  readonly drawings: Drawings;
  /** Of those exercises that have one, as a page of an exercise finds them. */
  readonly photographs: ReadonlyMap<ExerciseId, PlacedPhotograph>;
}
