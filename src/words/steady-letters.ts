/** Letters for a terminal: nothing among them moves its cursor, changes its colours or turns a line round. */

const UNSTEADY = /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu;

/** What is taken out leaves a mark. */
export const steadyLetters = (text: string): string => text.replace(UNSTEADY, '\ufffd');
