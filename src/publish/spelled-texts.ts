/**
 * Words spelled in base64 (RFC 4648, sections 4 and 5), as addresses, settings and the data of scripts carry them: every
 * run of a text that may be some is read as such, from each of the four places where it may begin.
 */
import type { FileText } from './leak-check.js';

/** Signs of a run: four letters are six of them. */
const SHORTEST = 6;
const RUN = new RegExp(`[A-Za-z0-9+/_-]{${SHORTEST},}`, 'g');
/** A picture or a face in an address, which is read as what it is. */
const IN_AN_ADDRESS = /;base64,[A-Za-z0-9+/=]*/g;
/** A word of somebody's has no figures, and capitals at its beginning alone. */
const IS_A_WORD = /^[A-Z]?[a-z]*$/;
/** What stands in no text. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what tells bytes from a text
const NO_TEXT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffd]/;

function read(run: string): FileText | null {
  const bytes = Uint8Array.from(atob(run.slice(0, run.length - (run.length % 4 === 1 ? 1 : 0))), (sign) =>
    sign.charCodeAt(0),
  );
  const text = new TextDecoder().decode(bytes);
  // Whole words of a text stand there by nobody's chance.
  return NO_TEXT.test(text)
    ? { inside: 'what is written into it', text, byChance: true }
    : { inside: 'what is written into it', text };
}

/** What is spelled in any of the texts, each run once. */
export function spelledTexts(texts: readonly FileText[]): readonly FileText[] {
  const runs = new Set(texts.flatMap(({ text }) => text.replace(IN_AN_ADDRESS, ' ').match(RUN) ?? []));
  const parts = new Set([...runs].flatMap((run) => [run, ...run.split(/[+/_-]/)]));
  return [...parts].flatMap((part) => {
    if (part.length < SHORTEST || part.split(/[+/_-]/).every((one) => IS_A_WORD.test(one))) return [];
    const plain = part.replaceAll('-', '+').replaceAll('_', '/');
    return [0, 1, 2, 3].flatMap((from) => read(plain.slice(from)) ?? []);
  });
}
