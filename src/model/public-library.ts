/** The part of a studio's content that anybody may read: what the public library is made from, and nothing else. */
import type { Programme } from './programme.js';
import type { Library } from './studio.js';

/** What a programme expects is told of clients by name; it has no place here. */
export type PublicProgramme = Omit<Programme, 'expectations'> & { readonly expectations?: never };

/** Exercises, and those programmes that are public. A whole `Library` is not one: take `publicPartOf` it. */
export type PublicLibrary = Omit<Library, 'programmes' | 'overrides'> & {
  readonly programmes: readonly PublicProgramme[];
};

export function publicPartOf({ studio, exercises, programmes }: Library): PublicLibrary {
  const open = programmes.filter((programme) => programme.public);
  return { studio, exercises, programmes: open.map(({ expectations: _, ...programme }) => programme) };
}
