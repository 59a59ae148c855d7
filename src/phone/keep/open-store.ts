/**
 * Opens the browser's store of marks, and tells when it can be used after all, or no longer. What is kept there stays
 * through every version of this program.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { LogEvent } from '../../model/log.js';
import type { KeepFault } from '../../model/training.js';

interface Tables extends DBSchema {
  readonly marks: {
    readonly key: string;
    readonly value: { readonly id: string; readonly book: string; readonly event: LogEvent };
    readonly indexes: { readonly book: string };
  };
  readonly kept: { readonly key: string; readonly value: unknown };
}
export type Store = IDBPDatabase<Tables>;

export interface StoreNews {
  /** It answered, after it had been given up. */
  readonly late: (store: Store) => void;
  /** A newer program in another window wants it: this one has let go of it for good. */
  readonly taken: () => void;
  /** The browser closed it; it can be opened again. */
  readonly closed: () => void;
}

const NAME = 'chalkleaf';
const VERSION = 1;
/** Under this key stands the device's own name; no booklet is called so. */
export const DEVICE = '';
/** A browser that has not answered by then may never. */
const PATIENCE_MS = 4000;

export async function openStore({ late, taken, closed }: StoreNews): Promise<Store | KeepFault> {
  if (typeof indexedDB === 'undefined' || indexedDB === null) return 'no storage';
  let held = false;
  try {
    const opening = openDB<Tables>(NAME, VERSION, {
      upgrade: (store) => {
        store.createObjectStore('marks', { keyPath: 'id' }).createIndex('book', 'book');
        store.createObjectStore('kept');
      },
      blocked: () => {
        held = true;
      },
      blocking: (_, __, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        taken();
      },
      terminated: closed,
    });
    const patience = new Promise<null>((done) => setTimeout(() => done(null), PATIENCE_MS));
    const store = await Promise.race([opening, patience]);
    if (store !== null) return store;
    opening.then(late, () => undefined);
    return held ? 'held elsewhere' : 'no storage';
  } catch (error) {
    return faultOf(error);
  }
}

/** The name of this browser in logs, given by whichever window comes first; it says nothing of whose it is. */
export async function nameDevice(store: Store): Promise<string> {
  const transaction = store.transaction('kept', 'readwrite', { durability: 'strict' });
  const known = await transaction.store.get(DEVICE);
  const [a = 0, b = 0] = crypto.getRandomValues(new Uint16Array(2));
  const hex = (n: number): string => n.toString(16).padStart(4, '0');
  const name = typeof known === 'string' ? known : `phone-${hex(a)}${hex(b)}`;
  if (name !== known) await transaction.store.put(name, DEVICE);
  await transaction.done;
  return name;
}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : '');

/** No transaction can be begun on it any more: what was asked has not been begun. */
export const isLost = (error: unknown): boolean => nameOf(error) === 'InvalidStateError';

export function faultOf(error: unknown): KeepFault {
  if (nameOf(error) === 'QuotaExceededError') return 'full';
  return nameOf(error) === 'VersionError' ? 'held elsewhere' : 'no storage';
}
