/**
 * `chalkleaf withdraw CLIENT [N] --why "…"`: says of an issued edition that nobody is to train from it any more. The
 * edition stays as it was frozen; that it is withdrawn is written beside it, once, and never taken back: what comes
 * next is another edition.
 */
import { rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Withdrawal } from '../model/edition.js';
import { clientId } from '../model/identity.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import { invariant } from '../model/result.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { readEditions } from './editions.js';
import { readWithdrawn, withdrawalPath } from './issued.js';
import type { CommonOptions } from './options.js';
import { chosenClients, concerning, type ReadStudio, readStudio } from './read-studio.js';
import { printReport } from './report.js';

export interface WithdrawGiven {
  /** The latest where none is named. */
  readonly n?: number;
  readonly why: string;
}

interface Withdrawn {
  readonly problems: readonly Problem[];
  readonly summary: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

export async function runWithdraw(options: CommonOptions, given: WithdrawGiven): Promise<number> {
  const studio = await readStudio(options);
  const done = await withdraw(studio, options, given);
  const found = [...concerning(studio.problems, options.only), ...done.problems];
  // An edition that cannot be read is told by both.
  const problems = found.filter((one, i) => found.findIndex((other) => isSame(one, other)) === i);
  const facts = { command: 'withdraw', ...done.facts };
  return printReport({ problems, sourceOf: studio.sourceOf, summary: done.summary, facts }, options.json);
}

const isSame = (a: Problem, b: Problem): boolean =>
  a.code === b.code && a.place?.file === b.place?.file && JSON.stringify(a.data) === JSON.stringify(b.data);

const NOTHING = { summary: ['Nothing was withdrawn.'], facts: { withdrawn: null } };

/** What is wrong with the client's page is no hindrance: to withdraw is the careful thing. */
async function withdraw(studio: ReadStudio, options: CommonOptions, { n, why }: WithdrawGiven): Promise<Withdrawn> {
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) return { problems: [chosen], ...NOTHING };
  const id = chosen[0]?.id ?? options.only;
  invariant(id !== undefined, 'the command line names a client');
  const client = { id: clientId(id), name: chosen[0]?.name ?? id };
  const { value, problems } = await readEditions(options.content, client.id);
  if (problems.length > 0) return { problems, ...NOTHING };
  const numbers = value.map(({ edition }) => edition.n);
  const last = numbers.at(-1);
  const wanted = n ?? last;
  if (wanted === undefined || last === undefined || !numbers.includes(wanted)) {
    const data = { client: client.id, edition: n ?? 0, last: last ?? 0 };
    return { problems: [{ code: 'no-such-edition', severity: 'error', scope: FOLDER, data }], ...NOTHING };
  }
  const before = await readWithdrawn(options.content, client.id, wanted);
  if (before !== null && 'code' in before) return { problems: [before], ...NOTHING };
  if (before !== null) {
    const summary = [`Edition ${wanted} for ${client.name} was withdrawn on ${before.date}, and stays so.`];
    return { problems: [], summary, facts: { withdrawn: null, since: before.date } };
  }
  const withdrawal: Withdrawal = { schema: 1, date: options.today, why };
  const path = withdrawalPath(options.content, client.id, wanted);
  const fault = await writeOnce(path, withdrawal);
  if (fault !== null) {
    const data = { folder: dirname(path), why: fault };
    const problem: Problem = { code: 'edition-not-writable', severity: 'error', scope: ofClient(client.id), data };
    return { problems: [problem], ...NOTHING };
  }
  return {
    problems: [],
    summary: [
      `Withdrawn: edition ${wanted} for ${client.name}, on ${options.today}.`,
      ...(wanted === last
        ? [
            '`chalkleaf build`, and its booklet says so and shows no sets; `chalkleaf publish` and an upload, and it does so online.',
            'Tell the client yourself: paper cannot.',
            `\`chalkleaf issue ${client.id}\` makes the next edition.`,
          ]
        : [`Edition ${last}, which took its place, is not withdrawn.`]),
    ],
    facts: { withdrawn: { client: client.id, n: wanted, date: options.today } },
  };
}

/** A few words on what went wrong, and then nothing of it is left; `null` where it was written, or stood there already. */
async function writeOnce(path: string, withdrawal: Withdrawal): Promise<string | null> {
  try {
    await writeFile(path, `${JSON.stringify(withdrawal, null, 1)}\n`, { flag: 'wx' });
    return null;
  } catch (fault) {
    if (diskFaultCode(fault) === 'EEXIST') return null;
    await rm(path, { force: true }).catch(() => undefined);
    return sayDiskFault(fault);
  }
}
