/** The phases of movement a library speaks of. */
import { compareIds } from '../model/identity.js';
import type { ReadThings } from './read-things.js';

/** Every movement may have these, cued or not. */
const COMMON = ['set', 'down', 'bottom', 'up', 'top'];

/**
 * In small letters, by code point; `undefined` where a file could not be read, and so its phases are not known.
 * A phase that is misspelt in an exercise or in a caution would match nothing and hold nothing back.
 */
export function knownPhases({ exercises }: ReadThings): readonly string[] | undefined {
  if (exercises.some(({ file }) => file.keys === undefined)) return undefined;
  const cued = exercises.flatMap(({ words }) => words.cues.flatMap(({ phase }) => (phase === '' ? [] : [phase])));
  return [...new Set([...COMMON, ...cued.map((phase) => phase.toLowerCase())])].sort(compareIds);
}
