/**
 * Issued editions on disk: `clients/<id>/editions/<n>/` with the record and the words frozen with it.
 * An edition is written whole beside its place and then renamed there; one that exists is never written again.
 */
import { createHash, randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { composeBooklet } from '../booklet/compose-booklet.js';
import { type EditionHead, readEditionHead } from '../content/read-edition.js';
import type { Booklet } from '../model/booklet.js';
import type { Edition } from '../model/edition.js';
import { type BookletId, bookletId, type ClientId } from '../model/identity.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import type { Library } from '../model/studio.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import type { PlannedClient } from './read-studio.js';
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
  let names: string[];
  try {
    names = await readdir(folder);
  } catch (fault) {
    if (diskFaultCode(fault) !== 'ENOENT') return unreadable(client, 'editions', sayDiskFault(fault));
    names = [];
  }
  const numbers = names.filter((name) => /^[1-9]\d*$/.test(name)).map(Number);
  if (numbers.length === 0) return { bookletId: bookletId(randomBytes(16).toString('hex')), n: 1 };
  const last = Math.max(...numbers);
  try {
    const head = readEditionHead(await readFile(join(folder, String(last), 'edition.json'), 'utf8'));
    if ('why' in head) return unreadable(client, `editions/${last}/edition.json`, head.why);
    return { bookletId: head.bookletId, n: last + 1, last: head };
  } catch (fault) {
    return unreadable(client, `editions/${last}/edition.json`, sayDiskFault(fault));
  }
}

const unreadable = (client: ClientId, path: string, why: string): Problem => ({
  code: 'edition-unreadable',
  severity: 'error',
  scope: ofClient(client),
  place: { file: `clients/${client}/${path}`, line: 1, column: 1, length: 1 },
  data: { path, why },
});

/** Whether an edition issued now would say just what the last one says: the same plan, in the same words. */
export function saysTheSame(last: EditionHead, library: Library, { client, plan }: PlannedClient): boolean {
  const then = { ...plan, today: last.plan.today, planId: last.plan.planId, edition: last.n };
  // Through JSON, as the last one went: a value that is absent and one that is undefined are then the same.
  if (!isDeepStrictEqual(JSON.parse(JSON.stringify(then)), last.plan)) return false;
  return digest(wordsOf(composeBooklet({ library, client, plan: then }))) === last.wordsHash;
}

const wordsOf = (booklet: Booklet): string => `${JSON.stringify(booklet, null, 1)}\n`;

const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Freezes plan and words. Reports `edition-not-writable`; then nothing of the edition is left. */
export async function freezeEdition(
  content: string,
  next: NextEdition,
  { client, plan, booklet }: PlannedClient,
  today: string,
): Promise<Edition | Problem> {
  const words = wordsOf(booklet);
  const edition: Edition = {
    schema: 1,
    bookletId: next.bookletId,
    n: next.n,
    issued: today,
    from: plan.starts,
    ...(next.n > 1 ? { supersedes: next.n - 1 } : {}),
    contentHash: digest(`${JSON.stringify(plan)}\0${words}`),
    engineVersion: VERSION,
    rulesHash: digest(JSON.stringify(plan.rules)),
    plan,
    wordsHash: digest(words),
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
