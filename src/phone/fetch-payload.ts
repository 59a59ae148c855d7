/**
 * Takes in the client's part of a hosted booklet. A folder opened from a disk can fetch nothing: there the page
 * turns to the client's part itself, which reads without any script.
 */

/** The client's part as a document of its own, in which nothing runs; `undefined` where it cannot be had. */
export async function askForPayload(address: string): Promise<Document | undefined> {
  if (location.protocol === 'file:') {
    location.replace(address + location.hash);
    return undefined;
  }
  const answer = await fetch(address, { credentials: 'same-origin', referrerPolicy: 'no-referrer' });
  if (!answer.ok) return undefined;
  return new DOMParser().parseFromString(await answer.text(), 'text/html');
}

export function takeIn(apart: Document | undefined): HTMLElement | undefined {
  const book = apart?.querySelector<HTMLElement>('.book');
  const main = document.getElementById('booklet');
  if (!apart || !book || !main) return undefined;
  const plan = apart.getElementById('plan');
  // Put away while still apart, so that the phone never lays out what nobody looks at.
  for (const leaf of book.querySelectorAll('.leaf')) leaf.setAttribute('hidden', 'until-found');
  main.replaceChildren(...[book, plan].flatMap((part) => (part ? [document.adoptNode(part)] : [])));
  document.title = apart.title;
  document.documentElement.lang = apart.documentElement.lang;
  document.documentElement.dir = apart.documentElement.dir;
  return book;
}
