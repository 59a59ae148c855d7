/**
 * Keeps a hosted booklet readable without a network. The shell is put away whole when this script is new; the client's
 * part is asked for first, so that a new edition arrives, and taken from what was put away where no answer comes in time.
 */

/** Names below the folder, and a digest of all that they hold; written in when the shell is made. */
declare const FILES: readonly string[];
declare const DIGEST: string;
/** Asked for first; everything else is taken from what was put away. */
declare const PAYLOAD: string;
/** Put away only where the client's part asks for them. */
declare const PLAN_AGAIN: string;
declare const SEALING: string;

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

/** Other booklets of the same host have caches of their own. */
const OURS = `chalkleaf ${registration.scope} `;
const NAME = OURS + DIGEST;
/** Longer than this nobody waits on the floor. */
const PATIENCE_MS = 3000;

const addressOf = (name: string): string => new URL(name, registration.scope).href;

/**
 * Asked of the host itself, which may answer that what is stored already still holds. A host that leads elsewhere from a
 * name is followed, and its answer kept as if it had stood there: a page may not be opened with one that was led on.
 */
async function ask(address: string): Promise<Response> {
  const answer = await fetch(address, { cache: 'no-cache', credentials: 'same-origin' });
  if (!answer.redirected) return answer;
  const { status, statusText, headers } = answer;
  return new Response(await answer.blob(), { status, statusText, headers });
}

async function putAway(): Promise<void> {
  const cache = await caches.open(NAME);
  const add = async (name: string): Promise<Response> => {
    const answer = await ask(addressOf(name));
    if (!answer.ok) throw new Error(name);
    await cache.put(addressOf(name), answer.clone());
    return answer;
  };
  const asked = [PLAN_AGAIN, SEALING];
  const [payload] = await Promise.all([add(PAYLOAD), ...FILES.filter((name) => !asked.includes(name)).map(add)]);
  const text = await payload.text();
  // Nobody sees from here what a sealed part asks for.
  const isSealed = text.includes('id="sealed"');
  // The larger part of what a folder can do, and only some clients' plans let it: of a field it has, a plan that travels
  // has the name.
  if (isSealed || text.includes('"replan"')) await add(PLAN_AGAIN);
  if (isSealed || text.includes('"marksTo"')) await add(SEALING);
  await skipWaiting();
}

async function dropOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== NAME).map((name) => caches.delete(name)));
  await clients.claim();
}

async function stored(address: string): Promise<Response | undefined> {
  return (await caches.open(NAME)).match(address, { ignoreSearch: true });
}

/** What comes too late for this opening is there for the next. */
function freshFirst(address: string, event: Waiting): Promise<Response> {
  const asked = ask(address).then(async (answer) => {
    if (answer.ok) await (await caches.open(NAME)).put(address, answer.clone());
    return answer;
  });
  event.waitUntil(asked.catch(() => undefined));
  const late = new Promise<undefined>((done) => setTimeout(() => done(undefined), PATIENCE_MS));
  const inTime = Promise.race([asked, late]).catch(() => undefined);
  return inTime.then(async (answer) => (answer?.ok ? answer : ((await stored(address)) ?? asked)));
}

async function storedFirst(address: string): Promise<Response> {
  const known = await stored(address);
  if (known !== undefined) return known;
  const answer = await ask(address);
  if (answer.ok) await (await caches.open(NAME)).put(address, answer.clone());
  return answer;
}

addEventListener('install', (event) => {
  if (isWaiting(event)) event.waitUntil(putAway());
});
addEventListener('activate', (event) => {
  if (isWaiting(event)) event.waitUntil(dropOlder());
});
addEventListener('fetch', (event) => {
  if (!isFetching(event)) return;
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  const address = origin + pathname;
  if (request.method !== 'GET' || !address.startsWith(registration.scope)) return;
  // Whatever else lies below this folder is not the booklet's.
  const name = address.slice(registration.scope.length) || 'index.html';
  if (name === PAYLOAD) event.respondWith(freshFirst(addressOf(name), event));
  else if (FILES.includes(name)) event.respondWith(storedFirst(addressOf(name)));
});
