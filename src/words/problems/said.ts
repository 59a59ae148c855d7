/** What is said of one problem, and small words the sentences share. */

export interface Said {
  /** What is wrong, in the coach's words. */
  readonly message: string;
  /** What to write instead; empty where nothing can be written. */
  readonly hint: string;
}

/** A sentence for every code of a table. */
export type Sayings<Table> = { readonly [Code in keyof Table]: (data: Table[Code]) => Said };

const MOST_QUOTED = 60;

/** The author's own words in quotation marks, cut where they are long, with nothing in them that could move the cursor. */
export function quoted(text: string): string {
  const letters = Array.from(text.replace(/[\p{Cc}\p{Bidi_Control}]/gu, ' '));
  return `‘${letters.length > MOST_QUOTED ? `${letters.slice(0, MOST_QUOTED - 1).join('')}…` : letters.join('')}’`;
}

/** `a`, `a or b`, `a, b or c`. */
export function listed(words: readonly string[], last: 'or' | 'and' = 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1) ?? ''}`;
}

/** `one week`, `3 weeks`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** Did you mean this? Empty where nothing is near. */
export const didYouMean = (nearest: string): string => (nearest === '' ? '' : `${nearest}  (did you mean that?)`);

/** Millimetres as metres, one or two of them: `2400` → `2.4 m`. */
export const sayMetres = (millimetres: string): string =>
  `${millimetres.replace(/\d+/g, (figure) => String(Number(figure) / 1000))} m`;
