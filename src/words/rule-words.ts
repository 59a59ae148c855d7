/** How a language writes down the sentence of a rule. */

/** A figure of a reason by its name, phrased with its unit; empty where the reason does not carry it. */
export type Figure = (name: string) => string;

/** One plain sentence; empty where nothing is told. */
export type Saying = string | ((figure: Figure) => string);

export const spoken = (saying: Saying): ((figure: Figure) => string) =>
  typeof saying === 'string' ? () => saying : saying;

/** A clause that stands only where its figure does. */
export const clause = (figure: string, said: (figure: string) => string): string => (figure === '' ? '' : said(figure));

/** The rule's own value where the reason carries it. */
export const held = (f: Figure, otherwise: string): string => f('value') || otherwise;

/** What holds a client back: a break by its cause, or a test. */
const HELD: Readonly<Record<string, string>> = {
  test: ', since it is tested this week',
  away: ' after the time away',
  ill: ' after being ill',
  hurt: ' after being hurt',
  seen: ' for what your coach saw',
  pain: ', since it hurt lately',
};

export const heldFor = (why: string): string => HELD[why] ?? ` (${why})`;

export const begun = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** As it goes on inside a sentence; an initialism is left alone. */
export function midway(text: string): string {
  const [first = '', second = ''] = Array.from(text);
  const initialism = second !== '' && second === second.toUpperCase() && second !== second.toLowerCase();
  return initialism ? text : first.toLowerCase() + text.slice(first.length);
}

/** An author's words as a sentence of their own; nothing stays nothing. */
export function sentence(words: string): string {
  const told = begun(words);
  return told === '' || /[.!?…]$/.test(told) ? told : `${told}.`;
}
