/**
 * Opens a sealed booklet: with the key this phone remembers, with the link's, or with words. All of it is opened before any
 * of it is shown. The page it is opened on came with it, in its language; here stands only what is done.
 */
import { BESIDE, type SealedBooklet } from '../model/sealed.js';
import {
  type FolderKey,
  holdKey,
  isKeyOf,
  keyInLink,
  type OpeningFault,
  openLock,
  openPart,
  readSealed,
} from '../publish/seal-booklet.js';
import { unpackPlan } from '../session/travelling.js';
import { forgetAll, keepKey, keptKey } from './keep-key.js';
import { saveBytes } from './save-file.js';

export interface Unsealed {
  /** The client's part, whole. */
  readonly text: string;
  /** Whether the next opening needs nothing. */
  readonly kept: boolean;
  /** To be called once the client's part stands in the page. */
  readonly placed: (book: HTMLElement) => void;
}

type Fault = OpeningFault | 'not secure' | 'not kept';

interface Page {
  readonly root: HTMLElement;
  readonly form: HTMLFormElement;
  readonly say: (fault: Fault | null) => void;
  readonly wordsOf: (fault: Fault) => string;
}

function takePage(apart: Document): Page | undefined {
  const root = apart.querySelector<HTMLElement>('.opening');
  const form = root?.querySelector('form');
  const said = form?.querySelector('.said');
  if (!root || !form || !said) return undefined;
  const wordsOf = (fault: Fault): string => root.querySelector(`[data-fault="${fault}"]`)?.textContent ?? '';
  const say = (fault: Fault | null): void => {
    said.textContent = fault === null ? '' : wordsOf(fault);
  };
  return { root: document.adoptNode(root), form, say, wordsOf };
}

const show = (element: Element | null, is: boolean): void => {
  if (element instanceof HTMLElement) element.hidden = !is;
};

/** Never resolves until it is open; `undefined` where this is no sealed booklet. */
export async function openSealed(apart: Document): Promise<Unsealed | undefined> {
  const sealed = readSealed(apart.getElementById('sealed')?.textContent ?? '');
  const page = takePage(apart);
  const main = document.getElementById('booklet');
  if (!page || !main) return undefined;
  const stop = (fault: Fault): Promise<never> => {
    stand(main, page);
    show(page.form, true);
    for (const child of page.form.children) show(child, child.matches('.said'));
    page.say(fault);
    return new Promise(() => undefined);
  };
  if (sealed === null) return stop('damaged');
  if (crypto.subtle === undefined) return stop('not secure');
  const given = keyInLink(location.hash);
  const kept = await keptKey();
  if (kept !== undefined && isKeyOf(kept, sealed)) {
    dropKey();
    const opened = await openPart(sealed.booklet, 'booklet', kept);
    return 'fault' in opened ? stop(opened.fault) : whole(opened.bytes, { kept: true, sealed, key: kept, page });
  }
  stand(main, page);
  return asked(sealed, page, given);
}

function stand(main: HTMLElement, { root }: Page): void {
  show(root.querySelector('.unopened'), false);
  main.replaceChildren(root);
}

/** The address is kept free of what opens: it may be shown, copied or sent. */
function dropKey(): void {
  if (keyInLink(location.hash) !== undefined) history.replaceState(null, '', location.pathname + location.search);
}

function asked(sealed: SealedBooklet, page: Page, inLink: string | undefined): Promise<Unsealed> {
  const { form, say } = page;
  const typed = (name: string): string => form.querySelector<HTMLInputElement>(`#opening-${name}`)?.value.trim() ?? '';
  let given = inLink;
  const ask = (): void => {
    show(form.querySelector('.by-link'), given === undefined);
    show(form.querySelector('.ready'), given !== undefined);
    show(form, true);
  };
  ask();
  // The link opened where the page stands already.
  const turned = (): void => {
    given = keyInLink(location.hash) ?? given;
    say(null);
    ask();
  };
  addEventListener('hashchange', turned);
  let busy = false;
  return new Promise((done) => {
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      if (busy) return;
      busy = true;
      say(null);
      show(form.querySelector('.busy'), true);
      const keeps = event.submitter instanceof HTMLButtonElement && event.submitter.value === 'kept';
      const link = given ?? keyInLink(typed('link')) ?? '';
      tryOpen(sealed, { link, words: typed('words') }).then(
        async (opened) => {
          if ('fault' in opened) {
            // What the link carries is no good: it is asked for.
            if (opened.fault === 'wrong link') given = undefined;
            ask();
            say(opened.fault);
          } else {
            removeEventListener('hashchange', turned);
            dropKey();
            const kept = keeps && (await keepKey(opened.key));
            done(whole(opened.bytes, { kept, sealed, key: opened.key, page, unkept: keeps && !kept }));
          }
          busy = false;
          show(form.querySelector('.busy'), false);
        },
        () => {
          busy = false;
          show(form.querySelector('.busy'), false);
          say('damaged');
        },
      );
    });
  });
}

type Tried = { readonly bytes: Uint8Array; readonly key: FolderKey } | { readonly fault: OpeningFault };

async function tryOpen(sealed: SealedBooklet, given: { link: string; words: string }): Promise<Tried> {
  const found = await openLock(sealed, given);
  if ('fault' in found) return found;
  const key = await holdKey(found.key);
  const opened = await openPart(sealed.booklet, 'booklet', key);
  return 'fault' in opened ? opened : { bytes: opened.bytes, key };
}

interface Standing {
  readonly kept: boolean;
  readonly sealed: SealedBooklet;
  readonly key: FolderKey;
  readonly page: Page;
  /** It was to be kept, and could not be. */
  readonly unkept?: boolean;
}

function whole(bytes: Uint8Array, standing: Standing): Unsealed {
  addEventListener('hashchange', dropKey);
  const text = new TextDecoder().decode(bytes);
  return { text, kept: standing.kept, placed: (book) => placeBeside(book, standing) };
}

/** At the foot of the cover: what lies beside the booklet, and the way to forget it. */
function placeBeside(book: HTMLElement, { page, key, unkept }: Standing): void {
  const section = page.root.querySelector<HTMLElement>('.opened');
  const cover = book.querySelector('.leaf');
  if (!section || !cover) return;
  const notHad = section.querySelector<HTMLElement>('.not-had');
  const tell = (words: string): void => {
    if (notHad) notHad.textContent = words;
  };
  if (unkept) tell(page.wordsOf('not kept'));
  for (const button of section.querySelectorAll<HTMLElement>('[data-part]')) {
    const { part } = button.dataset;
    if (part !== 'paper' && part !== 'calendar') continue;
    button.addEventListener('click', () => {
      tell('');
      saveOpened(part, key).then(
        (fault) => tell(fault === null ? '' : page.wordsOf(fault)),
        () => tell(notHad?.dataset.says ?? ''),
      );
    });
  }
  const forgetting = section.querySelector('.forgetting');
  const forget = section.querySelector('.forget');
  const turn = (asks: boolean): void => {
    show(forgetting, asks);
    show(forget, !asks);
  };
  forget?.addEventListener('click', () => turn(true));
  section.querySelector('.no')?.addEventListener('click', () => turn(false));
  section.querySelector('.yes')?.addEventListener('click', () => {
    const leave = (): void => location.replace(location.pathname);
    forgetAll(bookHere()).then(leave, leave);
  });
  show(section, true);
  cover.append(section);
}

/** Rejects where the file cannot be had. */
async function saveOpened(part: keyof typeof BESIDE, key: FolderKey): Promise<Fault | null> {
  const { file, name, type } = BESIDE[part];
  const answer = await fetch(file, { credentials: 'same-origin', referrerPolicy: 'no-referrer' });
  if (!answer.ok) throw new Error(file);
  const opened = await openPart((await answer.text()).trim(), part, key);
  if ('fault' in opened) return opened.fault;
  saveBytes(opened.bytes, name, type);
  return null;
}

/** Under which its marks are kept; `undefined` of a draft. */
function bookHere(): string | undefined {
  try {
    return unpackPlan(JSON.parse(document.getElementById('plan')?.textContent ?? '')).bookletId;
  } catch {
    return undefined;
  }
}
