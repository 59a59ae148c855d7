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
