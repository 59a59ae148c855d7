/**
 * Takes in the client's part of a hosted booklet. A folder opened from a disk can fetch nothing: there the page
 * turns to the client's part itself, which reads without any script.
 */
import { nextTask } from './give-way.js';

/** The client's part as it stands at its address; `undefined` where it cannot be had. */
export async function askForPayload(address: string): Promise<string | undefined> {
  if (location.protocol === 'file:') {
    location.replace(address + location.hash);
    return undefined;
  }
  const answer = await fetch(address, { credentials: 'same-origin', referrerPolicy: 'no-referrer' });
  return answer.ok ? readInTurn(answer) : undefined;
}

/** Bytes; read together, the largest would hold up a slow phone as long as a screen takes to draw. */
const AT_A_TIME = 65_536;

/** As it comes, piece by piece: what has come is read while the rest is on its way. */
async function readInTurn(answer: Response): Promise<string> {
  const reader = answer.body?.getReader();
  if (reader === undefined) return answer.text();
  const decoder = new TextDecoder();
  let text = '';
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    for (let from = 0; from < value.length; from += AT_A_TIME) {
      text += decoder.decode(value.subarray(from, from + AT_A_TIME), { stream: true });
      await nextTask();
    }
  }
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
