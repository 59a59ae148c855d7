/** An envelope’s letters are as good as drawn by lot: any short word stands among them sooner or later. */

/** Longer than any word, and shorter than anything sealed. */
const RUN = /[\w-]{60,}/g;

/** The text without what is sealed in it: what is looked for in the rest is there by nobody’s chance. */
export const besideEnvelopes = (text: string): string => text.replace(RUN, '');
