/**
 * Takes in the client's part of a hosted booklet. A folder opened from a disk can fetch nothing: there the page
 * turns to the client's part itself, which reads without any script.
 */
const PAYLOAD = 'payload.html';

export async function fetchPayload(): Promise<HTMLElement | undefined> {
  if (location.protocol === 'file:') {
    location.replace(PAYLOAD + location.hash);
    return undefined;
  }
  const answer = await fetch(PAYLOAD, { credentials: 'same-origin', referrerPolicy: 'no-referrer' });
  if (!answer.ok) return undefined;
  const apart = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const book = apart.querySelector<HTMLElement>('.book');
  const plan = apart.getElementById('plan');
  const main = document.getElementById('booklet');
  if (!book || !main) return undefined;
  main.replaceChildren(...[book, plan].flatMap((part) => (part ? [document.adoptNode(part)] : [])));
  document.title = apart.title;
  document.documentElement.lang = apart.documentElement.lang;
  document.documentElement.dir = apart.documentElement.dir;
  return book;
}
