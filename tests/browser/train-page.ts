/** A demo client's issued booklet as a phone has it, and a thumb that does what the main button says. */

import type { Locator, Page } from 'playwright-core';
import { planClient, readStudio } from '../../src/app/read-studio.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { bookletId } from '../../src/model/identity.js';
import type { Drawings } from '../../src/model/picture.js';
import type { Plan } from '../../src/model/plan.js';
import { invariant } from '../../src/model/result.js';
import { clientPlanOf } from '../../src/web/client-plan.js';

const TODAY = '2026-11-24';
export const BOOKLET = '0123456789abcdef0123456789abcdef';

export interface Issued {
  readonly booklet: Booklet;
  readonly plan: Plan;
  readonly sent: ClientPlan;
  /** Of the exercises that have a page in it, made when they are asked for: to pose a whole library takes long. */
  readonly drawings: Drawings;
}

/** The demo's content, planned and issued as edition 1. */
export async function issuedFor(client: string): Promise<Issued> {
  const content = new URL('../../content', import.meta.url).pathname;
  const studio = await readStudio({ content, out: '', state: '', today: TODAY, only: client, json: false });
  const one = studio.content.clients.find(({ id }) => id === client);
  invariant(one !== undefined, 'the demo has that client');
  const { planned } = planClient(studio, one, TODAY, 1);
  invariant(planned !== null, 'the client can be planned');
  const { plan } = planned;
  const booklet = composeBooklet({ library: studio.content.library, client: one, plan });
  const pages = new Set(booklet.parts.flatMap((part) => (part.kind === 'exercise' ? [part.id] : [])));
  const drawn = studio.content.library.exercises.filter(({ id }) => pages.has(id));
  let drawings: Drawings | undefined;
  return {
    booklet,
    plan,
    sent: clientPlanOf(plan, { bookletId: bookletId(BOOKLET), standing: 'stands' }),
    get drawings() {
      drawings ??= drawLibrary(drawn);
      return drawings;
    },
  };
}

/** Everything of work in a session, by key. */
export const keysOf = ({ weeks }: ClientPlan, occurrence: number): readonly string[] =>
  weeks
    .flatMap(({ sessions }) => sessions)
    .filter((one) => one.occurrence === occurrence)
    .flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ key }) => key))));

export const kindOf = (page: Page): Promise<string> =>
  page.evaluate(() => document.querySelector('.training-sheet')?.className.replace('training-sheet ', '') ?? '');

/** To the training screens, wherever the page is. */
export async function toTraining(page: Page): Promise<void> {
  await page.waitForSelector('#training', { state: 'attached' });
  await page.evaluate(() => {
    location.hash = '#now';
  });
  await page.waitForSelector('#training .training-sheet', { state: 'visible' });
}

/** What is tapped next by somebody who does all of it: the main button, else the first answer. */
export const nextTap = (kind: string): string =>
  kind.startsWith('question') ? '.training-page > .answers .tap >> nth=0' : '#training-main';

/** Marks as kept: the newest first of the page's own storage. */
export const eventsIn = (page: Page): Promise<readonly { readonly kind: string; readonly key?: string }[]> =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const opening = indexedDB.open('chalkleaf');
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('marks').objectStore('marks').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result.map(({ event }) => event).sort((a, b) => a.seq - b.seq));
          };
        };
      }),
  );

/** The button that says exactly this. */
export const says = (text: string): string => `#training button:text-is(${JSON.stringify(text)})`;

/** Taps, and waits until the screen is another. */
export async function tapOnce(page: Page, on: string | Locator): Promise<void> {
  const before = await page.evaluate(() => document.querySelector('#training')?.innerHTML);
  await (typeof on === 'string' ? page.locator(on).first() : on).tap({ timeout: 5000 });
  await page.waitForFunction((was) => document.querySelector('#training')?.innerHTML !== was, before);
}

/** Taps, and lets the moment pass in which a second tap would be the same one: on a page whose clock is in hand. */
export async function tap(page: Page, on: string | Locator): Promise<void> {
  await tapOnce(page, on);
  await page.clock.runFor(700);
}
