/** The search: shown where there is a script, fetches its index when it is first wanted, answers every key. */
import type { SearchWords } from '../words/search-words.js';
import { type Found, findExercises, type Index, openIndex } from './find-exercises.js';
import type { Sentence } from './keep-sentence.js';

declare global {
  /** Called by the index's file with what `writeIndex` wrote: a script is the one file a page from a disk may read. */
  var exerciseIndex: ((stored: string) => void) | undefined;
}

const INDEX = 'search-index.js';
/** More than this nobody reads; more words lead to fewer. */
const MOST_SHOWN = 12;
/** So many are seen above the keys of a phone. The others come with the next frame: to lay out twelve takes a slow phone twice as long. */
const SEEN_FIRST = 4;

let fetched: Promise<Index> | undefined;

function fetchIndex(): Promise<Index> {
  fetched ??= new Promise<Index>((done, failed) => {
    globalThis.exerciseIndex = (stored) => {
      const index = openIndex(stored);
      warmUp(index);
      done(index);
    };
    const script = document.createElement('script');
    script.src = INDEX;
    script.addEventListener('error', () => failed(new Error(INDEX)));
    document.head.append(script);
  }).catch((fault: unknown) => {
    // The next key asks again: the network may be back.
    fetched = undefined;
    throw fault;
  });
  return fetched;
}

const hrefOf = (id: string): string => `exercises/${id}.html`;

/** Once what was put into the page is seen. */
const afterFrame = (work: () => void): void => {
  requestAnimationFrame(() => setTimeout(work));
};

/** Nobody waits for what the first key would wait for: a browser reads a script's parts when they are first run. */
function warmUp(index: Index): void {
  const [name = ''] = index.names.values();
  setTimeout(() => findExercises(index, name));
}

/** Whoever has typed one letter is not done. */
const isBegun = (typed: string): boolean => Array.from(typed.trim()).length === 1;

/** The line of an exercise in the list on this page, which says what it needs and asks. */
const linesOf = (): ReadonlyMap<string, HTMLElement> =>
  new Map(
    [...document.querySelectorAll<HTMLElement>('.entry[data-filtered] li')].map((line) => [
      line.querySelector('a')?.getAttribute('href') ?? '',
      line,
    ]),
  );

export function showFound(words: SearchWords, sentence: Sentence): void {
  const place = document.querySelector<HTMLElement>('.search');
  const form = place?.querySelector('form');
  const field = form?.querySelector('input');
  const list = form?.querySelector('ul');
  const said = form?.querySelector('output');
  if (!place || !form || !field || !list || !said) return;
  place.hidden = false;
  const lines = linesOf();

  /** An index of another day may know an exercise that is no longer here. */
  const isHere = ({ id }: Found): boolean => lines.has(hrefOf(id));
  const isLeft = ({ id }: Found): boolean => {
    const line = lines.get(hrefOf(id));
    return line !== undefined && !sentence.leavesOut(line);
  };
  const lineOf = ({ id, name, why }: Found): HTMLElement => {
    const line = document.createElement('li');
    const link = document.createElement('a');
    link.href = hrefOf(id);
    link.textContent = name;
    const reason = document.createElement('span');
    reason.className = 'why-found';
    reason.textContent = words.why(why);
    line.append(link, ' ', reason);
    return line;
  };
  const answer = async (): Promise<void> => {
    const typed = field.value;
    if (typed.trim() === '') {
      list.replaceChildren();
      said.textContent = '';
      return;
    }
    const index = await fetchIndex().catch(() => undefined);
    // Something else was typed meanwhile, and is answered by itself.
    if (field.value !== typed) return;
    const all = index === undefined ? [] : findExercises(index, typed).filter(isHere);
    const found = all.filter(isLeft);
    const shown = found.slice(0, MOST_SHOWN);
    list.replaceChildren(...shown.slice(0, SEEN_FIRST).map(lineOf));
    const [before] = list.children;
    afterFrame(() => {
      // Meanwhile something else may have been answered.
      if (before !== undefined && list.firstElementChild === before)
        list.append(...shown.slice(SEEN_FIRST).map(lineOf));
    });
    if (index === undefined) said.textContent = words.notThere;
    else if (shown.length > 0) said.textContent = words.found(found.length, shown.length);
    else if (all.length > 0) said.textContent = words.leftOut(all.length);
    else said.textContent = isBegun(typed) ? '' : words.nothing(typed.trim());
  };
  form.addEventListener('submit', (event) => event.preventDefault());
  field.addEventListener('focus', () => void fetchIndex().catch(() => undefined), { once: true });
  field.addEventListener('input', () => void answer());
  sentence.onChange(() => void answer());
  // What a browser put back into the field is answered too.
  if (field.value !== '') void answer();
}
