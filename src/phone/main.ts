/** The booklet's script: takes the client's part in where it stands apart, then shows one leaf at a time. */
import { fetchPayload } from './fetch-payload.js';
import { showLeaves } from './show-leaves.js';

document.documentElement.classList.add('leafing');

async function start(): Promise<void> {
  const book = document.querySelector<HTMLElement>('.book') ?? (await fetchPayload());
  if (book) showLeaves(book);
}

const begin = (): void => {
  start().catch(() => document.documentElement.classList.remove('leafing'));
};
if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', begin);
else begin();
