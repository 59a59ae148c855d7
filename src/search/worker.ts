/**
 * Keeps the library readable and searchable without a network: what the first page needs is put away when this script
 * is new, any other page once it was opened. Nothing else that lies below the same address is touched.
 */

/** Names below the library's root that are put away at once; written in when the library is made, as is the next. */
declare const FIRST: readonly string[];
/** Every other page of the library. */
declare const PAGES: readonly string[];
declare const registration: { readonly scope: string };
declare const clients: { readonly claim: () => Promise<void> };
declare function skipWaiting(): Promise<void>;

interface Waiting extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}
const isWaiting = (event: Event): event is Waiting => 'waitUntil' in event;
const isFetching = (event: Event): event is Fetching => 'respondWith' in event && 'request' in event;

/** A booklet below the same address has a cache and a name of its own. */
const NAME = `chalkleaf library ${registration.scope}`;
/** Milliseconds: after this what was put away is read. */
const PATIENCE_MS = 3000;

const addressOf = (name: string): string => new URL(name, registration.scope).href;

/** A host that leads on from a name is followed, and its answer kept as if it had stood there. */
async function ask(address: string): Promise<Response> {
  const answer = await fetch(address, { cache: 'no-cache', credentials: 'same-origin' });
  if (!answer.redirected) return answer;
  const { status, statusText, headers } = answer;
  return new Response(await answer.blob(), { status, statusText, headers });
}

async function askAndKeep(address: string): Promise<Response> {
  const answer = await ask(address);
  if (answer.ok) await (await caches.open(NAME)).put(address, answer.clone());
  return answer;
}

async function putAway(): Promise<void> {
  await Promise.all(
    FIRST.map(async (name) => {
      if (!(await askAndKeep(addressOf(name))).ok) throw new Error(name);
    }),
  );
  await skipWaiting();
}

/** What was opened before stays readable; what the library no longer has goes. */
async function dropGone(): Promise<void> {
  const cache = await caches.open(NAME);
  const held = new Set([...FIRST, ...PAGES].map(addressOf));
  const gone = (await cache.keys()).filter(({ url }) => !held.has(url));
  await Promise.all(gone.map((request) => cache.delete(request)));
  await clients.claim();
}

const kept = async (address: string): Promise<Response | undefined> => (await caches.open(NAME)).match(address);

/** The host's own answer, or what was put away where none comes in time. */
async function freshFirst(address: string, event: Waiting): Promise<Response> {
  const asked = askAndKeep(address);
  event.waitUntil(asked.catch(() => undefined));
  const late = new Promise<undefined>((done) => setTimeout(() => done(undefined), PATIENCE_MS));
  const answer = await Promise.race([asked, late]).catch(() => undefined);
  return answer?.ok ? answer : ((await kept(address)) ?? asked);
}

/** A face that comes late is no use to a page that does without: what was put away first, and the host's for the next time. */
async function keptFirst(address: string, event: Waiting): Promise<Response> {
  const held = await kept(address);
  const asked = askAndKeep(address);
  event.waitUntil(asked.catch(() => undefined));
  return held ?? asked;
}

addEventListener('install', (event) => {
  if (isWaiting(event)) event.waitUntil(putAway());
});
addEventListener('activate', (event) => {
  if (isWaiting(event)) event.waitUntil(dropGone());
});
addEventListener('fetch', (event) => {
  if (!isFetching(event)) return;
  const { origin, pathname } = new URL(event.request.url);
  const address = origin + pathname;
  if (event.request.method !== 'GET' || !address.startsWith(registration.scope)) return;
  const name = address.slice(registration.scope.length);
  // Hosts leave out `index.html`, and some of them `.html`.
  const held = [name, `${name}index.html`, `${name}.html`].find((one) => FIRST.includes(one) || PAGES.includes(one));
  if (held === undefined) return;
  const answer = held.startsWith('fonts/') ? keptFirst : freshFirst;
  event.respondWith(answer(addressOf(held), event));
});
