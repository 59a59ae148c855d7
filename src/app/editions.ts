/**
 * Issued editions on disk: `clients/<id>/editions/<n>/` with the record and the words frozen with it.
 * An edition is written whole beside its place and then renamed there; one that exists is never written again.
 */
import { createHash, randomBytes } from 'node:crypto';
import { lstat, mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { composeBooklet } from '../booklet/compose-booklet.js';
import { contentOf, type EditionHead, readEditionHead, readFrozenEdition } from '../content/read-edition.js';
import type { Booklet } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import type { IsoDate } from '../model/day.js';
import type { Edition, FrozenEdition } from '../model/edition.js';
import { type BookletId, bookletId, type ClientId } from '../model/identity.js';
import type { Plan } from '../model/plan.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import type { Library } from '../model/studio.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { readBounded } from './gather-files.js';
import type { PlannedClient } from './planned-client.js';
import { VERSION } from './version.js';

export interface NextEdition {
  readonly bookletId: BookletId;
  readonly n: number;
  /** The edition before it; absent for the first. */
  readonly last?: EditionHead;
}

const folderOf = (content: string, client: ClientId): string => join(content, 'clients', client, 'editions');

/** The number and booklet of the client's next edition. Reports `edition-unreadable`. */
export async function nextEdition(content: string, client: ClientId): Promise<NextEdition | Problem> {
  const folder = folderOf(content, client);
  const numbers = await numbersIn(content, client);
  if ('code' in numbers) return numbers;
  const last = numbers.at(-1);
  if (last === undefined) return { bookletId: bookletId(randomBytes(16).toString('hex')), n: 1 };
  try {
    const head = readEditionHead(await readOne(join(folder, String(last)), 'edition.json'));
    if ('why' in head) return unreadable(client, `editions/${last}/edition.json`, head.why);
    return { bookletId: head.bookletId, n: last + 1, last: head };
  } catch (fault) {
    return unreadable(client, `editions/${last}/edition.json`, sayDiskFault(fault));
  }
}

/** The numbers of the client's editions, in order; none where nothing was issued. */
async function numbersIn(content: string, client: ClientId): Promise<readonly number[] | Problem> {
  try {
    const names = await readdir(folderOf(content, client));
    return names
      .filter((name) => /^[1-9]\d*$/.test(name))
      .map(Number)
      .sort((a, b) => a - b);
  } catch (fault) {
    return diskFaultCode(fault) === 'ENOENT' ? [] : unreadable(client, 'editions', sayDiskFault(fault));
  }
}

/**
 * Every edition of a client, whole, in order. Nothing of them is used where one is not as it was written: what was
 * done since cannot be known then. Reports `edition-unreadable`.
 */
export async function readEditions(content: string, client: ClientId): Promise<Result<readonly FrozenEdition[]>> {
  const numbers = await numbersIn(content, client);
  if ('code' in numbers) return { value: [], problems: [numbers] };
  const read = await Promise.all(numbers.map((n) => readEdition(content, client, n)));
  const problems = read.flatMap((one) => ('code' in one ? [one] : []));
  const editions = read.flatMap((one) => ('code' in one ? [] : [one]));
  const [first] = editions;
  const strange = editions.find(({ edition }) => edition.bookletId !== first?.edition.bookletId);
  if (strange !== undefined) {
    const path = `editions/${strange.edition.n}/edition.json`;
    problems.push(unreadable(client, path, 'it is an edition of another booklet than the first'));
  }
  return { value: problems.length === 0 ? editions : [], problems };
}

async function readEdition(content: string, client: ClientId, n: number): Promise<FrozenEdition | Problem> {
  const folder = join(folderOf(content, client), String(n));
  const path = `editions/${n}/edition.json`;
  try {
    const [edition, words] = await Promise.all([readOne(folder, 'edition.json'), readOne(folder, 'booklet.json')]);
    const read = readFrozenEdition({ edition, words, n, digest });
    return 'why' in read ? unreadable(client, path, read.why) : read;
  } catch (fault) {
    return unreadable(client, path, sayDiskFault(fault));
  }
}

/** Far beyond any edition. */
const MOST_BYTES = 64 * 1024 * 1024;

/** Of an ordinary file in an ordinary folder alone: no links are followed. */
async function readOne(folder: string, name: string): Promise<string> {
  if (!(await lstat(folder)).isDirectory()) return '';
  const bytes = await readBounded(join(folder, name), MOST_BYTES);
  return typeof bytes === 'number' ? '' : new TextDecoder().decode(bytes);
}

const unreadable = (client: ClientId, path: string, why: string): Problem => ({
  code: 'edition-unreadable',
  severity: 'error',
  scope: ofClient(client),
  place: { file: `clients/${client}/${path}`, line: 1, column: 1, length: 1 },
  data: { path, why },
});

/** Whether an edition issued now would say just what the last one says: the same plan, in the same words. */
export function saysTheSame(last: Edition, library: Library, { client, plan }: PlannedClient): boolean {
  const then = { ...plan, today: last.plan.today, planId: last.plan.planId, edition: last.n };
  // Through JSON, as the last one went: a value that is absent and one that is undefined are then the same.
  if (!isDeepStrictEqual(JSON.parse(JSON.stringify(then)), last.plan)) return false;
  const told = last.changes === undefined ? {} : { changes: last.changes };
  return digest(wordsOf(composeBooklet({ library, client, plan: then, ...told }))) === last.wordsHash;
}

const wordsOf = (booklet: Booklet): string => `${JSON.stringify(booklet, null, 1)}\n`;

const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Within a block that is begun, the day of the first session still to come; the day of issue where there is none. */
function firstDayOf(plan: Plan, today: IsoDate): IsoDate {
  const { done } = plan.inputs;
  if (done === undefined) return plan.starts;
  const places = new Set(done.map(({ occurrence }) => occurrence));
  const rest = plan.weeks.flatMap(({ sessions }) => sessions).filter(({ occurrence }) => !places.has(occurrence));
  return rest[0]?.date ?? today;
}

/** Freezes plan and words, and what they change; `changes` is absent for the first. Reports `edition-not-writable`; then nothing of the edition is left. */
export async function freezeEdition(
  content: string,
  next: NextEdition,
  { client, plan, booklet }: PlannedClient,
  today: IsoDate,
  changes?: readonly Change[],
): Promise<Edition | Problem> {
  const words = wordsOf(booklet);
  const edition: Edition = {
    schema: 1,
    bookletId: next.bookletId,
    n: next.n,
    issued: today,
    from: firstDayOf(plan, today),
    block: plan.block,
    ...(next.n > 1 ? { supersedes: next.n - 1 } : {}),
    contentHash: digest(contentOf(plan, words, changes)),
    engineVersion: VERSION,
    rulesHash: digest(JSON.stringify(plan.rules)),
    plan,
    wordsHash: digest(words),
    ...(changes === undefined ? {} : { changes }),
  };
  const folder = folderOf(content, client.id);
  const staging = join(folder, `.new-${process.pid}`);
  try {
    await mkdir(staging, { recursive: true });
    await writeFile(join(staging, 'edition.json'), `${JSON.stringify(edition, null, 1)}\n`);
    await writeFile(join(staging, 'booklet.json'), words);
    // Fails where another has meanwhile taken the number: an issued edition is a fact.
    await rename(staging, join(folder, String(next.n)));
    return edition;
  } catch (fault) {
    await rm(staging, { recursive: true, force: true }).catch(() => undefined);
    const why = sayDiskFault(fault);
    return { code: 'edition-not-writable', severity: 'error', scope: FOLDER, data: { folder, why } };
  }
}
