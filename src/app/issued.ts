/** The edition a client holds: how it stands today, and how what would be issued now differs from it. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { composeBooklet } from '../booklet/compose-booklet.js';
import { composeEnded, composeWithdrawn } from '../booklet/compose-changes.js';
import { readWithdrawal } from '../content/read-withdrawal.js';
import { compareEditions } from '../engine/compare-plans.js';
import type { Booklet } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import { dayOfIso, type IsoDate } from '../model/day.js';
import type { Edition, EditionStanding, FrozenEdition, Withdrawal } from '../model/edition.js';
import { type ClientId, compareIds } from '../model/identity.js';
import type { Plan } from '../model/plan.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import type { Library } from '../model/studio.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { saysTheSame } from './editions.js';
import type { PlannedClient } from './planned-client.js';

export interface IssuedEdition extends FrozenEdition {
  readonly withdrawal: Withdrawal | null;
}

export const withdrawalPath = (content: string, client: ClientId, n: number): string =>
  join(content, 'clients', client, 'editions', String(n), 'withdrawn.json');

/** The latest of a client's editions, whole, in order; `null` where none was issued. Reports `edition-unreadable`. */
export async function readLatest(
  content: string,
  client: ClientId,
  editions: readonly FrozenEdition[],
): Promise<Result<IssuedEdition | null>> {
  const last = editions.at(-1);
  if (last === undefined) return { value: null, problems: [] };
  const withdrawal = await readWithdrawn(content, client, last.edition.n);
  if (withdrawal !== null && 'code' in withdrawal) return { value: null, problems: [withdrawal] };
  return { value: { ...last, withdrawal }, problems: [] };
}

/** `null` where the edition was not withdrawn. Reports `edition-unreadable`. */
export async function readWithdrawn(
  content: string,
  client: ClientId,
  n: number,
): Promise<Withdrawal | Problem | null> {
  const path = `editions/${n}/withdrawn.json`;
  const unreadable = (why: string): Problem => ({
    code: 'edition-unreadable',
    severity: 'error',
    scope: ofClient(client),
    place: { file: `clients/${client}/${path}`, line: 1, column: 1, length: 1 },
    data: { path, why },
  });
  try {
    const read = readWithdrawal(await readFile(withdrawalPath(content, client, n), 'utf8'));
    return 'why' in read && !('date' in read) ? unreadable(read.why) : read;
  } catch (fault) {
    return diskFaultCode(fault) === 'ENOENT' ? null : unreadable(sayDiskFault(fault));
  }
}

/** Days after the last one in which a session that was missed may still be made up for. Common practice, no source. */
const DAYS_OVER = 7;

/** The day of the last session planned. */
function lastDayOf({ weeks, starts }: Plan): IsoDate {
  const dates = weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date));
  return [...dates].sort(compareIds).at(-1) ?? starts;
}

export interface StandingAsked {
  readonly edition: Edition;
  readonly withdrawal: Withdrawal | null;
  /** The block of the client's latest edition, from 1. */
  readonly latestBlock: number;
  readonly today: IsoDate;
}

export function standingOf({ edition, withdrawal, latestBlock, today }: StandingAsked): EditionStanding {
  if (withdrawal !== null) return 'withdrawn';
  const over = (dayOfIso(today) ?? 0) - (dayOfIso(lastDayOf(edition.plan)) ?? 0) > DAYS_OVER;
  return over || latestBlock > edition.block ? 'ended' : 'stands';
}

/** A booklet as it is drawn, with the plan it was made from. */
export interface Drawn {
  readonly plan: Plan;
  readonly booklet: Booklet;
}

/** What is drawn of a client: what was issued, where anything was, and what would be issued now. */
export interface Shown {
  /** As issued, or as planned now where nothing was issued. */
  readonly book: Drawn;
  readonly issued: {
    readonly edition: Edition;
    readonly standing: EditionStanding;
    readonly withdrawal: Withdrawal | null;
  } | null;
  /** Only where it says something else than what was issued, or that holds no more. */
  readonly draft: Drawn | null;
  /** What the draft changes. */
  readonly since: readonly Change[];
}

/** The words of an edition as they are to be read today: with what it has come to, where it does not stand. */
export function bookOf({ edition, booklet, withdrawal }: IssuedEdition, standing: EditionStanding): Drawn {
  const { plan } = edition;
  if (standing === 'withdrawn' && withdrawal !== null) {
    return { plan, booklet: composeWithdrawn(booklet, withdrawal.date) };
  }
  return { plan, booklet: standing === 'ended' ? composeEnded(booklet, lastDayOf(plan)) : booklet };
}

export function showOf(library: Library, planned: PlannedClient, last: IssuedEdition | null, today: IsoDate): Shown {
  if (last === null) return { book: planned, issued: null, draft: null, since: [] };
  const { edition, withdrawal } = last;
  const standing = standingOf({ edition, withdrawal, latestBlock: edition.block, today });
  const issued = { edition, standing, withdrawal };
  const book = bookOf(last, standing);
  if (standing !== 'withdrawn' && saysTheSame(edition, library, planned)) {
    return { book, issued, draft: null, since: [] };
  }
  const { told, changes = [] } = tellChanges(library, planned, edition);
  return { book, issued, draft: told, since: changes };
}

/** The booklet with what it changes told at its beginning, and the changes; a first edition has none to tell. */
export function tellChanges(
  library: Library,
  planned: PlannedClient,
  last: Edition | undefined,
): { readonly told: PlannedClient; readonly changes?: readonly Change[] } {
  if (last === undefined) return { told: planned };
  const { client, plan } = planned;
  const changes = compareEditions(last.plan, plan);
  return { told: { ...planned, booklet: composeBooklet({ library, client, plan, changes }) }, changes };
}
