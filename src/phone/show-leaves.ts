/**
 * One leaf on the screen at once. The address decides which, so that the phone's own back button works and a leaf
 * can be marked or sent. The other leaves stay findable where the browser can reveal what it finds.
 */
import { nextTask } from './give-way.js';

/** Leaves of a session: whoever turns from one of these to the safety page wants to come back to it. */
const IN_SESSION = '.turn, .session, .cool-down';

const headOf = (leaf: HTMLElement): HTMLElement | null => leaf.querySelector<HTMLElement>('h2');

/** Names the leaf one came from on a page that has a way back to it, and hides the way where there is nowhere to go. */
function showReturn(leaf: HTMLElement, from: HTMLElement): void {
  const goesBack = from.matches(IN_SESSION);
  for (const way of leaf.querySelectorAll<HTMLElement>('.return')) {
    way.hidden = !goesBack;
    const link = way.querySelector('a');
    const name = way.querySelector('.from');
    link?.setAttribute('href', `#${from.id}`);
    if (name) name.textContent = headOf(from)?.textContent ?? '';
  }
}

/**
 * In the order one turns to them: as in the page, but a session's exercises after its opening, and what a partner reads before the
 * last leaf.
 */
function inTurn(leaves: readonly HTMLElement[]): readonly HTMLElement[] {
  const turns = new Map<string, HTMLElement[]>();
  for (const leaf of leaves) {
    if (!leaf.matches('.turn')) continue;
    const session = leaf.id.slice(0, leaf.id.indexOf('--'));
    turns.set(session, [...(turns.get(session) ?? []), leaf]);
  }
  const others = leaves.filter((leaf) => !leaf.matches('.turn, .partner'));
  const order = others.flatMap((leaf) => [leaf, ...(turns.get(leaf.id) ?? [])]);
  order.splice(-1, 0, ...leaves.filter((leaf) => leaf.matches('.partner')));
  return order;
}

function wayTo(leaf: HTMLElement, name: 'back' | 'main', ...words: readonly (Node | string)[]): HTMLElement {
  const way = document.createElement('a');
  way.className = name;
  way.href = `#${leaf.id}`;
  way.append(...words);
  return way;
}

interface Ways {
  readonly before: HTMLElement | undefined;
  readonly after: HTMLElement | undefined;
  /** What leads back and on is called. */
  readonly words: DOMStringMap;
}

/** In the page few leaves lead back and on: one reads on. One that is shown alone gets both ways. */
function putWays(leaf: HTMLElement, { before, after, words: { back = '', on = '' } }: Ways): void {
  const foot = leaf.querySelector(':scope > .sheet > footer');
  if (!foot) return;
  const line = foot.querySelector('.on') ?? document.createElement('p');
  line.className = 'on';
  if (before && !line.querySelector('.back')) line.prepend(wayTo(before, 'back', back));
  if (after && !line.querySelector('.main')) {
    const words = document.createElement('span');
    words.append(`${on}: `, ...(headOf(after)?.cloneNode(true).childNodes ?? []));
    line.append(wayTo(after, 'main', words));
  }
  if (line.hasChildNodes()) foot.append(line);
}

/**
 * From here on a leaf that is not put away is the one that is shown. Told apart from being ready, which changes no style. On the
 * cover there is room by now for the way to the training screens, so that nothing moves when it comes.
 */
export function showOneByOne(book: HTMLElement): void {
  if (book.classList.contains('one-by-one')) return;
  book.classList.add('one-by-one');
  const line = document.createElement('p');
  line.className = 'on way-in';
  book.querySelector('.leaf.cover header')?.after(line);
}

/** `from`: where in the page one was when it was opened; who has turned since, by the cover's list, is taken there. */
export async function showLeaves(book: HTMLElement, from: string): Promise<void> {
  showOneByOne(book);
  const leaves = [...book.querySelectorAll<HTMLElement>('.leaf')];
  await nextTask();
  const order = inTurn(leaves);
  await nextTask();
  const title = document.title;
  const first = leaves[0];
  if (!first) return;
  let open: HTMLElement | undefined;

  const targetAt = (hash: string): HTMLElement | null => document.getElementById(decodeURIComponent(hash.slice(1)));

  const show = (target: HTMLElement | null, turned: boolean): void => {
    const leaf = target?.closest<HTMLElement>('.leaf') ?? first;
    if (open && leaf !== open) showReturn(leaf, open);
    open = leaf;
    const at = order.indexOf(leaf);
    putWays(leaf, { before: order[at - 1], after: order[at + 1], words: book.dataset });
    for (const one of leaves) {
      if (one === leaf) one.removeAttribute('hidden');
      else if (!one.hasAttribute('hidden')) one.setAttribute('hidden', 'until-found');
    }
    const head = headOf(leaf);
    document.title = leaf === first ? title : `${head?.textContent ?? ''} – ${title}`;
    const within = target && target !== leaf ? target : undefined;
    if (within) within.scrollIntoView();
    else if (turned) scrollTo(0, 0);
    if (!turned) return;
    const heard = within ?? head;
    heard?.setAttribute('tabindex', '-1');
    heard?.focus({ preventScroll: true });
  };

  // The browser found words in a leaf that was not open: turn to it.
  book.addEventListener('beforematch', ({ target }) => {
    const leaf = target instanceof HTMLElement ? target.closest<HTMLElement>('.leaf') : null;
    if (!leaf) return;
    history.replaceState(null, '', `#${leaf.id}`);
    setTimeout(() => show(leaf, false));
  });
  addEventListener('hashchange', () => show(targetAt(location.hash), true));
  book.hidden = false;
  show(targetAt(location.hash), location.hash !== from);
  book.classList.add('ready');
}
