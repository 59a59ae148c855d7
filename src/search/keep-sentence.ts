/**
 * Reads the filtering sentence back. The style leaves out what does not fit, with or without this script; here headings
 * with nothing left beneath them go, what is left is counted, and the sentence is kept in the address, so that it can be
 * sent to somebody.
 */
import type { SearchWords } from '../words/search-words.js';

const PARTS = ['have', 'out', 'spare'];

const boxes = (form: ParentNode, part: string): readonly HTMLInputElement[] => [
  ...form.querySelectorAll<HTMLInputElement>(`.${part} input`),
];

const isShown = (line: Element): boolean => getComputedStyle(line).display !== 'none';

export function keepSentence(words: SearchWords): void {
  const form = document.querySelector<HTMLFormElement>('.sentence');
  const said = form?.querySelector('output');
  // A browser whose style cannot leave anything out shows the plain lists alone.
  if (!form || !said || !CSS.supports('selector(:has(a))')) return;

  const chosen = (part: string): readonly HTMLInputElement[] => boxes(form, part).filter(({ checked }) => checked);
  const namesOf = (part: string): readonly string[] =>
    chosen(part).map((box) => box.labels?.[0]?.textContent.trim() ?? '');

  const recount = (): void => {
    for (const entry of document.querySelectorAll<HTMLElement>('.entry[data-filtered]'))
      entry.hidden = ![...entry.querySelectorAll('li')].some(isShown);
    const all = [...document.querySelectorAll('.entry[data-filtered] li')];
    const sentence = words.sentence(namesOf('have'), namesOf('out'), namesOf('spare'));
    said.textContent = sentence === '' ? '' : `${sentence} ${words.left(all.filter(isShown).length, all.length)}`;
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
}
