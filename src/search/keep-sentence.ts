/**
 * Reads the filtering sentence back. The style leaves out what does not fit, with or without this script; here headings
 * with nothing left beneath them go, what is left is counted, and the sentence is kept in the address, so that it can be
 * sent to somebody. What is left out of the lists is told to the search as well.
 */
import type { SearchWords } from '../words/search-words.js';

const PARTS = ['have', 'out', 'spare'];

const boxes = (form: ParentNode, part: string): readonly HTMLInputElement[] => [
  ...form.querySelectorAll<HTMLInputElement>(`.${part} input`),
];

const isShown = (line: Element): boolean => getComputedStyle(line).display !== 'none';

export interface Sentence {
  /** Of a line of the lists, whether the sentence leaves it out. */
  readonly leavesOut: (line: Element) => boolean;
  readonly onChange: (listener: () => void) => void;
}

export function keepSentence(words: SearchWords): Sentence {
  let gone: ReadonlySet<Element> = new Set();
  const listeners: (() => void)[] = [];
  const sentence: Sentence = {
    leavesOut: (line) => gone.has(line),
    onChange: (listener) => listeners.push(listener),
  };

  const form = document.querySelector<HTMLFormElement>('.sentence');
  const said = form?.querySelector('output');
  // A browser whose style cannot leave anything out shows the plain lists alone.
  if (!form || !said || !CSS.supports('selector(:has(a))')) return sentence;

  const chosen = (part: string): readonly HTMLInputElement[] => boxes(form, part).filter(({ checked }) => checked);
  const namesOf = (part: string): readonly string[] =>
    chosen(part).map((box) => box.labels?.[0]?.textContent.trim() ?? '');

  const recount = (): void => {
    const entries = [...document.querySelectorAll<HTMLElement>('.entry[data-filtered]')];
    // Nothing is left out of what is hidden: first all are shown, then read, then hidden.
    for (const entry of entries) entry.hidden = false;
    const all = entries.flatMap((entry) => [...entry.querySelectorAll('li')].map((line) => ({ entry, line })));
    const left = all.filter(({ line }) => isShown(line));
    const staying = new Set(left.map(({ entry }) => entry));
    for (const entry of entries) entry.hidden = !staying.has(entry);
    const shown = new Set(left.map(({ line }) => line));
    gone = new Set(all.flatMap(({ line }) => (shown.has(line) ? [] : [line])));
    const text = words.sentence(namesOf('have'), namesOf('out'), namesOf('spare'));
    said.textContent = text === '' ? '' : `${text} ${words.left(left.length, all.length)}`;
    for (const listener of listeners) listener();
  };
  const keep = (): void => {
    const parts = PARTS.flatMap((part) => {
      const ids = chosen(part).map(({ value }) => value);
      return ids.length === 0 ? [] : [`${part}=${ids.join(',')}`];
    });
    const address = location.pathname + location.search + (parts.length === 0 ? '' : `#${parts.join('&')}`);
    history.replaceState(null, '', address);
  };
  const readAddress = (): void => {
    const asked = new URLSearchParams(location.hash.slice(1));
    if (!PARTS.some((part) => asked.has(part))) return;
    for (const part of PARTS) {
      const values = (asked.get(part) ?? '').split(',');
      for (const box of boxes(form, part)) box.checked = values.includes(box.value);
    }
  };

  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('change', () => {
    keep();
    recount();
  });
  // Boxes are empty only after everyone has heard of it.
  form.addEventListener('reset', () =>
    setTimeout(() => {
      keep();
      recount();
    }),
  );
  addEventListener('hashchange', () => {
    readAddress();
    recount();
  });
  // A browser puts back what was chosen when one comes back to the page, after this script.
  addEventListener('pageshow', recount);
  readAddress();
  recount();
  return sentence;
}
