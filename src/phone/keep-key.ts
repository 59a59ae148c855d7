/**
 * Keeps a booklet's key on this phone, as something that opens and that nobody gets out again; and forgets it, with all
 * that was kept of the booklet. Other booklets of the same host keep what is theirs.
 */
import { type DBSchema, openDB } from 'idb';
import { bookletId } from '../model/identity.js';
import type { FolderKey } from '../publish/seal-booklet.js';
import { openStore } from './keep/open-store.js';

interface Tables extends DBSchema {
  readonly keys: { readonly key: string; readonly value: FolderKey };
}

const NAME = 'chalkleaf keys';

/** The folder's address: what its worker goes by as well. */
const scopeOf = (): string => new URL('./', location.href).href;

const openKeys = () =>
  openDB<Tables>(NAME, 1, {
    upgrade: (store) => {
      store.createObjectStore('keys');
    },
  });

/** `undefined` where none is kept, or the browser keeps nothing. */
export async function keptKey(): Promise<FolderKey | undefined> {
  try {
    const store = await openKeys();
    const key = await store.get('keys', scopeOf());
    store.close();
    return key;
  } catch {
    return undefined;
  }
}

/** `false` where this browser cannot keep it. */
export async function keepKey(key: FolderKey): Promise<boolean> {
  try {
    const store = await openKeys();
    await store.put('keys', key, scopeOf());
    store.close();
    return (await keptKey()) !== undefined;
  } catch {
    return false;
  }
}

/** The key, the pages put away for a time without a network, and the marks of the booklet `book`. */
export async function forgetAll(book: string | undefined): Promise<void> {
  const store = await openKeys();
  await store.delete('keys', scopeOf());
  store.close();
  // The worker first: it would put away again what it is asked for.
  const worker = await navigator.serviceWorker?.getRegistration(scopeOf());
  if (worker?.scope === scopeOf()) await worker.unregister();
  const names = typeof caches === 'undefined' ? [] : await caches.keys();
  const own = names.filter((name) => name.startsWith(`chalkleaf ${scopeOf()} `));
  await Promise.all(own.map((name) => caches.delete(name)));
  if (book !== undefined) await forgetMarks(book);
}

async function forgetMarks(book: string): Promise<void> {
  const nothing = (): void => undefined;
  const store = await openStore({ late: nothing, taken: nothing, closed: nothing });
  if (typeof store === 'string') return;
  const work = store.transaction(['marks', 'kept'], 'readwrite');
  const marks = await work.objectStore('marks').index('book').getAllKeys(bookletId(book));
  await Promise.all([
    ...marks.map((key) => work.objectStore('marks').delete(key)),
    work.objectStore('kept').delete(book),
  ]);
  await work.done;
  store.close();
}
