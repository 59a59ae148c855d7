/**
 * One leaf on the screen at once. The address decides which, so that the phone's own back button works and a leaf
 * can be marked or sent. The other leaves stay findable where the browser can reveal what it finds.
 */

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

const besideOf = (beside: Element | null): HTMLElement | undefined =>
  beside instanceof HTMLElement && beside.matches('.leaf') ? beside : undefined;

function wayTo(leaf: HTMLElement, name: 'back' | 'main', ...words: readonly (Node | string)[]): HTMLElement {
  const way = document.createElement('a');
  way.className = name;
  way.href = `#${leaf.id}`;
  way.append(...words);
  return way;
}

/** What stands right beside a leaf in the page has no link there. Shown alone it gets one. */
function putWays(leaf: HTMLElement, { back = '', on = '' }: DOMStringMap): void {
  const foot = leaf.querySelector(':scope > .sheet > footer');
  if (!foot) return;
  const line = foot.querySelector('.on') ?? document.createElement('p');
  line.className = 'on';
  const before = besideOf(leaf.previousElementSibling);
  if (before && !line.querySelector('.back')) line.prepend(wayTo(before, 'back', back));
  const after = besideOf(leaf.nextElementSibling);
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
export function showLeaves(book: HTMLElement, from: string): void {
  showOneByOne(book);
  const leaves = [...book.querySelectorAll<HTMLElement>('.leaf')];
  const title = document.title;
  const first = leaves[0];
  if (!first) return;
  let open: HTMLElement | undefined;

  const targetAt = (hash: string): HTMLElement | null => document.getElementById(decodeURIComponent(hash.slice(1)));

  const show = (target: HTMLElement | null, turned: boolean): void => {
    const leaf = target?.closest<HTMLElement>('.leaf') ?? first;
    if (open && leaf !== open) showReturn(leaf, open);
    open = leaf;
    putWays(leaf, book.dataset);
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

  for (const leaf of leaves) {
    // The browser found words in a leaf that was not open: turn to it.
    leaf.addEventListener('beforematch', () => history.replaceState(null, '', `#${leaf.id}`));
    leaf.addEventListener('beforematch', () => setTimeout(() => show(leaf, false)));
  }
  addEventListener('hashchange', () => show(targetAt(location.hash), true));
  show(targetAt(location.hash), location.hash !== from);
  book.classList.add('ready');
}
