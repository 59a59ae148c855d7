/**
 * The web booklet: one shell for everybody and one payload for each client, as a folder and as a single file.
 *
 * Folder: `index.html` is the shell, the same bytes for every client, with style and script inside so that nothing
 * stands between it and the first paint; `payload.html` is the client's part, a whole page without any script, which
 * the shell fetches and takes in. Where nothing can be fetched (a folder opened from
 * a disk, scripting off) the shell leads to `payload.html`, which reads by itself with the same style.
 * File: the payload stands in the shell's own page, with style, script and faces inside.
 */
import { renderToString } from 'preact-render-to-string';
import { BookBody } from '../../layouts/book/book.js';
import { bookOf } from '../../layouts/book/leaves.js';
import type { Booklet } from '../model/booklet.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { PageWords } from '../words/page-words.js';
import { speechOf } from '../words/speech.js';
import { letterSetsIn } from './letters.js';
import { filePolicy, payloadPolicy, shellPolicy } from './policy.js';
import { renderPage } from './render-page.js';
import type { ShellParts } from './shell-parts.js';

/** One file of an output folder; `path` has `/` and stands below the folder. */
export interface OutputFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** The client's part: inert HTML, with the plan as data in it. */
export interface Payload {
  readonly title: string;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly html: string;
}

/** JSON that can stand in a script element: nothing in it ends the element or opens a comment. */
export const jsonForHtml = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');

const PAYLOAD = 'payload.html';

export function renderPayload(booklet: Booklet, plan: ClientPlan): Payload {
  const words = speechOf(booklet.language).words.page;
  const body = renderToString(<BookBody book={bookOf(booklet, words)} />);
  const data = `<script type="application/json" id="plan">${jsonForHtml(plan)}</script>`;
  return {
    title: booklet.title,
    language: booklet.language,
    direction: booklet.direction,
    html: body + data,
  };
}

/** The shell as a page of its own, for a folder. It knows no client. */
function renderShell(parts: ShellParts, words: PageWords): string {
  return renderPage({
    title: words.shellTitle,
    language: 'en',
    direction: 'ltr',
    policy: shellPolicy([parts.facesBeside, parts.style], parts.script),
    styles: [parts.facesBeside.text, parts.style.text],
    styleFiles: [],
    script: parts.script.text,
    payload: PAYLOAD,
    body: `<div class="shell"><h1>${words.shellTitle}</h1><p>${words.shellLoading}</p><p class="on"><a class="main plain" href="${PAYLOAD}">${words.shellOpen}</a></p></div>`,
  });
}

export function renderBookletFile(booklet: Booklet, plan: ClientPlan, parts: ShellParts): string {
  const payload = renderPayload(booklet, plan);
  const styles = [...letterSetsIn(payload.html).map((letters) => parts.facesInside[letters]), parts.style];
  return renderPage({
    title: payload.title,
    language: payload.language,
    direction: payload.direction,
    policy: filePolicy(styles, parts.script),
    styles: styles.map(({ text }) => text),
    styleFiles: [],
    script: parts.script.text,
    body: payload.html,
  });
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Files that are the same for every client. */
export const shellFiles = (parts: ShellParts): readonly OutputFile[] => [
  { path: 'booklet.css', bytes: utf8(`${parts.facesBeside.text}${parts.style.text}\n`) },
  ...parts.fonts.map(({ name, bytes }) => ({ path: `fonts/${name}`, bytes })),
  { path: 'index.html', bytes: utf8(renderShell(parts, speechOf('en').words.page)) },
];

/** In order of path. */
export function renderBookletFolder(booklet: Booklet, plan: ClientPlan, parts: ShellParts): readonly OutputFile[] {
  const payload = renderPayload(booklet, plan);
  const html = renderPage({
    title: payload.title,
    language: payload.language,
    direction: payload.direction,
    policy: payloadPolicy(),
    styles: [],
    styleFiles: ['booklet.css'],
    script: '',
    body: payload.html,
  });
  return [...shellFiles(parts), { path: PAYLOAD, bytes: utf8(html) }];
}
