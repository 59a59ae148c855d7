/** A page that is watched for what none may do: run a word of somebody else's, ask another host, pop up, lead away. */
import type { BrowserContext, Page } from 'playwright-core';
import { ASKED_AWAY } from '../publish/hostile-strings.js';

export interface Snare {
  readonly page: Page;
  readonly visit: (address: string) => Promise<void>;
  /** Looks through all that stands on the page now, and sets off what only a finger or a pointer would. */
  readonly look: (where: string) => Promise<void>;
  readonly strikes: readonly string[];
}

/** `home` is where all that is visited begins. */
export async function openSnare(context: BrowserContext, home: string): Promise<Snare> {
  const strikes: string[] = [];
  const page = await context.newPage();
  let at = '';
  await page.exposeFunction('struck', () => strikes.push(`${at}: ran`));
  page.on('dialog', (dialog) => {
    strikes.push(`${at}: said ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (request.url().includes(ASKED_AWAY)) strikes.push(`${at}: asked ${request.url()}`);
  });
  page.on('framenavigated', (frame) => {
    if (frame === page.mainFrame() && !frame.url().startsWith(home)) strikes.push(`${at}: left`);
  });
  const look = async (where: string): Promise<void> => {
    at = where;
    const odd = await page.evaluate(oddOnes, ASKED_AWAY);
    strikes.push(...odd.map((html) => `${where}: carries ${html}`));
  };
  const visit = async (address: string): Promise<void> => {
    at = address.slice(home.length);
    await page.goto(address);
    await look(at);
  };
  return { page, visit, look, strikes };
}

/** Runs in the page. */
function oddOnes(away: string): string[] {
  const all = [...document.querySelectorAll('*')];
  const bad = all.filter(
    (one) =>
      [...one.attributes].some(({ name }) => name.startsWith('on')) ||
      /^(?:iframe|object|embed|base|plaintext|xmp|video|math)$/i.test(one.tagName) ||
      /^\s*(?:javascript|vbscript|data:text)/i.test(one.getAttribute('href') ?? '') ||
      one.hasAttribute('action') ||
      (one.getAttribute('src') ?? '').includes(away),
  );
  for (const one of all) {
    for (const kind of ['pointerover', 'focus', 'toggle', 'error', 'load']) one.dispatchEvent(new Event(kind));
  }
  return bad.map((one) => one.outerHTML.slice(0, 120));
}
