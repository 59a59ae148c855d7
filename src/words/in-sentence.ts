/** A name as it stands inside a sentence, in an alphabet with small letters or without. */

/** `goblet squat`: what follows a comma is left to the heading, and the first letter is small. */
export const inSentence = (name: string): string => inSentenceWhole(name.split(', ')[0] ?? name);

/** The same with all of it: `front squat (two bells)`. */
export function inSentenceWhole(name: string): string {
  const [called = name, ...more] = name.split(', ');
  const short = more.length === 0 ? called : `${called} (${more.join(', ')})`;
  const [first = '', second = ''] = Array.from(short);
  // An initialism, or a name from an alphabet without small letters, is left alone.
  const initialism = second !== '' && second === second.toUpperCase() && second !== second.toLowerCase();
  return initialism ? short : first.toLowerCase() + short.slice(first.length);
}
