/**
 * `chalkleaf key …`: what opens the booklets of clients, and marks that came sealed. Of a key nothing is ever printed: where
 * it stands is.
 */
import { open, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type ClientId, clientId } from '../model/identity.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { SealedBy } from '../model/state.js';
import { openBackup, sealBackup } from '../publish/key-backup.js';
import { chooseWords } from '../publish/seal-word-list.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import {
  addPair,
  changeFolderOf,
  endFolderOf,
  keepFolderOf,
  publicKeyOf,
  readHeld,
  restoreState,
  stateFiles,
} from './keep-state.js';
import { stateAstray } from './lies-in.js';
import type { CommonOptions } from './options.js';
import { chosenClients, type ReadStudio, readStudio } from './read-studio.js';
import { printReport } from './report.js';
import { writeWhole } from './write-whole.js';

interface Done {
  readonly problems: readonly Problem[];
  readonly summary: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

export type KeyAct =
  | { readonly act: 'new'; readonly by: SealedBy | undefined }
  | { readonly act: 'rotate'; readonly by: SealedBy | undefined }
  | { readonly act: 'end' }
  | { readonly act: 'backup'; readonly file: string }
  | { readonly act: 'restore'; readonly file: string };

export async function runKey(options: CommonOptions, act: KeyAct): Promise<number> {
  const { problems, summary, facts } = await perform(options, act);
  const report = { problems, sourceOf: () => undefined, summary, facts: { command: 'key', act: act.act, ...facts } };
  return printReport(report, options.json);
}

const NOTHING = { summary: ['No key was changed.'], facts: { changed: [] } };
const failed = (problem: Problem): Done => ({ problems: [problem], ...NOTHING });

async function perform(options: CommonOptions, act: KeyAct): Promise<Done> {
  if (act.act === 'backup') return backUp(options, act.file);
  if (act.act === 'restore') return restore(options, act.file);
  const studio = await readStudio(options);
  const held = await readHeld(options);
  if ('code' in held) return failed(held);
  const { only } = options;
  // Of somebody whose pages are gone a key may still be here, to be taken away.
  const chosen = [...held.access.keys()].some((id) => id === only) ? [] : chosenClients(studio, only);
  if ('code' in chosen) return failed(chosen);
  if (only === undefined) {
    if (act.act === 'new') return makeAll(options, studio, act.by);
    const fault = await addPair(options.state, options.today, false);
    return fault === null ? { problems: [], ...rotatedPair() } : failed(fault);
  }
  const client = nameOf(studio, only);
  if (act.act === 'new') return makeOne(options, client, act.by, held.access.has(client.id));
  if (!held.access.has(client.id)) {
    return failed({ code: 'no-key', severity: 'error', scope: FOLDER, data: { client: client.id } });
  }
  return act.act === 'end' ? endOne(options, client) : rotateOne(options, client, act.by);
}

interface Named {
  readonly id: ClientId;
  readonly name: string;
}

function nameOf(studio: ReadStudio, only: string): Named {
  const id = clientId(only);
  return { id, name: studio.content.clients.find((client) => client.id === id)?.name ?? only };
}

const AGAIN = '`chalkleaf build`, `chalkleaf publish`, then upload, for it to count.';

async function makeAll(options: CommonOptions, studio: ReadStudio, by: SealedBy | undefined): Promise<Done> {
  const made: string[] = [];
  const before = await readHeld(options);
  if ('code' in before) return failed(before);
  const hadPair = publicKeyOf(before) !== null;
  const fault = await addPair(options.state, options.today, true);
  if (fault !== null) return failed(fault);
  for (const client of studio.issued.keys()) {
    if (before.access.has(client)) continue;
    const unkept = await keepFolderOf(options.state, client, options.today, by);
    if (unkept !== null) return failed(unkept);
    made.push(client);
  }
  const summary = [
    hadPair
      ? 'The studio has its key for marks already.'
      : 'Made: the studio’s key for marks. From the next build on, marks that clients send come sealed.',
    ...(made.length > 0 ? [`Made: a public folder and a key for ${made.join(', ')}. ${AGAIN}`] : []),
    `Keys stand in ${options.state}, and nowhere else: \`chalkleaf key backup FILE\` makes a copy.`,
  ];
  return { problems: [], summary, facts: { changed: [...(hadPair ? [] : ['studio']), ...made] } };
}

async function makeOne(options: CommonOptions, client: Named, by: SealedBy | undefined, has: boolean): Promise<Done> {
  if (has) {
    const summary = [`${client.name} has a key already. \`chalkleaf key rotate ${client.id}\` makes another.`];
    return { problems: [], summary, facts: { changed: [] } };
  }
  const fault = await keepFolderOf(options.state, client.id, options.today, by);
  if (fault !== null) return failed(fault);
  const summary = [`Made: a public folder and a key for ${client.name}, opened by ${SAID[by ?? 'link']}. ${AGAIN}`];
  return { problems: [], summary, facts: { changed: [client.id] } };
}

const SAID: Readonly<Record<SealedBy, string>> = {
  link: 'the link alone',
  words: 'six words alone',
  both: 'the link and six words together',
};

const rotatedPair = () => ({
  summary: [
    'Made: another key of the studio’s for marks. What is sealed to those before it still opens.',
    '`chalkleaf build`, `chalkleaf publish`, then upload, for phones to take it.',
  ],
  facts: { changed: ['studio'] },
});

async function rotateOne(options: CommonOptions, client: Named, by: SealedBy | undefined): Promise<Done> {
  const fault = await changeFolderOf(options.state, client.id, options.today, by);
  if (fault !== null) return failed(fault);
  const summary = [
    `Changed: ${client.name} has another public folder and another key.`,
    AGAIN,
    'Then delete on the host the old folder, which `publish` names: until then the old link still opens what lies there. Hand over the new one.',
    'What was opened before on a phone can still be read on that phone.',
  ];
  return { problems: [], summary, facts: { changed: [client.id] } };
}

async function endOne(options: CommonOptions, client: Named): Promise<Done> {
  const fault = await endFolderOf(options.state, client.id);
  if (fault !== null) return failed(fault);
  const summary = [
    `Ended: ${client.name} has no public folder any more, and what opened it is gone.`,
    '`chalkleaf build`, `chalkleaf publish`, then upload, and delete on the host the folder that `publish` names: until then the link still opens it.',
    'What was opened before on a phone can still be read on that phone.',
  ];
  return { problems: [], summary, facts: { changed: [client.id] } };
}

const SHEET = 'backup-words.txt';

/** Made once and kept, so that one printed sheet opens every backup. */
async function backupWords(state: string): Promise<string> {
  const path = join(state, SHEET);
  try {
    const words = (await readFile(path, 'utf8')).split('\n').find((line) => /^[a-z]+( [a-z]+){5,}$/.test(line));
    if (words !== undefined) return words;
  } catch (fault) {
    if (diskFaultCode(fault) !== 'ENOENT') throw fault;
  }
  const words = chooseWords(8);
  const sheet = [
    'These words open every backup of the studio’s keys.',
    'Print this page or copy it by hand, and keep it apart from the backups.',
    '',
    words,
    '',
  ];
  await writeWhole(path, sheet.join('\n'), 0o600);
  return words;
}

async function backUp(options: CommonOptions, path: string): Promise<Done> {
  const { state } = options;
  const held = await readHeld(options);
  if ('code' in held) return failed(held);
  try {
    const files = await stateFiles(state);
    if (files.size === 0) {
      return { problems: [], summary: ['There are no keys yet, and nothing to back up.'], facts: { changed: [] } };
    }
    const words = await backupWords(state);
    const sealed = await sealBackup(files, words);
    const file = await open(path, 'wx', 0o600);
    try {
      await file.writeFile(`${sealed}\n`);
      await file.sync();
    } finally {
      await file.close();
    }
    const opened = await openBackup(await readFile(path, 'utf8'), words);
    if (typeof opened === 'string' || opened.size !== files.size) throw new Error('it did not read back');
    const summary = [
      `Backed up: ${files.size} files of keys and folder names, sealed, in ${path}. It was read back whole.`,
      `The words that open it stand in ${join(state, SHEET)}. Print that page, and keep it apart from the backup.`,
    ];
    return { problems: [], summary, facts: { changed: [], backup: path, files: files.size } };
  } catch (fault) {
    const data = { path, why: sayDiskFault(fault) };
    return failed({ code: 'backup-not-writable', severity: 'error', scope: FOLDER, data });
  }
}

/** Far beyond any words. */
const LONGEST_LETTERS = 4096;

/** The sheet as it was printed, or the words alone; whoever types them ends the line, and no more is waited for. */
async function wordsGiven(): Promise<string> {
  if (process.stdin.isTTY) process.stderr.write('The words on the sheet, then Enter: ');
  let text = '';
  for await (const part of process.stdin) {
    text += String(part);
    const words = wordsIn(text.split('\n').slice(0, -1));
    if (words !== undefined) return words;
    if (text.length > LONGEST_LETTERS) break;
  }
  return wordsIn(text.split('\n')) ?? text;
}

const wordsIn = (lines: readonly string[]): string | undefined =>
  lines.find((line) => /^\s*[a-z]+([ \t]+[a-z]+){5,}\s*$/i.test(line));

async function restore(options: CommonOptions, path: string): Promise<Done> {
  const { state } = options;
  const astray = await stateAstray(options);
  if (astray !== undefined) return failed(astray);
  const unopened = (why: 'unreadable' | 'wrong words' | 'damaged' | 'newer' | 'older'): Done =>
    failed({ code: 'backup-not-opened', severity: 'error', scope: FOLDER, data: { path, why } });
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch {
    return unopened('unreadable');
  }
  const opened = await openBackup(text, await wordsGiven());
  if (typeof opened === 'string') return unopened(opened);
  const fault = await restoreState(state, opened);
  if (fault !== null) return failed(fault);
  const summary = [
    `Put back: ${opened.size} files of keys and folder names, in ${state}.`,
    'Links and words are what they were.',
  ];
  return { problems: [], summary, facts: { changed: [...opened.keys()].length > 0 ? ['state'] : [] } };
}
