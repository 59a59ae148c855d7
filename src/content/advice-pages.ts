/** Gentle advice on the words of one exercise: what would be said too late, too long, or not at all. */
import type { Exercise } from '../model/exercise.js';
import type { Place } from '../model/place.js';
import { plainText } from '../model/prose.js';
import { placeOf } from './open-file.js';
import type { ReadExercise } from './read-exercise.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/**
 * Three cues are seen during a set and two more are read beforehand; of one phase nobody hears a fourth, since it is
 * over by then. Both are common practice, no source.
 */
const MOST_CUES = 5;
const MOST_OF_A_PHASE = 3;

/** About what is said in one breath between two reps. The measure is ours; only words with spaces between them count. */
const WORDS_IN_A_BREATH = 14;

/** A stop sign on so many pages, and on more than half of them, tells nothing of any one. The measure is ours. */
const PAGES_OF_A_SIGN = 6;

const each =
  (check: (read: ReadExercise, exercise: Exercise) => void) =>
  ({ exercises }: ReadThings): void => {
    for (const read of exercises) if (read.exercise) check(read, read.exercise);
  };

type Listed = 'Cues' | 'Faults' | 'Stop if';

/** Where the lines of a section stand, in the order they were read. */
function placesIn({ sections }: ReadExercise, name: Listed): readonly Place[] {
  const blocks = sections.get(name)?.blocks ?? [];
  const items = blocks.flatMap((block) => (block.kind === 'list' ? block.items : []));
  return items.filter(({ line }) => line.length > 0).map(({ place }) => place);
}

const checkFaults = each((read) => {
  const places = placesIn(read, 'Faults');
  read.words.faults.forEach(({ see, say }, index) => {
    if (plainText(say).trim() !== '') return;
    read.file.report.add({ code: 'fault-unsaid', data: { fault: plainText(see) } }, places[index]);
  });
});

const checkCues = each((read) => {
  const { cues } = read.words;
  const places = placesIn(read, 'Cues');
  const tell = (index: number, count: number, most: number, phase: string): void =>
    read.file.report.add({ code: 'many-cues', data: { cues: count, most, phase } }, places[index]);
  if (cues.length > MOST_CUES) {
    tell(MOST_CUES, cues.length, MOST_CUES, '');
    return;
  }
  for (const phase of new Set(cues.map((cue) => cue.phase))) {
    const own = cues.flatMap((cue, index) => (phase !== '' && cue.phase === phase ? [index] : []));
    const beyond = own[MOST_OF_A_PHASE];
    if (beyond !== undefined) tell(beyond, own.length, MOST_OF_A_PHASE, phase);
  }
});

const checkBreath = each((read) => {
  const places = placesIn(read, 'Cues');
  read.words.cues.forEach(({ line }, index) => {
    const words = plainText(line)
      .split(/\s+/)
      .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
    if (words <= WORDS_IN_A_BREATH) return;
    read.file.report.add({ code: 'long-cue', data: { words, most: WORDS_IN_A_BREATH } }, places[index]);
  });
});

const checkForWhat = each((read) => {
  for (const { causes, say, place } of read.words.easier) {
    if (causes.length > 0) continue;
    read.file.report.add({ code: 'easier-for-what', data: { version: plainText(say) } }, place);
  }
});

const asSaid = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Told once, on the first page that has it. */
function checkStopSigns({ exercises }: ReadThings): void {
  const pages = new Map<string, { read: ReadExercise; place: Place }[]>();
  for (const read of exercises) {
    const places = placesIn(read, 'Stop if');
    const own = new Map(read.words.stopIf.map((line, index) => [asSaid(plainText(line)), places[index]]));
    for (const [sign, place] of own) {
      pages.set(sign, [...(pages.get(sign) ?? []), { read, place: place ?? placeOf(read.file) }]);
    }
  }
  for (const found of pages.values()) {
    const [first] = found;
    if (first === undefined || found.length < PAGES_OF_A_SIGN || 2 * found.length <= exercises.length) continue;
    const data = { pages: found.length, of: exercises.length };
    first.read.file.report.add({ code: 'stop-sign-everywhere', data }, first.place);
  }
}

export const pageAdvice: readonly FolderCheck[] = [
  { name: 'a fault with nothing to say', codes: ['fault-unsaid'], check: checkFaults },
  { name: 'more cues than are heard', codes: ['many-cues'], check: checkCues },
  { name: 'a cue of one breath', codes: ['long-cue'], check: checkBreath },
  { name: 'what an easier version is for', codes: ['easier-for-what'], check: checkForWhat },
  { name: 'the same stop sign everywhere', codes: ['stop-sign-everywhere'], check: checkStopSigns },
];
