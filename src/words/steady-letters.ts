/** Letters for a terminal: nothing among them moves its cursor, changes its colours or turns a line round. */

const UNSTEADY = /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu;

/** What is taken out leaves a mark. */
export const steadyLetters = (text: string): string => text.replace(UNSTEADY, '\ufffd');

/** The same letters by their numbers (RFC 8259, section 7): what a program reads is what was written. New lines part its lines. */
export const steadyJson = (json: string): string =>
  json.replace(UNSTEADY, (sign) => (sign === '\n' ? sign : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`));
