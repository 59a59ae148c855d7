/**
 * Leaves out of drawn markup what HTML lets be left out and every reader puts back: end tags, and quotes round attributes
 * that have no need of them (HTML Living Standard, 13.1.2.3 and 13.1.2.4). The page that is read is the same. Only for what the
 * components of `layouts/book/` draw: no white space between elements, `<` and quotes of texts escaped, no `pre`.
 */

/** Elements before which a paragraph ends by itself. */
const ENDS_PARAGRAPH = 'article|details|div|footer|h[1-6]|header|nav|ol|p|section|table|ul';
/** Elements at whose end a paragraph in them ends by itself; in a link, a heading or a summary it would not. */
const HOLDS_PARAGRAPH = 'article|details|div|footer|header|li|section|td';

const END_OF_PARAGRAPH = new RegExp(`</p>(?=<(?:${ENDS_PARAGRAPH})[ >]|</(?:${HOLDS_PARAGRAPH})>)`, 'g');
/** Always followed in a list by an element like it or by the list's end, and in a table by its next part or its end. */
const END_OF_PART = /<\/(?:li|td|th|tr|thead|tbody)>/g;
/** In a drawing an element without content may end itself. */
const EMPTY_IN_DRAWING = /><\/(?:path|use)>/g;
const TAG = /<[a-z][^>]*>/g;
const PLAIN_ATTRIBUTE = /="([^"\s'=<>`]+)"(?!\/)/g;

export function shortenMarkup(html: string): string {
  return html
    .replace(END_OF_PARAGRAPH, '')
    .replace(END_OF_PART, '')
    .replace(EMPTY_IN_DRAWING, '/>')
    .replace(TAG, (tag) => tag.replace(PLAIN_ATTRIBUTE, '=$1'));
}
