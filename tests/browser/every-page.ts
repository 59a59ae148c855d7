/** Every page that is made of a studio, as files of one host: library and search, booklets in all their forms, desk and hand-over. */
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { composeHandOver } from '../../src/booklet/compose-hand-over.js';
import { linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import { dayOfIso } from '../../src/model/day.js';
import type { HandOver } from '../../src/model/hand-over.js';
import { bookletId, exerciseId } from '../../src/model/identity.js';
import type { Photograph, Photographs, PictureCopy } from '../../src/model/picture.js';
import { publicPartOf } from '../../src/model/public-library.js';
import type { Content } from '../../src/model/studio.js';
import { closeLock, sealPart } from '../../src/publish/seal-booklet.js';
import { FORM } from '../../src/publish/seal-envelope.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { deskPages } from '../../src/web/desk/render-desk.js';
import { SCRIPT, searchIndexOf } from '../../src/web/library/library-assets.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { renderNotHere } from '../../src/web/library/render-not-here.js';
import { filesBeside } from '../../src/web/place-photographs.js';
import { bundleScript, bundleStyle } from '../../src/web/prepare-shell.js';
import { renderAlone, renderBookletFile, shellFiles } from '../../src/web/render-booklet.js';
import { renderPartner } from '../../src/web/render-partner.js';
import { renderSealed } from '../../src/web/render-sealed.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { STUDIO_STYLE } from '../../src/web/studio-assets.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { sayProblem } from '../../src/words/say-problem.js';
import { HOSTILE } from '../publish/hostile-strings.js';
import { isWrong } from '../publish/hostile-studio.js';
import { laterEdition } from './later-edition.js';

const TODAY = dayOfIso('2026-11-24');
const BOOKLET = bookletId('0123456789abcdef0123456789abcdef');

/** Of every kind there must be a page; as a part of its path. */
export const KINDS = [
  ...[
    'index.html',
    '404',
    'exercises/',
    'programmes/',
    'rulebook/',
    'booklet.html',
    'booklet-next',
    'booklet-withdrawn',
    'partner/partner',
    'sealed/index',
  ],
  ...['sealed/payload', 'opened/payload', 'desk/index', 'desk/clients/', 'hand-over/'],
] as const;

const point = (name: string, width: number): PictureCopy => ({
  name,
  width,
  height: width,
  type: 'image/png',
  // The smallest picture there is: one grey point.
  bytes: Uint8Array.from(atob(GREY_POINT), (sign) => sign.charCodeAt(0)),
});
const GREY_POINT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

/** A coach's own, in two widths. */
export const photographSaid = (said: string): Photograph => ({
  said,
  copies: [point('a-320.png', 320), point('a-640.png', 640)],
});

export const onePhotograph: Photographs = new Map([[exerciseId('goblet-squat'), photographSaid('A bell held close.')]]);

export interface Made {
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** ISO date of the first day of the plan. */
  readonly starts: string;
}

export interface Wanted {
  readonly photographs?: Photographs;
  /** What whoever trains writes of it, and whoever withdraws an edition; others each time. */
  readonly words?: () => string;
}

/** The sealed folder stands in `sealed/` and is opened by `key`; what is in it, as it is once it is open, in `opened/`. */
export async function filesOf(
  content: Content,
  parts: ShellParts,
  key: string,
  { photographs = new Map(), words = () => 'Too heavy.' }: Wanted = {},
): Promise<Made> {
  const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
  const { library, clients } = content;
  const files = new Map<string, Uint8Array>();
  const sources = webSources();
  const open = publicPartOf(library);
  const drawings = drawLibrary(library.exercises);
  const rulebook = listRulebook(library.overrides);
  const pages = await libraryPages({ library: open, rulebook, drawings, photographs });
  for (const { path, bytes } of filesBeside(photographs)) files.set(path, bytes);
  for (const { name, bytes } of parts.fonts) files.set(`fonts/${name}`, bytes);
  files.set(STUDIO_STYLE, utf8(await bundleStyle('studio.css', sources)));
  for (const { path, render } of [...pages, await renderNotHere(open.studio, [], sources)])
    files.set(path, utf8(render()));
  files.set(SCRIPT, utf8(await bundleScript('main', sources.search)));
  files.set('search-index.js', utf8(searchIndexOf(open)));
  const [one] = clients;
  if (one === undefined) throw new Error('nobody is in the studio');
  if (TODAY === undefined) throw new Error('the day is none');
  // Whoever trains beside the client has as hostile a name.
  const client = { ...one, partnerName: one.name };
  const made = planBlock({ library, client, today: TODAY, edition: 1, linked: linkLibrary(library.exercises) });
  if (made.value === null || made.problems.some(isWrong)) throw new Error('nothing was planned');
  const plan = sayPlan(made.value, library.studio.language);
  const booklet = composeBooklet({ library, client, plan });
  const sent = clientPlanOf(plan, { bookletId: BOOKLET, standing: 'stands' });
  files.set('booklet.html', utf8(renderBookletFile(booklet, sent, parts, drawings, photographs)));
  const later = laterEdition({ library, client, plan, bookletId: BOOKLET, words });
  const { edition } = later;
  const sentLater = clientPlanOf(edition.plan, { bookletId: BOOKLET, standing: 'stands' });
  files.set('booklet-next.html', utf8(renderBookletFile(later.booklet, sentLater, parts, drawings, photographs)));
  const sentLast = clientPlanOf(edition.plan, { bookletId: BOOKLET, standing: 'withdrawn' });
  files.set('booklet-withdrawn.html', utf8(renderBookletFile(later.withdrawn, sentLast, parts)));
  const shell = await shellFiles(parts, booklet.language);
  for (const { path, bytes } of [...shell, ...renderPartner(booklet)]) files.set(`partner/${path}`, bytes);
  for (const { path, bytes } of shell) files.set(`sealed/${path}`, bytes);
  const lock = await closeLock({ by: 'link', key, link: key });
  const alone = renderAlone(booklet, sent, drawings, photographs);
  const sealed = { form: FORM, by: lock.by, booklet: await sealPart(alone.bytes, 'booklet', key), beside: [] } as const;
  files.set(`opened/${alone.path}`, alone.bytes);
  for (const { path, bytes } of shell) if (path.endsWith('.css')) files.set(`opened/${path}`, bytes);
  files.set(`sealed/${alone.path}`, renderSealed(sealed, booklet.language));
  const of = { studio: library.studio, client, booklet, edition };
  const handOvers = new Map<string, HandOver>([
    [client.id, composeHandOver(of, { by: 'both', link: 'https://example.org/#open', words: HOSTILE[3] ?? '' })],
  ]);
  const { problems } = made;
  const standing = 'withdrawn' as const;
  const draft = { draft: edition.plan, since: edition.changes ?? [] };
  const editions = new Map([[client.id, { edition, standing, withdrawal: later.withdrawal, ...draft }]]);
  const desk = { library, clients, plans: [edition.plan], problems, handOvers, editions, sayProblem };
  for (const { path, render } of deskPages(desk)) {
    files.set(`desk/${path}`, utf8(render()));
  }
  return { files, starts: plan.starts };
}
