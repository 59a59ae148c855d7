/**
 * One folder of an author's files → everything that is true in it, and everything that is wrong with it, in one run.
 * Gathering the files, within bounds, is left to `app`; planning to `engine`.
 */
import type { Client } from '../model/client.js';
import type { Exercise } from '../model/exercise.js';
import { firstNameOf } from '../model/first-name.js';
import { clientId, compareIds } from '../model/identity.js';
import { isPicturePath } from '../model/picture-kind.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import type { Programme } from '../model/programme.js';
import type { Result } from '../model/result.js';
import { isId, slugOf } from '../model/slug.js';
import type { Content, RuleOverride } from '../model/studio.js';
import { withoutOff } from './advice-off.js';
import { CHECKS } from './folder-checks.js';
import { idIn } from './link-target.js';
import { nearestOf } from './nearest.js';
import { type OpenFile, openFile } from './open-file.js';
import { type ReadClient, readClient } from './read-client.js';
import { type ReadExercise, readExercise } from './read-exercise.js';
import { type ReadProgramme, readProgramme } from './read-programme.js';
import { NO_STUDIO, readRules, readStudioFile } from './read-studio-file.js';
import type { FolderCheck, ReadThings } from './read-things.js';
import { inOrder, type Report, startReport } from './report.js';

export interface FolderFile {
  /** Below the content folder, with `/`. */
  readonly path: string;
  /** Of a picture its beginning is enough. */
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
const NOT_READ = /(^|\/)(README|GUIDE|ERRORS|HOSTING)\.md$/i;

/** Reports every code of `ContentProblems`, and `not-handled` and `rotation-not-stated`; problems by file, line, column, code. */
export function readFolder(files: readonly FolderFile[], options: ReadOptions = {}): Result<Content> {
  const problems: Problem[] = [];
  const keep = options.keep ?? (() => true);
  const folder = startReport(FOLDER, problems, keep);
  const pictures = new Map(files.flatMap(({ path, bytes }) => (isPicturePath(path) ? [[path, bytes] as const] : [])));
  const sorted = files
    .filter(({ path }) => !NOT_READ.test(path) && !pictures.has(path))
    .sort((a, b) => compareIds(a.path, b.path));

  const opened: OpenFile[] = [];
  const open = (path: string, bytes: Uint8Array, report: Report, front: 'needed' | 'none' = 'needed'): OpenFile => {
    const file = openFile(path, bytes, report, front);
    opened.push(file);
    return file;
  };

  const studioFile = sorted.find(({ path }) => path === 'studio.md');
  const studio = studioFile && readStudioFile(open('studio.md', studioFile.bytes, folder));
  if (!studioFile) folder.add({ code: 'no-studio', data: {} });

  let overrides: readonly RuleOverride[] = [];
  const exercises: ReadExercise[] = [];
  const programmes: ReadProgramme[] = [];
  const clients: ReadClient[] = [];
  for (const { path, bytes } of sorted) {
    const home = homeOf(path);
    if (home.kind === 'rules') overrides = readRules(open(path, bytes, folder, 'none'), options.rules);
    else if (home.kind === 'exercise') {
      checkId(folder, path, home.id);
      exercises.push(readExercise(open(path, bytes, folder), home.id));
    } else if (home.kind === 'programme') {
      checkId(folder, path, home.id);
      programmes.push(readProgramme(open(path, bytes, folder), home.id));
    } else if (home.kind === 'client') {
      const report = startReport(ofClient(clientId(home.id)), problems, keep);
      checkId(report, path, home.id);
      clients.push(readClient(open(path, bytes, report), home.id, studio ?? NO_STUDIO));
    } else if (home.kind === 'none') {
      folder.add({ code: 'unknown-file', data: { belongs: likelyHome(path) } }, wholeOf(path));
    }
  }

  const paths = new Set(files.map(({ path }) => path));
  const things: ReadThings = {
    studio,
    overrides,
    exercises,
    programmes,
    clients,
    files: opened,
    paths,
    pictures,
    folder,
  };
  for (const { check } of options.checks ?? CHECKS) check(things);

  const content: Content = {
    library: {
      studio: studio ?? NO_STUDIO,
      exercises: exercises.flatMap(({ exercise, id }): Exercise[] => (exercise && isId(id) ? [exercise] : [])),
      programmes: programmes.flatMap(({ programme, id }): Programme[] => (programme && isId(id) ? [programme] : [])),
      overrides,
    },
    clients: besidePartners(clients.flatMap(({ client, id }): Client[] => (client && isId(id) ? [client] : []))),
  };
  return { value: content, problems: inOrder(withoutOff(problems, opened)) };
}

/** Two whose pages name each other know each other by first name. */
const besidePartners = (clients: readonly Client[]): readonly Client[] =>
  clients.map((client) => {
    const partner = clients.find(({ id }) => id === client.partner && id !== client.id);
    if (partner === undefined || partner.partner !== client.id) return client;
    return { ...client, partnerName: firstNameOf(partner.name) };
  });

const wholeOf = (path: string) => ({ file: path, line: 1, column: 1, length: 1 });

function checkId(report: Report, path: string, id: string): void {
  if (!isId(id)) report.add({ code: 'bad-id', data: { id, suggestion: slugOf(id) } }, wholeOf(path));
}

type Home =
  | { readonly kind: 'studio' | 'rules' | 'none' }
  | { readonly kind: 'exercise' | 'programme' | 'client'; readonly id: string };

function homeOf(path: string): Home {
  if (path === 'studio.md') return { kind: 'studio' };
  if (path === 'rules.md') return { kind: 'rules' };
  const exercise = idIn('exercises', path);
  if (exercise !== undefined) return { kind: 'exercise', id: exercise };
  const programme = idIn('programmes', path);
  if (programme !== undefined) return { kind: 'programme', id: programme };
  const client = /^clients\/([^/]+)\/client\.md$/.exec(path)?.[1];
  return client === undefined ? { kind: 'none' } : { kind: 'client', id: client };
}

/** Where a misplaced file is likely to belong; empty where that cannot be told. */
function likelyHome(path: string): string {
  const [top = '', second = ''] = path.split('/');
  if (!path.includes('/')) return nearestOf(path, ['studio.md', 'rules.md']);
  const folder = nearestOf(top, ['exercises', 'programmes', 'clients']);
  if (folder === 'clients') return `clients/${second.replace(/\.md$/, '')}/client.md`;
  return folder === '' ? '' : `${folder}/${path.split('/').at(-1) ?? ''}`;
}
