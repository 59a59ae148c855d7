/** The folders of mistakes: each a studio that is whole but for one thing, and the report a coach then reads. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { checkFigures } from '../../src/app/check-figures.js';
import { type FolderFile, type ReadOptions, readFolder } from '../../src/content/read-folder.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { RULE_IDS } from '../../src/engine/rulebook.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Problem } from '../../src/model/problem.js';
import { sayProblemReport } from '../../src/words/show-problem.js';

export const ERRORS = resolve(import.meta.dirname, '..', 'errors');

export interface ErrorFolder {
  /** `<code>`, or `<code>.<variant>` for another way of making the mistake. */
  readonly name: string;
  readonly code: string;
  readonly files: readonly FolderFile[];
  /** Paths of the files that hold the mistake. */
  readonly own: readonly string[];
  readonly expected: string;
  /** The day on which its clients are planned, from `planned.txt`; absent where reading alone tells the mistake. */
  readonly planned?: string;
}

const filesBelow = (folder: string): FolderFile[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(md|jpg|png|webp)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => ({ path: path.slice(folder.length + 1), bytes: new Uint8Array(readFileSync(path)) }));

export const baseFiles = (): FolderFile[] => filesBelow(join(ERRORS, 'base'));

export function errorFolders(): readonly ErrorFolder[] {
  const base = baseFiles();
  const names = readdirSync(ERRORS).filter((name) => name !== 'base');
  return names.sort().map((name) => {
    const folder = join(ERRORS, name);
    const read = (file: string): string =>
      existsSync(join(folder, file)) ? readFileSync(join(folder, file), 'utf8') : '';
    const without = read('without.txt').split('\n');
    const own = filesBelow(folder);
    const planned = read('planned.txt').trim();
    const kept = base.filter(({ path }) => !without.includes(path) && !own.some((file) => file.path === path));
    return {
      name,
      code: name.replace(/\..*$/, ''),
      files: [...kept, ...own],
      own: own.map(({ path }) => path),
      expected: read('expected.txt'),
      ...(planned === '' ? {} : { planned }),
    };
  });
}

export const readWith = (files: readonly FolderFile[], options: ReadOptions = {}) =>
  readFolder(files, { rules: RULE_IDS, ...options });

/** What is found in a folder of mistakes: by reading, by posing, and where it says so by planning each of its clients. */
export function problemsOf({ files, planned }: ErrorFolder, options: ReadOptions = {}): readonly Problem[] {
  const keep = options.keep ?? (() => true);
  const { value, problems: read } = readWith(files, options);
  const problems = [...read, ...checkFigures(value.library.exercises).filter(keep)];
  const today = planned === undefined ? undefined : dayOfIso(planned);
  if (today === undefined || problems.some(({ severity }) => severity === 'error')) return problems;
  const plans = value.clients.map((client) => planBlock({ library: value.library, client, today, edition: 0 }));
  return [...problems, ...plans.flatMap((plan) => plan.problems.filter(keep))];
}

/** The report as `check` prints it. */
export function reportOf(files: readonly FolderFile[], problems: readonly Problem[]): string {
  const pages = files.filter(({ path }) => path.endsWith('.md'));
  const texts = new Map(pages.map(({ path, bytes }) => [path, new TextDecoder().decode(bytes)]));
  return sayProblemReport(problems, (file) => texts.get(file));
}
