/**
 * Reading ease of English by the published Flesch formula, for the words of the demo studio. Counting syllables is
 * our own: vowel groups, the silent endings, and a short list of words the groups get wrong. Which texts are measured,
 * and against which floor, stands in the test of the language.
 */

export interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

/** Flesch, A New Readability Yardstick, J Appl Psychol 32:221-233 (1948). 100 is very easy, 0 very hard. */
export const readingEase = ({ sentences, words, syllables }: Counts): number =>
  206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);

/** Words whose vowel groups do not tell their syllables. */
const IRREGULAR: Readonly<Record<string, number>> = {
  being: 2,
  bicycle: 3,
  doing: 2,
  going: 2,
  idea: 3,
  piano: 3,
  quiet: 2,
  quietly: 3,
  shoelaces: 3,
  somebody: 3,
  someone: 2,
  something: 2,
  somewhere: 2,
  themselves: 2,
  together: 3,
  yourself: 2,
};

export function countSyllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  const known = IRREGULAR[letters];
  if (known !== undefined) return known;
  const spoken = letters
    // A final e is silent, but not after a consonant and l (`little`); so are the e of `-es` and `-ed` after most sounds.
    .replace(/(?<![aeiouy])le(s?)$/, 'al$1')
    .replace(/(?<=[^aeiou]|[aeiou]u)ely$/, 'ly')
    .replace(/(?<![cgsxz]|sh|ch)es$/, 's')
    .replace(/(?<![td])ed$/, 'd')
    .replace(/e$/, '');
  return Math.max(1, spoken.match(/[aeiouy]+/g)?.length ?? 0);
}

export const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}’']+(?:-[\p{L}\p{N}’']+)*/gu) ?? [];

/** A sentence ends at a full stop, a colon, a semicolon, a question or an exclamation mark; a line ends one too. */
export const sentencesOf = (text: string): readonly string[] =>
  text
    .split(/[.?!:;]+(?=\s|$)|\n+/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => wordsOf(sentence).length > 0);

export function countText(text: string): Counts {
  const words = wordsOf(text).flatMap((word) => word.split('-'));
  return {
    sentences: Math.max(1, sentencesOf(text).length),
    words: words.length,
    syllables: words.reduce((sum, word) => sum + countSyllables(word), 0),
  };
}
