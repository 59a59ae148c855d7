/** Prints what was found, for a person or for a program, and gives the exit code that follows from it. */
import { compareIds } from '../model/identity.js';
import { type Problem, withheldBy } from '../model/problem.js';
import { sayProblem } from '../words/say-problem.js';
import { sayProblemReport } from '../words/show-problem.js';
import { steadyJson, steadyLetters } from '../words/steady-letters.js';
import { EXIT } from './options.js';

/** Advice last; else by file, line, column and code; problems of no file come first. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  return [...problems].sort(
    (a, b) =>
      Number(a.severity === 'advice') - Number(b.severity === 'advice') ||
      compareIds(a.place?.file ?? '', b.place?.file ?? '') ||
      (a.place?.line ?? 0) - (b.place?.line ?? 0) ||
      (a.place?.column ?? 0) - (b.place?.column ?? 0) ||
      compareIds(a.code, b.code),
  );
}

/** A problem of the whole folder: nothing may be published. */
export const stopsEverything = (problem: Problem): boolean =>
  problem.severity === 'error' && problem.scope.kind === 'folder';

/** Clients with an error of their own: withheld, alone. */
export function withheldClients(problems: readonly Problem[]): ReadonlySet<string> {
  const withheld = new Set<string>();
  for (const problem of problems) {
    const client = withheldBy(problem);
    if (client !== undefined) withheld.add(client);
  }
  return withheld;
}

const NOT_WRITTEN: ReadonlySet<string> = new Set([
  'backup-not-writable',
  'begin-not-empty',
  'begin-not-writable',
  'edition-not-writable',
  'folder-misplaced',
  'log-not-writable',
  'output-not-writable',
  'output-in-content',
  'output-occupied',
  'page-not-writable',
  'state-not-writable',
  'state-occupied',
]);

function exitCode(problems: readonly Problem[]): number {
  if (problems.some((problem) => NOT_WRITTEN.has(problem.code))) return EXIT.notWritten;
  return problems.some((problem) => problem.severity === 'error') ? EXIT.content : EXIT.well;
}

export interface Report {
  readonly problems: readonly Problem[];
  /** The author's text of a file, for the line under the message. */
  readonly sourceOf: (file: string) => string | undefined;
  /** One or two lines that say what was done. */
  readonly summary: readonly string[];
  /** The same for programs. */
  readonly facts: Readonly<Record<string, unknown>>;
}

/** The program's own: a new line, a tab, a colour. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: what a colour begins with
const OWN = /(\u001b\[[\d;]*m|[\n\t])/;

const steady = (line: string): string =>
  line
    .split(OWN)
    .map((part, at) => (at % 2 === 1 ? part : steadyLetters(part)))
    .join('');

export function printReport(report: Report, json: boolean): number {
  const problems = inOrder(report.problems);
  const exit = exitCode(problems);
  if (json) {
    const records = problems.map((problem) => ({ ...problem, ...sayProblem(problem) }));
    process.stdout.write(`${steadyJson(JSON.stringify({ ...report.facts, problems: records, exit }, null, 2))}\n`);
    return exit;
  }
  if (problems.length > 0) process.stdout.write(`${sayProblemReport(problems, report.sourceOf).trimEnd()}\n\n`);
  for (const line of report.summary) process.stdout.write(`${steady(line)}\n`);
  return exit;
}
