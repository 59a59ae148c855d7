/** What may be an id: small letters of English, figures and hyphens, as stands in a file's name and in an address. */
const LONGEST = 60;

export const isId = (text: string): boolean => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) && text.length <= LONGEST;

/** The id nearest to a text: accents off, other letters to hyphens. May be empty. */
export function slugOf(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  return plain.slice(0, LONGEST).replace(/^-+|-+$/g, '');
}
