/**
 * Keeps a booklet's marks on the phone. A mark is kept once its transaction is committed, with what the screen was left
 * at; what is not committed was not marked. Windows of one browser share one log: places in it are given inside the
 * transaction, so that two at once never take the same. A browser that lets go of its store, as phones do with a page that
 * lay in a pocket, is asked for it again.
 */
import type { ClientPlan } from '../../model/client-plan.js';
import type { LogEvent } from '../../model/log.js';
import type { KeepFault } from '../../model/training.js';
import type { Mark } from '../../session/training/told.js';
import type { TrainingState } from '../../session/training/training-state.js';
import { isMark } from './is-mark.js';
import { type Kept, NOTHING_KEPT, readKept } from './kept.js';
import { DEVICE, faultOf, isLost, nameDevice, openStore, type Store } from './open-store.js';
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
  /** Told when another window has kept something, the page comes back to the front, or what stood in the way is gone. */
  readonly onChange: (listener: () => void) => void;
  /** Asks the browser never to make room at these marks' cost; `null` where it cannot be asked. */
  readonly persist: () => Promise<boolean | null>;
  readonly persisted: () => Promise<boolean | null>;
}

const CHANNEL = 'chalkleaf';
const bySeq = (events: readonly LogEvent[]): readonly LogEvent[] => [...events].sort((a, b) => a.seq - b.seq);

/** `title` tells drafts of one address apart, with their start: they have no number of their own. */
export async function openKeep(plan: ClientPlan, title: string): Promise<Keep> {
  const book = plan.bookletId ?? `draft ${plan.starts} ${title}`;
  let store: Store | null = null;
  let taken = false;
  let fault: KeepFault | null = null;
  let events: readonly LogEvent[] = [];
  let kept: Kept = NOTHING_KEPT;
  let device = '';
  const listeners: (() => void)[] = [];
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL);

  const connect = async (): Promise<void> => {
    const opened = await openStore({
      late: (came) => {
        store = came;
        again();
      },
      taken: () => {
        taken = true;
        store = null;
        fault = 'held elsewhere';
        tell();
      },
      closed: () => {
        store = null;
        again();
      },
    });
    if (typeof opened === 'string') fault = opened;
    else store = opened;
  };

  /** `null` where there is no store. What is lost is opened once more. */
  const withStore = async <T>(work: (own: Store) => Promise<T>): Promise<T | null> => {
    if (taken) return null;
    if (store === null) await connect();
    if (store === null) return null;
    try {
      return await work(store);
    } catch (error) {
      if (!isLost(error) || taken) throw error;
      store = null;
      await connect();
      return store === null ? null : work(store);
    }
  };

  const read = async (own: Store): Promise<void> => {
    if (device === '') device = await nameDevice(own);
    const transaction = own.transaction(['marks', 'kept']);
    const rows = await transaction.objectStore('marks').index('book').getAll(book);
    const record = await transaction.objectStore('kept').get(book);
    if (record !== undefined) kept = readKept(record);
    const there = rows.map(({ event }) => event).filter(isMark);
    events = bySeq([...there, ...goneFrom(there)]);
  };

  /** What this window has seen and the browser no longer has: it was emptied meanwhile. */
  const goneFrom = (there: readonly LogEvent[]): readonly LogEvent[] => {
    const ids = new Set(there.map(({ id }) => id));
    return events.filter(({ id }) => !ids.has(id));
  };

  const load = (): Promise<void> =>
    withStore(read).then(
      () => undefined,
      (error: unknown) => {
        fault = faultOf(error);
      },
    );

  /** All of it, or nothing of it. */
  const commit = async (own: Store, marks: readonly Mark[], part: Partial<Kept>): Promise<true> => {
    const transaction = own.transaction(['marks', 'kept'], 'readwrite', { durability: 'strict' });
    // Waited for at the end; until then a failure is told by what is asked in between.
    const done = transaction.done.then(() => null, faultOf);
    try {
      const rows = transaction.objectStore('marks');
      const records = transaction.objectStore('kept');
      // Nothing but requests of this transaction may be waited for: it ends when none is open.
      const there = (await rows.index('book').getAll(book)).map(({ event }) => event).filter(isMark);
      const gone = goneFrom(there);
      const before = [...there, ...gone];
      const fresh = stampMarks(marks, { edition: plan.edition, before, now: new Date() });
      const known = await records.get(book);
      const record = { ...(known === undefined ? kept : readKept(known)), ...part };
      for (const event of [...gone, ...fresh]) await rows.add({ id: event.id, book, event });
      if (gone.length > 0) await records.put(device, DEVICE);
      await records.put(record, book);
      const failed = await done;
      if (failed !== null) throw new Unkept(failed);
      events = bySeq([...before, ...fresh]);
      kept = record;
      return true;
    } catch (error) {
      // Why it was ended says more than that it was.
      throw new Unkept((await done) ?? faultOf(error));
    }
  };

  const write = async (marks: readonly Mark[], part: Partial<Kept>): Promise<boolean> => {
    try {
      if ((await withStore((own) => commit(own, marks, part))) === null) return false;
    } catch (error) {
      fault = error instanceof Unkept ? error.fault : faultOf(error);
      return false;
    }
    fault = null;
    channel?.postMessage(book);
    return true;
  };

  /** Reads anew; where something stood in the way, a write shows whether it still does. */
  function again(): void {
    const trying = fault === null ? Promise.resolve(true) : write([], {});
    trying.then(load).then(tell, () => undefined);
  }

  await load();
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

/** Nothing of it was kept. */
class Unkept extends Error {
  readonly fault: KeepFault;

  constructor(fault: KeepFault) {
    super(fault);
    this.fault = fault;
  }
}
