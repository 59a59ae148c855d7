/** Puts beside the book what the training screens stand in: their section, the way into it, and the way back from any leaf. */

/** Where the screens stand: the address decides, so that the phone's own back button works. */
export const HERE = '#now';

export interface Built {
  readonly root: HTMLElement;
  /** The screens are drawn in it. */
  readonly mount: HTMLElement;
  /** What is put there is said once, politely. */
  readonly status: HTMLElement;
  readonly wayIn: HTMLElement;
  readonly wayBack: HTMLElement;
}

export function buildTraining(book: HTMLElement, title: string): Built {
  const root = document.createElement('section');
  root.id = 'training';
  root.hidden = true;
  root.setAttribute('aria-label', title);
  const mount = document.createElement('div');
  const status = document.createElement('p');
  status.className = 'heard';
  status.setAttribute('role', 'status');
  status.id = 'training-says';
  root.append(mount, status);
  book.before(root);
  const wayBack = wayTo('to-training');
  wayBack.hidden = true;
  book.after(wayBack);
  const wayIn = wayTo('main');
  book.querySelector('.way-in')?.append(wayIn);
  return { root, mount, status, wayIn, wayBack };
}

function wayTo(name: string): HTMLElement {
  const way = document.createElement('a');
  way.href = HERE;
  way.className = name;
  return way;
}

/** Of the height of the screen: more of it the bar does not cover. */
const MOST_OF_SCREEN = 0.4;

/**
 * The bar lies over the page's end: the page ends above it, and what has the focus is never beneath it. One that would cover too
 * much, in large text or from very near, takes its place after the page.
 */
export function makeRoomForBar(root: HTMLElement, mount: HTMLElement): () => void {
  let seen: Element | null = null;
  const measure = (): void => {
    const own = seen?.getBoundingClientRect().height ?? 0;
    const follows = own > MOST_OF_SCREEN * document.documentElement.clientHeight;
    const height = follows ? 0 : own;
    root.classList.toggle('bar-follows', follows);
    root.style.setProperty('--bar', `${Math.ceil(height)}px`);
    document.documentElement.style.setProperty('scroll-padding-bottom', `${Math.ceil(height)}px`);
  };
  const watching = new ResizeObserver(measure);
  addEventListener('resize', measure);
  return () => {
    const bar = mount.querySelector('.bar');
    if (bar === seen) return;
    if (seen) watching.unobserve(seen);
    seen = bar;
    if (bar) watching.observe(bar);
    measure();
  };
}
