/**
 * What counts as the same words in two texts: letters and figures alone, whatever stands between them, in one normal
 * form (Unicode Standard Annex 15, NFKC) and one case (Unicode core specification, 3.13), without the signs that are
 * not seen (soft hyphens, joiners, marks of direction).
 */

/** Scripts written without spaces between words: each of their letters counts as a word. */
const UNSPACED =
  '\\p{Script=Han}\\p{Script=Hiragana}\\p{Script=Katakana}\\p{Script=Thai}\\p{Script=Lao}\\p{Script=Khmer}\\p{Script=Myanmar}';
const WORD = new RegExp(`[${UNSPACED}]\\p{M}*|(?:(?![${UNSPACED}])[\\p{L}\\p{M}\\p{N}])+`, 'gu');

/** Upper case first, so that ß and the ligatures open up; twice, for the capital ẞ. The last sigma of a word is one with the others. */
export const foldText = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/\p{Default_Ignorable_Code_Point}/gu, '')
    .toLowerCase()
    .toUpperCase()
    .toLowerCase()
    .replaceAll('ς', 'σ')
    .normalize('NFKC');

/** The words of a text, folded, in order. */
export const wordsIn = (text: string): readonly string[] => foldText(text).match(WORD) ?? [];
