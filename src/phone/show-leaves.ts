/**
 * One leaf on the screen at once. The address decides which, so that the phone's own back button works and a leaf
 * can be marked or sent. The other leaves stay findable where the browser can reveal what it finds.
 */
export function showLeaves(book: HTMLElement): void {
  const leaves = [...book.querySelectorAll<HTMLElement>('.leaf')];
  const title = document.title;
  const first = leaves[0];
  if (!first) return;

  const leafAt = (hash: string): HTMLElement => {
    const target = document.getElementById(decodeURIComponent(hash.slice(1)));
    return target?.closest<HTMLElement>('.leaf') ?? first;
  };

  const show = (leaf: HTMLElement, turned: boolean): void => {
    for (const one of leaves) {
      if (one === leaf) one.removeAttribute('hidden');
      else one.setAttribute('hidden', 'until-found');
    }
    const head = leaf.querySelector<HTMLElement>('h2');
    document.title = leaf === first ? title : `${head?.textContent ?? ''} – ${title}`;
    if (!turned) return;
    scrollTo(0, 0);
    head?.setAttribute('tabindex', '-1');
    head?.focus({ preventScroll: true });
  };

  for (const leaf of leaves) {
    // The browser found words in a leaf that was not open: turn to it.
    leaf.addEventListener('beforematch', () => history.replaceState(null, '', `#${leaf.id}`));
    leaf.addEventListener('beforematch', () => setTimeout(() => show(leaf, false)));
  }
  addEventListener('hashchange', () => show(leafAt(location.hash), true));
  show(leafAt(location.hash), false);
  book.classList.add('ready');
}
