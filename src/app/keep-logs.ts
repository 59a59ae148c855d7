/**
 * Marks on file: `clients/<id>/log/<device>.json`, one file a device, in one stated order. A file is read, added to,
 * written whole beside its place and renamed there, by one program at a time.
 */
import { link, open, readFile, rename, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { compareEvents, readLog } from '../content/read-log.js';
import type { ClientId } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import type { Place } from '../model/place.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { WhichMark } from '../model/problems-log.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { makeFolders } from './make-folders.js';
import { problemOf } from './recognise-log.js';
import { writeWhole } from './write-whole.js';

const folderOf = (content: string, client: ClientId): string => join(content, 'clients', client, 'log');

const placeOf = (client: ClientId, name: string): Place => ({
  file: `clients/${client}/log/${name}`,
  line: 1,
  column: 1,
  length: 1,
});

/** `null` where the device has none on file yet. */
async function readOne(content: string, client: ClientId, device: string): Promise<Log | null | Problem> {
  const name = `${device}.json`;
  const refuse = (why: string): Problem =>
    problemOf('log-unreadable', { form: 'kept', why }, placeOf(client, name), ofClient(client));
  try {
    const log = readLog(await readFile(join(folderOf(content, client), name), 'utf8'));
    if ('why' in log) return refuse(log.why);
    return log.device === device ? log : refuse(`it is the log of ${log.device}`);
  } catch (fault) {
    return diskFaultCode(fault) === 'ENOENT' ? null : refuse(sayDiskFault(fault));
  }
}

export interface Filed {
  /** Marks that were not on file. */
  readonly fresh: readonly LogEvent[];
  /** Marks that were. */
  readonly known: number;
}

export interface Filing {
  readonly log: Log;
  /** Where what is received stands. */
  readonly place: Place;
  /** How one of its marks is told of. */
  readonly which: (event: LogEvent) => WhichMark;
  /** Given the union, what is filed: it adds what follows from it. */
  readonly complete: (events: readonly LogEvent[]) => readonly LogEvent[];
}

/** Adds a log to what is on file. Reports `log-unreadable`, `log-conflict`, `log-not-writable`; then nothing was added. */
export async function fileLog(content: string, client: ClientId, filing: Filing): Promise<Filed | Problem> {
  const folder = folderOf(content, client);
  let release: (() => Promise<void>) | undefined;
  try {
    await makeFolders(resolve(folder));
    release = await lock(folder);
    return await addTo(content, client, filing);
  } catch (fault) {
    const data = { folder, why: sayDiskFault(fault) };
    return problemOf('log-not-writable', data, filing.place, ofClient(client));
  } finally {
    await release?.();
  }
}

async function addTo(
  content: string,
  client: ClientId,
  { log, place, which, complete }: Filing,
): Promise<Filed | Problem> {
  const kept = await readOne(content, client, log.device);
  if (kept !== null && 'code' in kept) return kept;
  if (kept !== null && kept.bookletId !== log.bookletId) {
    const data = { form: 'kept' as const, why: `it is of another booklet, ${kept.bookletId}` };
    return problemOf('log-unreadable', data, placeOf(client, `${log.device}.json`), ofClient(client));
  }
  const before = new Map((kept?.events ?? []).map((event) => [event.id, event]));
  const union = new Map(before);
  for (const event of log.events) {
    const said = union.get(event.id);
    if (said !== undefined && JSON.stringify(said) !== JSON.stringify(event)) {
      const data = { mark: which(event), id: event.id, paper: log.device === 'paper' };
      return problemOf('log-conflict', data, place, ofClient(client));
    }
    union.set(event.id, event);
  }
  const events = [...complete([...union.values()])].sort(compareEvents);
  const received = new Set(log.events.map(({ id }) => id));
  const fresh = events.filter(({ id }) => received.has(id) && !before.has(id));
  if (events.length > before.size) {
    const whole: Log = { schema: 1, bookletId: log.bookletId, device: log.device, events };
    await writeWhole(join(folderOf(content, client), `${log.device}.json`), lettersOf(whole));
  }
  return { fresh, known: received.size - fresh.length };
}

/** An event a line: a coach who keeps the folder under version control sees which marks came, and a year stays small. */
const lettersOf = ({ schema, bookletId, device, events }: Log): string =>
  [
    `{"schema":${schema},"bookletId":${JSON.stringify(bookletId)},"device":${JSON.stringify(device)},"events":[`,
    events.map((event) => JSON.stringify(event)).join(',\n'),
    ']}',
    '',
  ].join('\n');

const LOCK = '.receiving';
const PATIENCE_MS = 30_000;
/** Filing takes a blink: a lock that stands so long was left by a program that was stopped. */
const STALE_MS = 15_000;

/** Waits for its turn; the answer gives the turn up. */
async function lock(folder: string): Promise<() => Promise<void>> {
  const path = join(folder, LOCK);
  const until = Date.now() + PATIENCE_MS;
  for (;;) {
    try {
      const handle = await open(path, 'wx');
      await handle.close();
      return () => rm(path, { force: true });
    } catch (fault) {
      if (diskFaultCode(fault) !== 'EEXIST') throw fault;
    }
    await removeStale(path);
    if (Date.now() > until) throw new Error(`${LOCK} in it says that another program is filing marks`);
    await wait(20 + Math.floor(20 * (process.pid % 7)));
  }
}

/** Taken out of the way under a name of one’s own first: of two that find it stale, one does, and a fresh one is put back. */
async function removeStale(path: string): Promise<void> {
  try {
    if (!(await isStale(path))) return;
    const own = `${path}-${process.pid}`;
    await rename(path, own);
    if (!(await isStale(own))) await link(own, path);
    await rm(own, { force: true });
  } catch (fault) {
    if (diskFaultCode(fault) !== 'ENOENT' && diskFaultCode(fault) !== 'EEXIST') throw fault;
  }
}

const isStale = async (path: string): Promise<boolean> => Date.now() - (await stat(path)).mtimeMs > STALE_MS;
