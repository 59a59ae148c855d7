/**
 * One folder of an author's files → everything that is true in it, and everything that is wrong with it, in one run.
 * Gathering the files, within bounds, is left to `app`; planning to `engine`.
 */
import type { Client } from '../model/client.js';
import type { Exercise } from '../model/exercise.js';
import { clientId, compareIds } from '../model/identity.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import type { Programme } from '../model/programme.js';
import type { Result } from '../model/result.js';
import type { Content, RuleOverride, Studio } from '../model/studio.js';
import { CHECKS } from './folder-checks.js';
import { nearestOf } from './nearest.js';
import { openFile } from './open-file.js';
import { type ReadClient, readClient } from './read-client.js';
import { type ReadExercise, readExercise } from './read-exercise.js';
import { isId, slugOf } from './read-id.js';
import { type ReadProgramme, readProgramme } from './read-programme.js';
import { NO_STUDIO, readRules, readStudioFile } from './read-studio-file.js';
import type { FolderCheck, ReadThings } from './read-things.js';
import { inOrder, type Report, startReport } from './report.js';

export interface FolderFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface ReadOptions {
  /** Ids of the engine's named rules, against which `rules.md` is held; without them its ids are taken as they are. */
  readonly rules?: readonly string[];
  /** Which problems are kept, and which checks across files are made: for tests of the checks themselves. */
  readonly keep?: (problem: Problem) => boolean;
  readonly checks?: readonly FolderCheck[];
}

/** Pages for people, in any folder. */
const NOT_READ = /(^|\/)(README|GUIDE|ERRORS)\.md$/i;
const HOMES = ['studio.md', 'rules.md', 'exercises/<id>.md', 'programmes/<id>.md', 'clients/<id>/client.md'];

/** Reports every code of `ContentProblems`, and `not-handled` and `rotation-not-stated`; problems by file, line, column, code. */
export function readFolder(files: readonly FolderFile[], options: ReadOptions = {}): Result<Content> {
  const problems: Problem[] = [];
  const keep = options.keep ?? (() => true);
  const folder = startReport(FOLDER, problems, keep);
  const sorted = files.filter(({ path }) => !NOT_READ.test(path)).sort((a, b) => compareIds(a.path, b.path));

  let studio: Studio | undefined;
  const studioFile = sorted.find(({ path }) => path === 'studio.md');
  if (studioFile) studio = readStudioFile(openFile('studio.md', studioFile.bytes, folder));
  else folder.add({ code: 'no-studio', data: {} });

  let overrides: readonly RuleOverride[] = [];
  const exercises: ReadExercise[] = [];
  const programmes: ReadProgramme[] = [];
  const clients: ReadClient[] = [];
  for (const { path, bytes } of sorted) {
    const [top = '', second = '', third, ...deeper] = path.split('/');
    const id = second.replace(/\.md$/, '');
    const open = (report: Report) => openFile(path, bytes, report);
    if (path === 'studio.md') continue;
    if (path === 'rules.md') overrides = readRules(openFile(path, bytes, folder, 'none'), options.rules);
    else if (top === 'exercises' && second.endsWith('.md') && third === undefined) {
      checkId(folder, path, id);
      exercises.push(readExercise(open(folder), id));
    } else if (top === 'programmes' && second.endsWith('.md') && third === undefined) {
      checkId(folder, path, id);
      programmes.push(readProgramme(open(folder), id));
    } else if (top === 'clients' && third === 'client.md' && deeper.length === 0) {
      const report = startReport(ofClient(clientId(second)), problems, keep);
      checkId(report, path, second);
      clients.push(readClient(open(report), second, studio ?? NO_STUDIO));
    } else folder.add({ code: 'unknown-file', data: { belongs: homeOf(path) } }, wholeOf(path));
  }

  const things: ReadThings = { studio, exercises, programmes, clients, paths: new Set(sorted.map(({ path }) => path)) };
  for (const { check } of options.checks ?? CHECKS) check(things);

  const content: Content = {
    library: {
      studio: studio ?? NO_STUDIO,
      exercises: exercises.flatMap(({ exercise, id }): Exercise[] => (exercise && isId(id) ? [exercise] : [])),
      programmes: programmes.flatMap(({ programme, id }): Programme[] => (programme && isId(id) ? [programme] : [])),
      overrides,
    },
    clients: clients.flatMap(({ client, id }): Client[] => (client && isId(id) ? [client] : [])),
  };
  return { value: content, problems: inOrder(problems) };
}

const wholeOf = (path: string) => ({ file: path, line: 1, column: 1, length: 1 });

function checkId(report: Report, path: string, id: string): void {
  if (!isId(id)) report.add({ code: 'bad-id', data: { id, suggestion: slugOf(id) } }, wholeOf(path));
}

/** Where a misplaced file is likely to belong; empty where that cannot be told. */
function homeOf(path: string): string {
  const [top = '', second = ''] = path.split('/');
  if (!path.includes('/')) return HOMES.find((home) => home === nearestOf(path, ['studio.md', 'rules.md'])) ?? '';
  const folder = nearestOf(top, ['exercises', 'programmes', 'clients']);
  if (folder === 'clients')
    return second.endsWith('.md') ? `clients/${second.slice(0, -3)}/client.md` : `clients/${second}/client.md`;
  return folder === '' ? '' : `${folder}/${path.split('/').at(-1) ?? ''}`;
}
