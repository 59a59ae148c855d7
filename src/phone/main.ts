/**
 * The booklet's first script: takes the client's part in where it stands apart, then shows one leaf at a time. What it
 * takes to train comes after the page can be read.
 */
import './fill-gaps.js';
import { askForPayload, watchForNewer } from './fetch-payload.js';
import { nextTask } from './give-way.js';
import type { Unsealed } from './open-sealed.js';
import { askForScript, takePart } from './parts.js';
import { showLeaves } from './show-leaves.js';
import { readApart, takeIn } from './take-in.js';

const root = document.documentElement;
root.classList.add('leafing');
const { payload } = root.dataset;
// Asked for at once, while the page is still being read: in a task of its own it would be asked for after the first frame alone.
const asked = payload === undefined ? undefined : askForPayload(payload);

async function start(): Promise<void> {
  const text = await asked;
  await nextTask();
  const unsealed = text === undefined ? undefined : await openedOf(text);
  const part = unsealed?.text ?? text;
  const from = location.hash;
  const book = part === undefined ? document.querySelector<HTMLElement>('.book') : await takeIn(part, askForTraining);
  if (!book) return;
  unsealed?.placed(book);
  await showLeaves(book, from);
  // What was opened this once is not closed again for something new.
  if (payload !== undefined && text !== undefined && unsealed?.kept !== false) watchForNewer(payload, text);
  askForTraining();
  afterPaint(stayReadable);
}

/** On its way while the rest of the book is taken in. */
const askForTraining = (): void => afterPaint(() => askForScript('training.js'));

type OpenSealed = (apart: Document) => Promise<Unsealed | undefined>;
const isOpenSealed = (part: unknown): part is OpenSealed => typeof part === 'function';

/** Written by the frame of every sealed part, and by nothing that somebody writes. */
const SEALED = 'id="sealed"';

/** What a sealed part holds, once somebody has opened it; `undefined` of one that is not sealed. */
async function openedOf(text: string): Promise<Unsealed | undefined> {
  // A booklet is too long to be read twice, and says so sooner.
  if (!text.includes(SEALED)) return undefined;
  askForScript('sealing.js');
  const open = await takePart('open sealed');
  return isOpenSealed(open) ? open(readApart(text)) : undefined;
}

/** Two frames on, the first one stands on the screen. */
const afterPaint = (work: () => void): void => {
  requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(work)));
};

/** Where the host allows it, the folder can be opened again without a network. */
function stayReadable(): void {
  if (payload === undefined || !('serviceWorker' in navigator) || !isSecureContext) return;
  navigator.serviceWorker.register('worker.js').catch(() => undefined);
}

// What could not be had or taken in leaves the page as it was, with its link to the client's part.
const begin = (): void => {
  start().catch(() => root.classList.remove('leafing'));
};
if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', begin);
else begin();
