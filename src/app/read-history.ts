/** What was issued to a client and done by them, from the folder: editions, and the marks on file beside them. */
import { lstat, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readLog } from '../content/read-log.js';
import { type History, NO_HISTORY } from '../model/history.js';
import { type ClientId, compareIds } from '../model/identity.js';
import type { Log } from '../model/log.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { gatherHistory } from '../session/gather-history.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { readEditions } from './editions.js';
import { type IssuedEdition, readLatest } from './issued.js';

export interface ReadHistory {
  readonly history: History;
  /** The latest edition; `null` where none was issued, or not every one can be read. */
  readonly issued: IssuedEdition | null;
}

/**
 * Where an edition or a log cannot be read, nothing is known of what was done, and the problem says why. Reports
 * `edition-unreadable`, `marks-unreadable` and `mark-unknown`.
 */
export async function readHistory(content: string, client: ClientId): Promise<Result<ReadHistory>> {
  const editions = await readEditions(content, client);
  const { value: issued, problems: unread } = await readLatest(content, client, editions.value);
  const logs = await readLogs(content, client);
  const broken = [...editions.problems, ...logs.problems];
  const done =
    broken.length > 0
      ? { value: NO_HISTORY, problems: broken }
      : gatherHistory(
          editions.value.map(({ edition }) => edition),
          logs.value,
        );
  return { value: { history: done.value, issued }, problems: [...unread, ...done.problems] };
}

/** Every log on file, one a device, in order of name. Reports `marks-unreadable`. */
export async function readLogs(content: string, client: ClientId): Promise<Result<readonly Log[]>> {
  const folder = join(content, 'clients', client, 'log');
  const unreadable = (path: string, why: string): Problem => ({
    code: 'marks-unreadable',
    severity: 'error',
    scope: ofClient(client),
    place: { file: `clients/${client}/${path}`, line: 1, column: 1, length: 1 },
    data: { path, why },
  });
  let names: readonly string[];
  try {
    names = (await readdir(folder)).filter((name) => name.endsWith('.json') && !name.startsWith('.')).sort(compareIds);
  } catch (fault) {
    if (diskFaultCode(fault) === 'ENOENT') return { value: [], problems: [] };
    return { value: [], problems: [unreadable('log', sayDiskFault(fault))] };
  }
  const read = await Promise.all(names.map((name) => readOne(join(folder, name))));
  return {
    value: read.flatMap((one) => ('why' in one ? [] : [one])),
    problems: read.flatMap((one, index) => ('why' in one ? [unreadable(`log/${names[index]}`, one.why)] : [])),
  };
}

/** One evening is some kilobytes, and a log holds years of them. */
const MOST_LOG_BYTES = 64 * 1024 * 1024;

async function readOne(path: string): Promise<Log | { readonly why: string }> {
  try {
    const entry = await lstat(path);
    if (!entry.isFile()) return { why: 'it is not an ordinary file' };
    if (entry.size > MOST_LOG_BYTES) return { why: 'it is far larger than any log' };
    return readLog(await readFile(path, 'utf8'));
  } catch (fault) {
    return { why: sayDiskFault(fault) };
  }
}
