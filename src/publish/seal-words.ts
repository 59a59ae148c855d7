/** Words that open a booklet, as they are said on the telephone and typed on a phone. */

/** However they are typed: small letters, one blank between two words, and nothing else. */
export const foldWords = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}]+/gu, ' ')
    .trim();

export const bytesOfWords = (text: string): Uint8Array => new TextEncoder().encode(foldWords(text));
