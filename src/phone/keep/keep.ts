/**
 * Keeps a booklet's marks on the phone. A mark is kept once its transaction is committed, with what the screen was left
 * at; what is not committed was not marked. Windows of one browser share one log: places in it are given inside the
 * transaction, so that two at once never take the same.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ClientPlan } from '../../model/client-plan.js';
import type { LogEvent } from '../../model/log.js';
import type { KeepFault } from '../../model/training.js';
import type { Mark } from '../../session/training/told.js';
import type { TrainingState } from '../../session/training/training-state.js';
import { type Kept, NOTHING_KEPT, readKept } from './kept.js';
import { stampMarks } from './stamp-marks.js';

export interface Keep {
  /** What stands in the way of keeping; `null` where nothing does. */
  readonly fault: () => KeepFault | null;
  /** All of this booklet as last read, those of other windows with them. */
  readonly events: () => readonly LogEvent[];
  readonly kept: () => Kept;
  /** The name of this browser in logs. */
  readonly device: () => string;
  /** Resolves once committed; `false` where it could not be kept, and then nothing of it was. */
  readonly add: (marks: readonly Mark[], state: TrainingState) => Promise<boolean>;
  readonly put: (part: Partial<Kept>) => Promise<boolean>;
  /** Told when another window has kept something, or the page comes back to the front. */
  readonly onChange: (listener: () => void) => void;
  /** Asks the browser never to make room at these marks' cost; `null` where it cannot be asked. */
  readonly persist: () => Promise<boolean | null>;
  readonly persisted: () => Promise<boolean | null>;
}

interface Tables extends DBSchema {
  readonly marks: {
    readonly key: string;
    readonly value: { readonly id: string; readonly book: string; readonly event: LogEvent };
    readonly indexes: { readonly book: string };
  };
  readonly kept: { readonly key: string; readonly value: unknown };
}

const NAME = 'chalkleaf';
const VERSION = 1;
/** Under this key stands the device's own name; no booklet is called so. */
const DEVICE = '';
/** A browser that has not answered by then will not. */
const PATIENCE_MS = 4000;

/** `book` tells booklets of one address apart; drafts, which have no number of their own, by their title and start. */
export async function openKeep(plan: ClientPlan, title: string): Promise<Keep> {
  const book = plan.bookletId ?? `draft ${plan.starts} ${title}`;
  let fault: KeepFault | null = null;
  let events: readonly LogEvent[] = [];
  let kept: Kept = NOTHING_KEPT;
  let device = '';
  const listeners: (() => void)[] = [];
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(NAME);

  const opened = await open(() => {
    fault = 'held elsewhere';
    tell();
  });
  if (typeof opened === 'string') fault = opened;
  const db = typeof opened === 'string' ? null : opened;

  const read = async (): Promise<void> => {
    if (db === null || fault === 'held elsewhere') return;
    const transaction = db.transaction(['marks', 'kept']);
    const rows = await transaction.objectStore('marks').index('book').getAll(book);
    const record = await transaction.objectStore('kept').get(book);
    events = rows.map(({ event }) => event).sort((a, b) => a.seq - b.seq);
    kept = readKept(record);
  };

  /** All of it, or nothing of it. */
  const write = async (marks: readonly Mark[], part: Partial<Kept>): Promise<boolean> => {
    if (db === null || fault === 'held elsewhere') return false;
    try {
      const transaction = db.transaction(['marks', 'kept'], 'readwrite', { durability: 'strict' });
      const rows = transaction.objectStore('marks');
      const records = transaction.objectStore('kept');
      // Nothing but requests of this transaction may be waited for: it ends when none is open.
      const own = await rows.index('book').getAll(book);
      const before = own.map(({ event }) => event);
      const fresh = stampMarks(marks, { edition: plan.edition, before, now: new Date() });
      const record = { ...readKept(await records.get(book)), ...part };
      const known = await records.get(DEVICE);
      for (const event of fresh) await rows.add({ id: event.id, book, event });
      await records.put(record, book);
      await transaction.done;
      device = typeof known === 'string' ? known : device;
      events = [...before, ...fresh].sort((a, b) => a.seq - b.seq);
      kept = record;
      fault = null;
      channel?.postMessage(book);
      return true;
    } catch (error) {
      fault = faultOf(error);
      return false;
    }
  };

  if (db !== null) {
    try {
      device = await nameDevice(db);
      await read();
    } catch (error) {
      fault = faultOf(error);
    }
  }
  const again = (): void => {
    read().then(tell, () => undefined);
  };
  if (channel !== null) {
    channel.onmessage = ({ data }) => {
      if (data === book) again();
    };
  }
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') again();
  });

  return {
    fault: () => fault,
    events: () => events,
    kept: () => kept,
    device: () => device,
    add: (marks, state) => write(marks, { state }),
    put: (part) => write([], part),
    onChange: (listener) => listeners.push(listener),
    persist: async () => (await navigator.storage?.persist?.()) ?? null,
    persisted: async () => (await navigator.storage?.persisted?.()) ?? null,
  };
}

async function open(onLeave: () => void): Promise<IDBPDatabase<Tables> | KeepFault> {
  if (typeof indexedDB === 'undefined' || indexedDB === null) return 'no storage';
  try {
    const opening = openDB<Tables>(NAME, VERSION, {
      upgrade: (db) => {
        db.createObjectStore('marks', { keyPath: 'id' }).createIndex('book', 'book');
        db.createObjectStore('kept');
      },
      // A newer program in another window: it waits until this one lets go.
      blocking: (_, __, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        onLeave();
      },
      terminated: onLeave,
    });
    const late = new Promise<KeepFault>((done) => setTimeout(() => done('no storage'), PATIENCE_MS));
    return await Promise.race([opening, late]);
  } catch (error) {
    return faultOf(error);
  }
}

/** Whoever comes first names it; the name says nothing of whose it is. */
async function nameDevice(db: IDBPDatabase<Tables>): Promise<string> {
  const transaction = db.transaction('kept', 'readwrite', { durability: 'strict' });
  const known = await transaction.store.get(DEVICE);
  const [a = 0, b = 0] = crypto.getRandomValues(new Uint16Array(2));
  const hex = (n: number): string => n.toString(16).padStart(4, '0');
  const name = typeof known === 'string' ? known : `phone-${hex(a)}${hex(b)}`;
  if (name !== known) await transaction.store.put(name, DEVICE);
  await transaction.done;
  return name;
}

function faultOf(error: unknown): KeepFault {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return name === 'VersionError' ? 'held elsewhere' : 'no storage';
}
