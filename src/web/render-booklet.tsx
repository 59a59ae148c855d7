/**
 * The web booklet: one shell for everybody and one payload for each client, as a folder and as a single file.
 *
 * Folder: `index.html` is the shell, the same bytes for every client of a language, with style and script inside so that nothing
 * stands between it and the first paint; `payload.html` is the client's part, a whole page without any script, which
 * the shell fetches and takes in. Where nothing can be fetched (a folder opened from
 * a disk, scripting off) the shell leads to `payload.html`, which reads by itself with the same style.
 * File: the payload stands in the shell's own page, with style, script and faces inside.
 */
import { renderToString } from 'preact-render-to-string';
import { BookBody } from '../../layouts/book/book.js';
import { type Book, bookOf } from '../../layouts/book/leaves.js';
import { nearTheirLike } from '../../layouts/like-drawings.js';
import { type Movement, movementOf } from '../../layouts/movement.js';
import type { Booklet, ExercisePart } from '../model/booklet.js';
import type { ClientPlan } from '../model/client-plan.js';
import { BOOKLET_LANGUAGES, bookletLanguage } from '../model/languages.js';
import type { Drawings, Photographs } from '../model/picture.js';
import { plainText } from '../model/prose.js';
import { type PageSays, packPlan } from '../session/travelling.js';
import type { Catalogue } from '../words/catalogue.js';
import { directionOf } from '../words/language.js';
import { speechOf } from '../words/speech.js';
import { letterSetsIn } from './letters.js';
import { besidePage, drawingsBesides, filesBeside, insidePage, type PlacedPhotographs } from './place-photographs.js';
import { filePolicy, payloadPolicy, shellPolicy } from './policy.js';
import { renderPage } from './render-page.js';
import { digestOfAll, type Hashed, PAYLOAD, type ShellParts } from './shell-parts.js';
import { shortenMarkup } from './shorten-markup.js';

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

/** `photographs`: of any exercises; one of them stands in the place of a drawing. */
export function renderPayload(
  booklet: Booklet,
  plan: ClientPlan,
  drawings: Drawings = new Map(),
  photographs: PlacedPhotographs = new Map(),
): Payload {
  const { words } = speechOf(booklet.language);
  const book = bookOf(booklet, words, drawingsBesides(drawings, photographs), photographs);
  const body = shortenMarkup(renderToString(<BookBody book={book} />));
  const packed = packPlan(plan, pagesOf(book));
  const data = `<script type="application/json" id="plan">${jsonForHtml(packed)}</script>`;
  return {
    title: booklet.title,
    language: booklet.language,
    direction: booklet.direction,
    html: body + data + movementsOf(book),
  };
}

/** What the exercises' pages say, as the phone reads it there. */
function pagesOf({ exercises }: Book): PageSays {
  const pages = new Map<string, ExercisePart>([...exercises.values()].map((page) => [page.id, page]));
  return {
    called: (exercise) => pages.get(exercise)?.title,
    leads: (exercise) =>
      (pages.get(exercise)?.sections ?? []).flatMap(({ name, lines }) =>
        name === 'faults' ? [] : lines.flatMap(({ lead, exercise: to }) => (to === undefined ? [plainText(lead)] : [])),
      ),
  };
}

/** What makes the drawings of the exercises' pages move, by exercise; in the order of the drawings, for what is drawn alike moves alike. */
function movementsOf({ exercises, drawings }: Book): string {
  const moves: Record<string, Movement> = {};
  const drawn = [...exercises.keys()].flatMap((id) => {
    const drawing = drawings.get(id)?.drawing;
    return drawing === undefined ? [] : [{ id, drawing }];
  });
  for (const { id, drawing } of nearTheirLike(drawn)) {
    const movement = movementOf(drawing);
    if (movement !== null) moves[id] = movement;
  }
  return Object.keys(moves).length === 0
    ? ''
    : `<script type="application/json" id="movements">${jsonForHtml(moves)}</script>`;
}

/** The shell as a page of its own, for a folder. It knows no client, only which language its own words are to be in. */
function renderShell(parts: ShellParts, { language, page: words }: Catalogue): string {
  return renderPage({
    title: words.shellTitle,
    language,
    direction: directionOf(language),
    policy: shellPolicy([parts.facesBeside, parts.style], parts.script),
    styles: [parts.facesBeside.text, parts.style.text],
    styleFiles: [],
    scripts: [parts.script.text],
    onHomeScreen: { manifest: MANIFEST, icon: 'icon.svg', touchIcon: 'icon-180.png' },
    payload: PAYLOAD,
    body: `<div class="shell"><h1>${words.shellTitle}</h1><p>${words.shellLoading}</p><p class="on"><a class="main plain" href="${PAYLOAD}">${words.shellOpen}</a></p></div>`,
  });
}

/** As words are found for it: the first language speaks where none is meant. */
const trainingIn = (language: string, { training }: ShellParts): Hashed =>
  training[bookletLanguage(language) ?? BOOKLET_LANGUAGES[0]];

export function renderBookletFile(
  booklet: Booklet,
  plan: ClientPlan,
  parts: ShellParts,
  drawings: Drawings = new Map(),
  photographs: Photographs = new Map(),
): string {
  const payload = renderPayload(booklet, plan, drawings, insidePage(photographs));
  const styles = [...letterSetsIn(payload.html).map((letters) => parts.facesInside[letters]), parts.style];
  const scripts = [
    parts.script,
    trainingIn(booklet.language, parts),
    ...(plan.replan === undefined ? [] : [parts.planAgain]),
    ...(plan.marksTo === undefined ? [] : [parts.sealing]),
  ];
  return renderPage({
    title: payload.title,
    language: payload.language,
    direction: payload.direction,
    policy: filePolicy(styles, scripts),
    styles: styles.map(({ text }) => text),
    styleFiles: [],
    scripts: scripts.map(({ text }) => text),
    body: payload.html,
  });
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/**
 * Asks a browser that knows it (V8, Explicit Compile Hints) to make ready all of a file's functions while it comes, beside the page, where
 * each would else hold up the page when it is first called. In a page of its own a script stands in the page, and is not asked.
 */
const MADE_READY = '//# allFunctionsCalledOnLoad\n';

const PLAN_AGAIN = 'plan-again.js';
const SEALING = 'sealing.js';
const MANIFEST = 'manifest.webmanifest';

/** Says of a folder what it is called and looks like on a home screen: the same for all of a language, and nothing of anybody. */
function manifestOf({ language, page: words }: Catalogue): string {
  const png = (size: number) => ({ src: `icon-${size}.png`, sizes: `${size}x${size}`, type: 'image/png' });
  return JSON.stringify({
    lang: language,
    name: words.shellTitle,
    short_name: words.shellTitle,
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#fbf7ee',
    theme_color: '#fbf7ee',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }, png(192), png(512)],
  });
}

/**
 * Files that are the same for every client of a language. The worker stands last, with the names of all before it and
 * their digest. `language` is the booklet's, a BCP 47 tag.
 */
export async function shellFiles(parts: ShellParts, language: string): Promise<readonly OutputFile[]> {
  const { words } = speechOf(language);
  const files: readonly OutputFile[] = [
    { path: 'booklet.css', bytes: utf8(`${parts.facesBeside.text}${parts.style.text}\n`) },
    ...parts.fonts.map(({ name, bytes }) => ({ path: `fonts/${name}`, bytes })),
    ...parts.icons.map(({ name, bytes }) => ({ path: name, bytes })),
    { path: 'index.html', bytes: utf8(renderShell(parts, words)) },
    { path: MANIFEST, bytes: utf8(manifestOf(words)) },
    { path: PLAN_AGAIN, bytes: utf8(MADE_READY + parts.planAgain.text) },
    { path: SEALING, bytes: utf8(parts.sealing.text) },
    { path: 'training.js', bytes: utf8(MADE_READY + trainingIn(language, parts).text) },
  ];
  const digest = await digestOfAll(files.map(({ bytes }) => bytes));
  const held = {
    FILES: files.map(({ path }) => path),
    DIGEST: digest.slice(0, 16),
    PAYLOAD,
    PLAN_AGAIN,
    SEALING,
  };
  const said = Object.entries(held).map(([name, value]) => `const ${name}=${JSON.stringify(value)};`);
  return [...files, { path: 'worker.js', bytes: utf8(`${said.join('')}${parts.worker}`) }];
}

/** The client's part as a page of its own. */
function pageOf(payload: Payload): OutputFile {
  const html = renderPage({
    title: payload.title,
    language: payload.language,
    direction: payload.direction,
    policy: payloadPolicy(),
    styles: [],
    styleFiles: ['booklet.css'],
    scripts: [],
    body: payload.html,
  });
  return { path: PAYLOAD, bytes: utf8(html) };
}

/** The client's part as it is sealed: pictures stand in it, since files beside it would tell by their names what is done. */
export const renderAlone = (
  booklet: Booklet,
  plan: ClientPlan,
  drawings: Drawings,
  photographs: Photographs,
): OutputFile => pageOf(renderPayload(booklet, plan, drawings, insidePage(photographs)));

/** Pictures lie beside it, of those exercises that have a page. */
export async function renderBookletFolder(
  booklet: Booklet,
  plan: ClientPlan,
  parts: ShellParts,
  drawings: Drawings = new Map(),
  photographs: Photographs = new Map(),
): Promise<readonly OutputFile[]> {
  const pages = new Set(booklet.parts.flatMap((part) => (part.kind === 'exercise' ? [part.id] : [])));
  const shown = new Map([...photographs].filter(([id]) => pages.has(id)));
  const payload = renderPayload(booklet, plan, drawings, besidePage(shown));
  return [...(await shellFiles(parts, booklet.language)), ...filesBeside(shown), pageOf(payload)];
}
