/** Spaces that hold a figure to its unit, and marks that hold a figure's reading order. Decides nothing about words. */
export const NO_BREAK = '\u00a0';

/** Holds a short text together on one line: `16 kg`, `4 Jan`. */
export const unbroken = (text: string): string => text.replaceAll(' ', NO_BREAK);

/** For a terminal and for programs, where a space is only a space. */
export const plainSpaces = (text: string): string => text.replaceAll(NO_BREAK, ' ');

/**
 * In a right-to-left line the signs × and – stand between figures without a direction of their own, so that `3 × 8`
 * would be shown as `8 × 3` (Unicode Standard Annex 9). An isolate (U+2066 to U+2069) keeps it as written.
 */
export const isolated = (text: string): string => `\u2066${text}\u2069`;
