/**
 * `chalkleaf receive FILE…`: marks that came back, as a message, a file or a table from paper, are held against the
 * booklet they were made in and filed with their client. A file of which anything does not fit is refused whole.
 */
import { createReadStream } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { nearestOf } from '../content/nearest.js';
import { readFolder } from '../content/read-folder.js';
import type { Paper } from '../content/read-paper.js';
import { readPaperMarks } from '../content/read-paper-marks.js';
import { replaceOlder } from '../content/replace-paper.js';
import { type Day, dayOfIso } from '../model/day.js';
import type { Edition } from '../model/edition.js';
import { type ClientId, clientId, compareIds, readSetKey } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import type { Place } from '../model/place.js';
import { ofClient, type Problem } from '../model/problem.js';
import { invariant } from '../model/result.js';
import { isId } from '../model/slug.js';
import { mergeEvents } from '../session/merge-events.js';
import { painDegreesOf } from '../session/pain-degrees.js';
import { placesOf } from '../session/planned-sessions.js';
import { type Received, type ReceivedSession, sayReceived } from '../words/say-received.js';
import { checkLog, whichMark } from './check-log.js';
import { sayDiskFault } from './disk-fault.js';
import { nextEdition, readEditions } from './editions.js';
import { gatherFiles } from './gather-files.js';
import { type Filed, fileLog } from './keep-logs.js';
import { readHeld } from './keep-state.js';
import { openReceived } from './open-received.js';
import type { CommonOptions } from './options.js';
import { problemOf, recogniseLog } from './recognise-log.js';
import { printReport } from './report.js';

/** What was filed of one log, for programs. */
interface Receipt {
  readonly file: string;
  readonly client: string;
  readonly device: string;
  readonly new: number;
  readonly known: number;
  readonly sessions: readonly (ReceivedSession & { readonly occurrence: number; readonly block: number })[];
}

const STANDARD_INPUT = 'standard input';

export async function runReceive(paths: readonly string[], options: CommonOptions): Promise<number> {
  const studio = await openStudio(options);
  const problems: Problem[] = [...studio.problems];
  const sources = new Map<string, string>();
  const summary: string[] = [];
  const receipts: Receipt[] = [];
  for (const path of problems.length > 0 ? [] : paths.length === 0 ? ['-'] : paths) {
    const name = path === '-' ? STANDARD_INPUT : path;
    const bytes = await readInput(path, name);
    if ('code' in bytes) {
      problems.push(bytes);
      continue;
    }
    const plain = await openReceived(name, bytes, () => readHeld(options));
    if ('code' in plain) {
      problems.push(plain);
      continue;
    }
    const { logs, paper, problems: unread, source } = recogniseLog(name, plain);
    if (source !== undefined) sources.set(name, source);
    const whole: Place = { file: name, line: 1, column: 1, length: 1 };
    const fitting = paper === null ? await fitLogs(studio, logs, whole) : await fitPaper(studio, paper, whole);
    problems.push(...unread, ...fitting.problems);
    if (unread.length > 0 || fitting.problems.length > 0) continue;
    for (const fitted of fitting.fitted) {
      const filed = await fileOne(studio, fitted, whole);
      if ('code' in filed) problems.push(filed);
      else {
        const { received, receipt } = describe(studio, fitted, filed, name);
        summary.push(...sayReceived(received));
        receipts.push(receipt);
      }
    }
  }
  if (summary.length === 0) summary.push('Nothing was filed.');
  const facts = { command: 'receive', filed: receipts };
  return printReport({ problems, sourceOf: (file) => sources.get(file), summary, facts }, options.json);
}

/** Far beyond the marks of many years. */
const LONGEST_BYTES = 16 * 1024 * 1024;

/** Standard input, a file or a pipe, as far as it is no longer than any log. Reports `file-unreadable`. */
async function readInput(path: string, name: string): Promise<Uint8Array | Problem> {
  const refuse = (why: string): Problem => ({
    code: 'file-unreadable',
    severity: 'error',
    scope: { kind: 'folder' },
    data: { path: name, why },
  });
  const parts: Buffer[] = [];
  let length = 0;
  try {
    for await (const part of path === '-' ? process.stdin : createReadStream(path)) {
      const bytes = Buffer.from(part);
      parts.push(bytes);
      length += bytes.length;
      if (length > LONGEST_BYTES) return refuse('it is longer than any log');
    }
    return Buffer.concat(parts);
  } catch (fault) {
    return refuse(sayDiskFault(fault));
  }
}

interface Studio {
  readonly content: string;
  readonly today: Day;
  readonly clients: readonly ClientId[];
  /** What clients and exercises are called, by id. */
  readonly clientNames: ReadonlyMap<string, string>;
  readonly exerciseNames: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
  readonly editionsOf: (client: ClientId) => Promise<readonly Edition[] | Problem>;
}

/** Mistakes in pages are for `check`: marks are filed all the same. */
async function openStudio({ content, today: isoToday }: CommonOptions): Promise<Studio> {
  const today = dayOfIso(isoToday);
  invariant(today !== undefined, `${isoToday} is not a day`);
  const gathered = await gatherFiles(content);
  const { value } = readFolder(gathered.value);
  const kept = new Map<ClientId, Promise<readonly Edition[] | Problem>>();
  return {
    content,
    today,
    clients: await clientsIn(content),
    clientNames: new Map(value.clients.map(({ id, name }) => [id, name])),
    exerciseNames: new Map(value.library.exercises.map(({ id, name }) => [id, name])),
    problems: gathered.problems.filter(({ code }) => code === 'content-missing'),
    editionsOf: (client) => {
      const read = kept.get(client) ?? editionsOf(content, client);
      kept.set(client, read);
      return read;
    },
  };
}

async function editionsOf(content: string, client: ClientId): Promise<readonly Edition[] | Problem> {
  const { value, problems } = await readEditions(content, client);
  return problems[0] ?? value.map(({ edition }) => edition);
}

async function clientsIn(content: string): Promise<readonly ClientId[]> {
  try {
    const entries = await readdir(join(content, 'clients'), { withFileTypes: true });
    const names = entries.filter((entry) => entry.isDirectory() && isId(entry.name)).map(({ name }) => name);
    return names.sort(compareIds).map(clientId);
  } catch {
    // No such folder: then there is no client either.
    return [];
  }
}

interface Fitted {
  readonly client: ClientId;
  readonly editions: readonly Edition[];
  readonly log: Log;
}

interface Fitting {
  readonly fitted: readonly Fitted[];
  readonly problems: readonly Problem[];
}

const refused = (problem: Problem): Fitting => ({ fitted: [], problems: [problem] });

async function fitLogs(studio: Studio, logs: readonly Log[], place: Place): Promise<Fitting> {
  const fitted: Fitted[] = [];
  for (const log of logs) {
    const client = await ownerOf(studio, log.bookletId);
    if (client === undefined) {
      return refused(problemOf('log-unknown-booklet', { booklet: log.bookletId, client: '', nearest: '' }, place));
    }
    const one = await fitLog(studio, client, log, place);
    if ('code' in one) return refused(one);
    fitted.push(one);
  }
  return { fitted, problems: [] };
}

/** The client whose latest edition is of this booklet. Another client’s damaged edition is no reason to refuse. */
async function ownerOf({ content, clients }: Studio, booklet: string): Promise<ClientId | undefined> {
  for (const client of clients) {
    const next = await nextEdition(content, client);
    if (!('code' in next) && next.last?.bookletId === booklet) return client;
  }
  return undefined;
}

async function fitLog(studio: Studio, client: ClientId, log: Log, place: Place): Promise<Fitted | Problem> {
  const editions = await studio.editionsOf(client);
  if ('code' in editions) return editions;
  const exercises = new Set(studio.exerciseNames.keys());
  const problem = checkLog(log, { editions, exercises, today: studio.today, place, scope: ofClient(client) });
  return problem ?? { client, editions, log };
}

async function fitPaper(studio: Studio, paper: Paper, whole: Place): Promise<Fitting> {
  const client = studio.clients.find((id) => id === paper.client.value);
  const editions = client === undefined ? [] : await studio.editionsOf(client);
  if ('code' in editions) return refused(editions);
  if (client === undefined || editions.length === 0) {
    const nearest = client === undefined ? nearestOf(paper.client.value, studio.clients) : '';
    const data = { booklet: '', client: paper.client.value, nearest };
    return refused(problemOf('log-unknown-booklet', data, paper.client.place));
  }
  const edition = editions.find(({ n }) => n === paper.edition.value);
  if (edition === undefined) {
    const data = { edition: paper.edition.value, known: editions.map(({ n }) => n) };
    return refused(problemOf('log-no-such-edition', data, paper.edition.place));
  }
  const { log, problems } = readPaperMarks(paper, { edition, names: studio.exerciseNames });
  if (log === null) return { fitted: [], problems };
  if (log.events.length === 0) return refused(problemOf('log-nothing', {}, whole));
  return fitLogs(studio, [log], whole);
}

function fileOne(studio: Studio, { client, editions, log }: Fitted, place: Place): Promise<Filed | Problem> {
  const blocks = new Map(editions.map(({ n, block }) => [n, block]));
  const isPaper = log.device === 'paper';
  const places = new Map(isPaper ? editions.map((edition) => [edition.n, placesOf(edition)]) : []);
  const complete = (events: readonly LogEvent[]): readonly LogEvent[] =>
    isPaper ? replaceOlder(events, (n) => blocks.get(n)) : events;
  return fileLog(studio.content, client, {
    log,
    place,
    which: (event) => whichMark(event, places.get(event.edition)),
    complete,
  });
}

interface Description {
  readonly received: Received;
  readonly receipt: Receipt;
}

function describe(
  studio: Studio,
  { client, editions, log }: Fitted,
  { fresh, known }: Filed,
  file: string,
): Description {
  const places = new Map(editions.map((edition) => [edition.n, placesOf(edition)]));
  const sessions = new Map<string, Receipt['sessions'][number]>();
  const saidOn = ({ at }: LogEvent): string => at.slice(0, 10);
  const placeOf = (event: LogEvent) => {
    const occurrence =
      event.kind === 'set' ? readSetKey(event.key)?.occurrence : 'occurrence' in event && event.occurrence;
    return occurrence ? places.get(event.edition)?.places.get(occurrence) : undefined;
  };
  /** How it was the next morning is said before a later session: it is of the day on which it hurt. */
  const dayOf = (event: LogEvent): string => {
    const session = placeOf(event)?.session;
    const isLater = event.kind === 'pain' && event.report.worseNextMorning !== undefined;
    if (!isLater || session === undefined) return saidOn(event);
    const days = log.events.filter((one) => placeOf(one)?.session === session).map(saidOn);
    return days.sort()[0] ?? saidOn(event);
  };
  for (const event of fresh) {
    const place = placeOf(event);
    if (place === undefined) continue;
    const { id, name, occurrence } = place.session;
    const { block, week } = place;
    const key = `${block}/${occurrence}`;
    const days = [...new Set([...(sessions.get(key)?.days ?? []), dayOf(event)])].sort();
    sessions.set(key, { id, name, week, block, occurrence, days });
  }
  const inOrder = [...sessions.values()].sort((a, b) => a.block - b.block || a.occurrence - b.occurrence);
  const called = (event: LogEvent): string => {
    const row = 'row' in event ? event.row : undefined;
    const exercise = row === undefined ? undefined : placeOf(event)?.rows.get(row)?.item.exercise;
    return exercise === undefined ? '' : (studio.exerciseNames.get(exercise) ?? exercise);
  };
  // What was tapped by mistake and taken back is nobody's pain.
  const standing = new Set(mergeEvents([log]).map(({ event }) => event.id));
  const stands = fresh.filter(({ id }) => standing.has(id));
  const isGrave = ({ edition, report }: Extract<LogEvent, { readonly kind: 'pain' }>): boolean => {
    const plan = places.get(edition)?.edition.plan;
    return report.worseNextMorning === true || plan === undefined || report.degree >= painDegreesOf(plan).leave;
  };
  return {
    received: {
      name: studio.clientNames.get(client) ?? client,
      device: log.device,
      fresh: fresh.length,
      known,
      sessions: inOrder,
      pain: stands.flatMap((event) =>
        event.kind === 'pain'
          ? [{ day: dayOf(event), report: event.report, exercise: called(event), grave: isGrave(event) }]
          : [],
      ),
      notes: stands.flatMap((event) => (event.kind === 'note' ? [{ day: dayOf(event), text: event.text }] : [])),
    },
    receipt: { file, client, device: log.device, new: fresh.length, known, sessions: inOrder },
  };
}
