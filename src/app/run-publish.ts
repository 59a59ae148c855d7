/**
 * `chalkleaf publish`: holds the built public folder against all that is private, and only then writes the folder that is
 * to be uploaded, with a list of what the library holds and the headers a host is to send. Nothing is uploaded here.
 */
import { createHash } from 'node:crypto';
import { realpath } from 'node:fs/promises';
import { join } from 'node:path';
import { compareIds } from '../model/identity.js';
import type { Place } from '../model/place.js';
import { FOLDER, ofClient, type Problem } from '../model/problem.js';
import { apacheFile, dataIn, headersList, joinPolicies, nginxSnippet, policyIn } from '../publish/hosting.js';
import { gatherLeaks, type Leak, type Look, lookFor, type ToldLeak } from '../publish/leak-check.js';
import { compareManifest, MANIFEST, readManifest, writeManifest } from '../publish/manifest.js';
import { readTexts } from '../publish/read-texts.js';
import { envelopesIn } from '../publish/sealed-form.js';
import { addressesAt, NOT_HERE } from '../web/library/addresses.js';
import { counted } from '../words/problems/said.js';
import { diskFaultCode, sayDiskFault } from './disk-fault.js';
import { gatherPrivate } from './gather-private.js';
import { gatherPublic, type PublicFile } from './gather-public.js';
import { type Access, type Held, readHeld } from './keep-state.js';
import { uploadAstray } from './lies-in.js';
import type { CommonOptions } from './options.js';
import { placeUpload } from './place-upload.js';
import { type Progress, progressOn } from './progress.js';
import { type ReadStudio, readStudio } from './read-studio.js';
import { printReport } from './report.js';
import { sealedBefore } from './seal-client.js';

export interface PublishOptions {
  /** Where the folder to upload is to stand; else `upload` in the output folder. */
  readonly to?: string;
}

interface Published {
  readonly problems: readonly Problem[];
  readonly summary: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

const refused = (problems: readonly Problem[]): Published => ({
  problems,
  summary: ['Nothing was published; what you published before still stands.'],
  facts: { published: null },
});

export async function runPublish(options: CommonOptions, { to }: PublishOptions): Promise<number> {
  const progress = progressOn(process.stderr);
  progress.step('Reading …');
  const studio = await readStudio(options);
  const done = await publish(studio, options, to ?? join(options.out, 'upload'), progress);
  progress.done();
  return printReport(
    { ...done, facts: { command: 'publish', ...done.facts }, sourceOf: studio.sourceOf },
    options.json,
  );
}

/** What could not be read cannot be looked for. */
const UNSEEN: ReadonlySet<Problem['code']> = new Set<Problem['code']>([
  'content-missing',
  'file-unreadable',
  'file-too-large',
  'folder-too-deep',
  'too-many-files',
  'link-not-followed',
  'not-utf-8',
]);

async function publish(studio: ReadStudio, options: CommonOptions, to: string, progress: Progress): Promise<Published> {
  const unseen = studio.problems.filter(({ code }) => UNSEEN.has(code));
  if (unseen.length > 0) return refused(unseen);
  const held = await readHeld(options);
  if ('code' in held) return refused([held]);
  const astray = await uploadAstray(to, options);
  if (astray !== undefined) return refused([astray]);
  const built = await readBuilt(options.out);
  if ('code' in built) return refused([built]);
  const { value: files, problems } = built;
  const { value: words, problems: unread } = await gatherPrivate(studio, options.content, held);
  if (unread.length > 0) return refused(unread);
  progress.step(`Looking through ${counted(files.length, 'file')} …`);
  const sealed = await checkSealed(files, options.state, held);
  const leaks = await findLeaks(files, lookFor(words));
  const found = [
    ...problems,
    ...sealed,
    ...leaks.unread,
    ...gatherLeaks(leaks.found).map((leak) => asProblem(leak, studio)),
  ];
  if (found.length > 0) return refused(found);

  const upload = [...files, ...besides(files, studio.content.library.studio.address)].sort((a, b) =>
    compareIds(a.path, b.path),
  );
  const placed = await placeUpload(to, upload);
  if ('code' in placed) return refused([placed]);
  const booklets = new Set(files.flatMap(({ path }) => sealedFolderOf(path) ?? [])).size;
  return {
    problems: [],
    summary: [
      `Looked for ${counted(words.length, 'private word')} in ${counted(files.length, 'file')}: none was found.`,
      placed.changed
        ? `Published: the library and ${counted(booklets, 'sealed booklet')}, in ${to}. Upload that folder.`
        : `Published: nothing has changed in ${to}.`,
      ...sayGone(placed.gone),
      ...sayAddress(booklets, studio.content.library.studio.address),
    ],
    facts: { published: { folder: to, files: upload.length, booklets, changed: placed.changed, gone: placed.gone } },
  };
}

/** More than this is not read one by one. */
const MOST_GONE = 12;

/** A host keeps what is not deleted there, and a link that was taken back opens it. */
function sayGone(gone: readonly string[]): readonly string[] {
  if (gone.length === 0) return [];
  const more = gone.length > MOST_GONE ? [`  and ${counted(gone.length - MOST_GONE, 'more file')}`] : [];
  const shown = gone.slice(0, MOST_GONE).map((path) => `  ${path}`);
  return ['No longer in it, and to be deleted on the host, where it can be read until then:', ...shown, ...more];
}

/** Browsers open what is sealed by https, or from the computer itself (Secure Contexts, W3C, section 3.1). */
function sayAddress(booklets: number, address: string | undefined): readonly string[] {
  if (booklets === 0) return [];
  if (address === undefined) {
    return [
      'There is no `address` in studio.md yet, and so no link to a sealed booklet: say there where this will be.',
    ];
  }
  const { protocol, hostname } = new URL(address);
  const isHere = /^(.*\.)?localhost$|^127\.|^\[::1\]$/.test(hostname);
  return protocol === 'https:' || isHere
    ? []
    : [`The \`address\` in studio.md begins with http: no browser opens a sealed booklet there. It takes https.`];
}

/** Reports `nothing-to-publish` where nothing was built, `public-unreadable`. */
async function readBuilt(out: string) {
  try {
    return await gatherPublic(await realpath(join(out, 'public')));
  } catch (fault) {
    const folder = join(out, 'public');
    const problem: Problem =
      diskFaultCode(fault) === 'ENOENT'
        ? { code: 'nothing-to-publish', severity: 'error', scope: FOLDER, data: { folder } }
        : {
            code: 'file-unreadable',
            severity: 'error',
            scope: FOLDER,
            data: { path: folder, why: sayDiskFault(fault) },
          };
    return problem;
  }
}

const sealedFolderOf = (path: string): string | undefined => /^([0-9a-f]{32})\//.exec(path)?.[1];

/**
 * Reports `sealed-folder-unknown`, and `sealed-folder-unlike` where a folder is not as its own list says or holds what was
 * not sealed here: what is in that nobody can look for.
 */
async function checkSealed(files: readonly PublicFile[], state: string, { access }: Held): Promise<readonly Problem[]> {
  const known = new Map<string, Access>([...access.values()].map((one) => [one.folder, one]));
  const problems: Problem[] = [];
  const folders = new Map<string, PublicFile[]>();
  for (const file of files) {
    const folder = sealedFolderOf(file.path);
    if (folder !== undefined) folders.set(folder, [...(folders.get(folder) ?? []), file]);
  }
  for (const [folder, own] of folders) {
    const held = known.get(folder);
    if (held === undefined) {
      problems.push({ code: 'sealed-folder-unknown', severity: 'error', scope: FOLDER, data: { folder } });
      continue;
    }
    const ours = new Set(Object.values(await sealedBefore(state, held.folder)).map(({ envelope }) => envelope));
    if (held.lock.closed !== undefined) ours.add(held.lock.closed);
    const isForeign = ({ bytes }: PublicFile): boolean =>
      envelopesIn(new TextDecoder().decode(bytes)).some((envelope) => !ours.has(envelope));
    const list = own.find(({ path }) => path === `${folder}/${MANIFEST}`);
    const listed = list === undefined ? null : readManifest(new TextDecoder().decode(list.bytes));
    const there = own
      .filter((file) => file !== list)
      .map(({ path, sha256 }) => ({ path: path.slice(folder.length + 1), sha256 }));
    const unlike = listed === null ? [{ path: MANIFEST, how: 'missing' as const }] : compareManifest(listed, there);
    const foreign = own
      .filter(isForeign)
      .map(({ path }) => ({ path: path.slice(folder.length + 1), how: 'changed' as const }))
      .filter(({ path }) => !unlike.some((one) => one.path === path));
    for (const { path, how } of [...unlike, ...foreign]) {
      problems.push({ code: 'sealed-folder-unlike', severity: 'error', scope: FOLDER, data: { folder, path, how } });
    }
  }
  return problems;
}

async function findLeaks(files: readonly PublicFile[], look: Look) {
  const { readPdfText } = await import('../publish/read-pdf-text.js');
  const found: Leak[] = [];
  const unread: Problem[] = [];
  for (const { path, bytes } of files) {
    // Whatever in a sealed folder was not sealed here was told above.
    const texts = await readTexts(bytes, readPdfText, () => sealedFolderOf(path) !== undefined);
    // A sealed folder's own name may stand in a path, and nowhere else.
    const name = path.replace(/^[0-9a-f]{32}\//, '');
    found.push(...look({ path, texts: [{ inside: 'its path', text: name }, ...(texts ?? [])] }));
    if (texts === null) {
      unread.push({ code: 'public-unreadable', severity: 'error', scope: FOLDER, data: { path, why: 'kind' } });
    }
  }
  return { found, unread };
}

function asProblem({ word, path, inside, others }: ToldLeak, { files, sourceOf }: ReadStudio): Problem {
  const { client, kind, text } = word;
  const said = kind === 'mark' || kind === 'key' ? '' : text;
  const data = { kind, text: said, client: client ?? '', path, inside, others };
  if (client === undefined) return { code: 'leak-found', severity: 'error', scope: FOLDER, data };
  const own = files.filter((one) => one.path.startsWith(`clients/${client}/`)).map((one) => one.path);
  const file = own.find((one) => sourceOf(one)?.includes(said)) ?? own[0] ?? `clients/${client}/client.md`;
  const found = placeOfText(sourceOf(file) ?? '', said);
  return { code: 'leak-found', severity: 'error', scope: ofClient(client), place: { file, ...found }, data };
}

/** Where a text stands in a page, or else the page's beginning; columns count code points. */
function placeOfText(source: string, text: string): Omit<Place, 'file'> {
  const at = text === '' ? -1 : source.indexOf(text);
  if (at < 0) return { line: 1, column: 1, length: 1 };
  const before = source.slice(0, at).split('\n');
  const length = Array.from(text.split('\n')[0] ?? '').length;
  return { line: before.length, column: Array.from(before.at(-1) ?? '').length + 1, length };
}

/** As a policy names the digest of what stands in a page (Content Security Policy Level 3, section 2.3.1). */
const digestSource = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** What stands beside the library in the folder to upload: its list, and headers in the forms that hosts read. */
function besides(
  files: readonly PublicFile[],
  address: string | undefined,
): readonly { readonly path: string; readonly bytes: Uint8Array }[] {
  const pages = files.filter(({ path }) => path.endsWith('.html')).map(({ bytes }) => new TextDecoder().decode(bytes));
  const policies = new Set(pages.flatMap((page) => policyIn(page) ?? []));
  const data = new Set(pages.flatMap(dataIn).map(digestSource));
  const policy = joinPolicies([...policies], data);
  const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
  const notHere =
    address === undefined || files.every(({ path }) => path !== NOT_HERE)
      ? null
      : new URL(addressesAt(address)(NOT_HERE)).pathname;
  const list = writeManifest(files.filter(({ path }) => sealedFolderOf(path) === undefined));
  return [
    { path: MANIFEST, bytes: utf8(list) },
    { path: '_headers', bytes: utf8(headersList(policy)) },
    { path: '.htaccess', bytes: utf8(apacheFile(policy, notHere)) },
    { path: 'nginx-headers.conf', bytes: utf8(nginxSnippet(policy, notHere)) },
  ];
}
