/** How a word is known by when it is looked for: without capitals, accents or a possessive's end. */

/** `Überzüge` → `uberzuge`. Empty for what carries no letter or figure. */
export const foldTerm = (term: string): string =>
  term
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’']s?$/u, '')
    .replaceAll(/[’']/gu, '');

/** The words of a text, folded, in order. A hyphen parts words. */
export const termsOf = (text: string): readonly string[] =>
  text
    .split(/[^\p{L}\p{M}\p{N}’']+/u)
    .map(foldTerm)
    .filter((term) => term !== '');
