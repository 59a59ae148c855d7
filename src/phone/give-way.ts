/**
 * Work that takes longer than anybody should wait for a tap to be answered is done in pieces. Between two of them the page
 * paints, scrolls and answers.
 */
import type { InSteps } from '../session/in-steps.js';

/** Milliseconds; with one more piece on top still well under what browsers count as long (50 ms: W3C, Long Tasks). */
const AT_A_TIME_MS = 8;

/** In a task of its own, after what waits there already. Unlike a timer it is not slowed down where nobody looks. */
export const nextTask = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });

/** Does all of it, and gives way as often as it must. */
export async function finishInTurn<T>(work: InSteps<T>): Promise<T> {
  const inTurn = takingTurns();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    await inTurn();
  }
}

/** To be waited for after each piece: gives way as soon as enough was done since the last time. */
export function takingTurns(): () => Promise<void> {
  let began = performance.now();
  return async () => {
    if (performance.now() - began < AT_A_TIME_MS) return;
    await nextTask();
    began = performance.now();
  };
}
