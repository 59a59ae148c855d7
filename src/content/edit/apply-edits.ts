/**
 * Edits of one client's page, held against a second reading before anybody writes them: the page must then say what
 * the edits say and everything else as before, and nothing in the folder may be wrong that was not. What is refused
 * leaves the page as it was.
 */
import type { Client } from '../../model/client.js';
import type { Edit, EditFault } from '../../model/edit.js';
import { clientId } from '../../model/identity.js';
import { FOLDER, ofClient, type Problem } from '../../model/problem.js';
import type { Result } from '../../model/result.js';
import type { Content } from '../../model/studio.js';
import { openFile } from '../open-file.js';
import { type FolderFile, type ReadOptions, readFolder } from '../read-folder.js';
import { startReport } from '../report.js';
import { editClient, nameOf } from './edit-client.js';
import { expectEdit, newLast, type Originals } from './expect-edit.js';
import { factsOf, type PageFacts } from './page-facts.js';
import { partNamed, partsOf } from './page-parts.js';
import { openPage } from './page-text.js';

export interface EditedPage {
  readonly path: string;
  /** The page as it was read, and as it is to be written; the same where everything is written already. */
  readonly before: string;
  readonly after: string;
}

export interface EditOptions extends ReadOptions {
  /** What was read in these files with these options; they are read for it where it is not at hand. */
  readonly read?: Result<Content>;
}

/** `files` is the whole folder, `path` the client's page in it. Reports `edit-not-possible`. */
export function applyEdits(
  files: readonly FolderFile[],
  path: string,
  edits: readonly Edit[],
  options: EditOptions = {},
): EditedPage | { readonly problem: Problem } {
  const bytes = files.find((file) => file.path === path)?.bytes;
  const before = bytes && decoded(bytes);
  if (before === undefined) return refused(path, { edit: 0, why: 'page-unreadable', name: '' });
  const made = editClient(before, edits);
  if ('problem' in made) return refused(path, made.problem);
  const after = made.text;
  const fault = faultOf(files, path, before, after, edits, options);
  if (!fault) return { path, before, after };
  // The first edit without which all would be well is the one to name.
  for (let count = 1; count < edits.length; count += 1) {
    const some = edits.slice(0, count);
    const part = editClient(before, some);
    const found = 'text' in part && faultOf(files, path, before, part.text, some, options);
    if (found) return refused(path, found);
  }
  return refused(path, fault);
}

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** `undefined` where the bytes are no text. A byte order mark is kept. */
function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function refused(path: string, { why, name }: EditFault): { readonly problem: Problem } {
  const id = /^clients\/([^/]+)\//.exec(path)?.[1];
  const scope = id === undefined ? FOLDER : ofClient(clientId(id));
  const place = { file: path, line: 1, column: 1, length: 1 };
  return { problem: { code: 'edit-not-possible', severity: 'error', scope, place, data: { why, about: name } } };
}

/** What `after` says that `before` with these edits made does not, or the other way round; the last edit is named. */
export function faultOf(
  files: readonly FolderFile[],
  path: string,
  before: string,
  after: string,
  edits: readonly Edit[],
  options: EditOptions,
): EditFault | undefined {
  const edit = Math.max(0, edits.length - 1);
  const named = edits[edit];
  const name = named ? nameOf(named) : '';
  const facts = readFacts(path, before);
  if (!facts) return { edit, why: 'page-unreadable', name: '' };
  const wanted = expectAll(facts, before, edits);
  const found = readFacts(path, after);
  if (!wanted || !found || canonical(newLast(found, facts)) !== canonical(newLast(wanted, facts))) {
    return { edit, why: 'not-exact', name };
  }
  const changed = files.map((file) => (file.path === path ? { path, bytes: bytesOf(after) } : file));
  const [then, now] = [options.read ?? readFolder(files, options), readFolder(changed, options)];
  const wrong = newErrors(then.problems, now.problems)[0];
  if (wrong) return { edit, why: 'would-be-wrong', name: wrong.code };
  const isIts = ({ place }: Client): boolean => place.file === path;
  const [was, is] = [then.value.clients.find(isIts), now.value.clients.find(isIts)];
  return was && !(is && restIsSame(was, is, edits)) ? { edit, why: 'not-exact', name } : undefined;
}

function readFacts(path: string, text: string): PageFacts | undefined {
  return factsOf(
    openFile(
      path,
      bytesOf(text),
      startReport(FOLDER, [], () => false),
    ),
  );
}

function expectAll(facts: PageFacts, before: string, edits: readonly Edit[]): PageFacts | undefined {
  const originals = originalsOf(facts, before);
  let wanted: PageFacts | undefined = facts;
  for (const edit of edits) {
    const next: PageFacts | undefined = expectEdit(wanted, edit, originals);
    if (!next) return undefined;
    if (next !== wanted) originals.note(edit);
    wanted = next;
  }
  return wanted;
}

/** Entries and rows by where they stood in the page as it was handed in. */
function originalsOf(facts: PageFacts, before: string): Originals & { note(edit: Edit): void } {
  const entries = new Map<string, number[]>();
  const rows = new Map<string, number[]>();
  const parts = partsOf(openPage(before).source);
  for (const [list, value] of Object.entries(facts.front)) {
    if (Array.isArray(value)) entries.set(list, [...value.keys()]);
  }
  for (const name of ['Signed off', 'Tests', 'Observations'] as const) {
    for (const { block } of partNamed(parts, name)?.blocks ?? []) {
      if (block.kind === 'table' && !rows.has(name))
        rows.set(
          name,
          block.rows.map(({ place }) => place.line),
        );
    }
  }
  const entryAt = (list: string, index: number): number => entries.get(list)?.indexOf(index) ?? -1;
  const rowAt = (section: string, line: number): number => rows.get(section)?.indexOf(line) ?? -1;
  return {
    entryAt,
    rowAt,
    note(edit) {
      if (edit.kind === 'remove-entry') entries.get(edit.path[0])?.splice(entryAt(...edit.path), 1);
      if (edit.kind === 'remove-row') rows.get(edit.section)?.splice(rowAt(edit.section, edit.line), 1);
    },
  };
}

/** Text by which two values are compared: keys in one order. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

/** Errors there are more of than before, wherever in the folder. */
function newErrors(before: readonly Problem[], after: readonly Problem[]): readonly Problem[] {
  const key = ({ code, data, scope }: Problem): string => canonical({ code, data, scope });
  const left = before.map(key);
  return after.filter((problem) => {
    if (problem.severity !== 'error') return false;
    const at = left.indexOf(key(problem));
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

/** What of a client each key of the page says, where it goes by another name or says more than one thing. */
const SAYS: Readonly<Record<string, readonly (keyof Client)[]>> = {
  starts: ['starts', 'days'],
  'birth year': ['birthYear'],
  'body mass': ['bodyMass'],
  'blocks before': ['blocksBefore'],
  'large print': ['largePrint'],
  'main bells': ['mainBells'],
  units: ['unit'],
  medicines: ['health'],
  conditions: ['health'],
  falls: ['health'],
  'blood pressure': ['health'],
  pregnancy: ['health'],
  birth: ['health'],
  'Signed off': ['signOffs'],
  Tests: ['tests'],
  Observations: ['observations'],
  'Work on this': ['workOnThis'],
};

function restIsSame(before: Client, after: Client, edits: readonly Edit[]): boolean {
  const touched = new Set<string>(['place', 'places']);
  for (const edit of edits) {
    const name = 'section' in edit ? edit.section : (edit.path[0] ?? '');
    for (const part of SAYS[name] ?? [name]) touched.add(part);
  }
  const rest = (client: Client): string =>
    canonical(withoutPlaces(Object.fromEntries(Object.entries(client).filter(([part]) => !touched.has(part)))));
  return rest(before) === rest(after);
}

function withoutPlaces(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutPlaces);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, part]) => (key === 'place' ? [] : [[key, withoutPlaces(part)]])),
  );
}
