/** The coach's own pages: the studio with every client, and a page for each. Private; a run apart from the library's. */
import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { ClientPage } from '../../../layouts/desk/client-page.js';
import { type BookletForm, type Desk, type DeskEdition, deskClients } from '../../../layouts/desk/desk.js';
import { HandOverPage } from '../../../layouts/desk/hand-over.js';
import { DeskIndex } from '../../../layouts/desk/studio-page.js';
import type { Client } from '../../model/client.js';
import type { HandOver } from '../../model/hand-over.js';
import type { Plan } from '../../model/plan.js';
import { PRIVATE_MARK } from '../../model/private-mark.js';
import type { Problem } from '../../model/problem.js';
import { BESIDE } from '../../model/sealed.js';
import type { Library } from '../../model/studio.js';
import type { WeeklySets } from '../../model/weekly-sets.js';
import { coachSpeechOf } from '../../words/coach-speech.js';
import { sayDeskWords } from '../../words/desk-words.js';
import { drawCode } from '../draw-code.js';
import { payloadPolicy } from '../policy.js';
import type { WebSources } from '../prepare-shell.js';
import { renderPage } from '../render-page.js';
import type { FontFile } from '../shell-parts.js';
import { STUDIO_STYLE, writeStudioAssets } from '../studio-assets.js';
import { type Page, writePages } from '../write-pages.js';

export interface DeskContent {
  readonly library: Library;
  readonly clients: readonly Client[];
  readonly plans: readonly Plan[];
  readonly problems: readonly Problem[];
  /** Which forms of each booklet stand in the output. */
  readonly forms?: ReadonlyMap<string, readonly BookletForm[]>;
  /** Of each client something was issued to. */
  readonly editions?: ReadonlyMap<string, DeskEdition>;
  /** Working sets of each plan by week, by client. */
  readonly sets?: ReadonlyMap<string, WeeklySets>;
  /** What is handed over, by client. */
  readonly handOvers?: ReadonlyMap<string, HandOver>;
  /** Where the rulebook stands, from the desk's own folder. */
  readonly rulebook?: string;
  /** The sentences of a problem. */
  readonly sayProblem: (problem: Problem) => { readonly message: string; readonly hint: string };
}

export interface DeskRun extends DeskContent {
  /** An empty folder. */
  readonly out: string;
  readonly fonts: readonly FontFile[];
  readonly sources: WebSources;
}

export function deskPages({
  library,
  clients,
  plans,
  problems,
  forms = new Map(),
  editions = new Map(),
  sets = new Map(),
  handOvers = new Map(),
  rulebook,
  sayProblem,
}: DeskContent): readonly Page[] {
  const { language } = library.studio;
  const speech = coachSpeechOf(language);
  const said = problems.map((problem) => ({ problem, ...sayProblem(problem) }));
  const words = sayDeskWords(language);
  const desk: Desk = {
    library,
    words,
    speech,
    problems: said,
    forms,
    editions,
    handOvers,
    ...(rulebook === undefined ? {} : { rulebook }),
  };
  const all = deskClients(clients, plans, said, sets);
  const page = (path: string, title: string, view: () => VNode): Page => ({
    path,
    render: () =>
      renderPage({
        title,
        language,
        direction: speech.direction,
        policy: payloadPolicy(),
        styles: [],
        styleFiles: [`${'../'.repeat(path.split('/').length - 1)}${STUDIO_STYLE}`],
        scripts: [],
        body: `<!-- ${PRIVATE_MARK} -->${renderToString(view())}`,
      }),
  });
  return [
    page('index.html', desk.words.title(library.studio.name), () => <DeskIndex desk={desk} clients={all} />),
    ...all.map((of) => page(`clients/${of.id}.html`, of.name, () => <ClientPage desk={desk} of={of} />)),
    ...all.flatMap(({ id, name }) => {
      const handOver = handOvers.get(id);
      if (handOver === undefined) return [];
      const { link } = handOver;
      const sheet = {
        id,
        name,
        handOver,
        calendar: `../clients/${encodeURIComponent(id)}/${BESIDE.calendar.name}`,
        ...(link === undefined ? {} : { code: drawCode(link) }),
      };
      return [
        page(`hand-over/${id}.html`, words.handOver.title(name), () => <HandOverPage desk={desk} sheet={sheet} />),
      ];
    }),
  ];
}

export async function renderDesk({ out, fonts, sources, ...content }: DeskRun): Promise<void> {
  await writePages({ input: sources.layouts, out, pages: deskPages(content) });
  await writeStudioAssets(out, fonts, sources, 'swap');
}
