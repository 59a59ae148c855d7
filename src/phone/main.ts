/** The booklet's script: takes the client's part in where it stands apart, then shows one leaf at a time. */
import { askForPayload, takeIn } from './fetch-payload.js';
import { showLeaves } from './show-leaves.js';

const root = document.documentElement;
root.classList.add('leafing');
const { payload } = root.dataset;
// Asked for at once, while the page is still being read.
const asked = payload === undefined ? undefined : askForPayload(payload);

async function start(): Promise<void> {
  const book = asked === undefined ? document.querySelector<HTMLElement>('.book') : takeIn(await asked);
  if (book) showLeaves(book);
}

// What could not be had or taken in leaves the page as it was, with its link to the client's part.
const begin = (): void => {
  start().catch(() => root.classList.remove('leafing'));
};
if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', begin);
else begin();
