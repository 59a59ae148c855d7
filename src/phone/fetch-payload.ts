/**
 * Takes in the client's part of a hosted booklet. A folder opened from a disk can fetch nothing: there the page
 * turns to the client's part itself, which reads without any script.
 */

/** The client's part as it stands at its address; `undefined` where it cannot be had. */
export async function askForPayload(address: string): Promise<string | undefined> {
  if (location.protocol === 'file:') {
    location.replace(address + location.hash);
    return undefined;
  }
  const answer = await fetch(address, { credentials: 'same-origin', referrerPolicy: 'no-referrer' });
  return answer.ok ? answer.text() : undefined;
}

/** A document of its own, in which nothing runs. */
export const readApart = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');

export const isSealed = (apart: Document): boolean => apart.getElementById('sealed') !== null;

export function takeIn(apart: Document): HTMLElement | undefined {
  const book = apart.querySelector<HTMLElement>('.book');
  const main = document.getElementById('booklet');
  if (!book || !main) return undefined;
  // Beside what is read stand the plan and what makes the drawings move, as data.
  const data = [apart.getElementById('plan'), apart.getElementById('movements')];
  // Put away while still apart, so that the phone never lays out what nobody looks at.
  for (const leaf of book.querySelectorAll('.leaf')) leaf.setAttribute('hidden', 'until-found');
  main.replaceChildren(...[book, ...data].flatMap((part) => (part ? [document.adoptNode(part)] : [])));
  document.title = apart.title;
  document.documentElement.lang = apart.documentElement.lang;
  document.documentElement.dir = apart.documentElement.dir;
  return book;
}

/** A page is not asked again for what it may hold of new more often than so. */
const LOOK_AGAIN_MS = 3_600_000;

/** A page that was left open for long, as from a home screen, is opened anew where its host has something else by now. */
export function watchForNewer(address: string, taken: string): void {
  let looked = Date.now();
  document.addEventListener('visibilitychange', async () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < LOOK_AGAIN_MS) return;
    looked = Date.now();
    const text = await askForPayload(address).catch(() => undefined);
    // What was done stands in the store, and where one was left with it.
    if (text !== undefined && text !== taken) location.reload();
  });
}
