/** Draws what was planned: a client's booklet in each of its forms, the studio's library, the coach's desk. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { readerSchemas } from '../content/reader-schemas.js';
import { countSets } from '../engine/audit/count-sets.js';
import { exercisesById } from '../engine/block-context.js';
import { listRulebook } from '../engine/rulebook.js';
import type { Client } from '../model/client.js';
import type { ClientId } from '../model/identity.js';
import type { PublicKey } from '../model/marks-key.js';
import type { Problem } from '../model/problem.js';
import type { Library } from '../model/studio.js';
import type { WebSources } from '../web/prepare-shell.js';
import type { ShellParts } from '../web/shell-parts.js';
import { sayProblem } from '../words/say-problem.js';
import type { Shown } from './issued.js';
import type { PlannedClient } from './planned-client.js';
import { type Stage, writeStaged } from './publish-build.js';
import { projectFolder, webSources } from './web-sources.js';

/** What every booklet of a build shares. */
export interface Drawing {
  readonly parts: ShellParts;
  readonly sources: WebSources;
  /** The studio's key that marks are sealed to; `null` where they go as plain text. */
  readonly marksTo: PublicKey | null;
}

export interface DrawnFile {
  /** Below the build. */
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

export async function openDrawing(marksTo: PublicKey | null): Promise<Drawing> {
  const { prepareShell } = await import('../web/prepare-shell.js');
  const sources = webSources();
  return { parts: await prepareShell(sources), sources, marksTo };
}

const asText = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

/**
 * `plan.json`, the booklet as one page and as a folder, and on paper where the faces can print it. What would be issued
 * now stands beside an edition as a draft, where it says something else.
 */
export async function drawClient(
  client: ClientId,
  { book, issued, draft }: Shown,
  { parts, marksTo }: Drawing,
): Promise<{ readonly files: readonly DrawnFile[]; readonly problems: readonly Problem[] }> {
  const { renderBookletFile, renderBookletFolder } = await import('../web/render-booklet.js');
  const { renderPartner } = await import('../web/render-partner.js');
  const { clientPlanOf } = await import('../web/client-plan.js');
  const { drawBooklet } = await import('../print/draw-booklet.js');
  const home = `private/clients/${client}`;
  const clientPlan = clientPlanOf(
    book.plan,
    issued === null
      ? undefined
      : {
          bookletId: issued.edition.bookletId,
          standing: issued.standing,
          ...(marksTo === null ? {} : { marksTo }),
        },
  );
  const paper = await drawBooklet(book.booklet, client);
  const draftPaper = draft === null ? { value: null, problems: [] } : await drawBooklet(draft.booklet, client);
  return {
    files: [
      { path: `${home}/plan.json`, bytes: asText(book.plan) },
      { path: `${home}/booklet.html`, bytes: renderBookletFile(book.booklet, clientPlan, parts) },
      ...[...(await renderBookletFolder(book.booklet, clientPlan, parts)), ...renderPartner(book.booklet)].map(
        (file) => ({
          path: `${home}/booklet/${file.path}`,
          bytes: file.bytes,
        }),
      ),
      ...(paper.value === null ? [] : [{ path: `${home}/booklet-a5.pdf`, bytes: paper.value }]),
      ...(draft === null
        ? []
        : [
            { path: `${home}/draft-plan.json`, bytes: asText(draft.plan) },
            { path: `${home}/draft.html`, bytes: renderBookletFile(draft.booklet, clientPlanOf(draft.plan), parts) },
          ]),
      ...(draftPaper.value === null ? [] : [{ path: `${home}/draft-a5.pdf`, bytes: draftPaper.value }]),
    ],
    problems: [
      ...paper.problems,
      ...draftPaper.problems.filter((one) => !paper.problems.some((told) => isDeepStrictEqual(one, told))),
    ],
  };
}

export interface StudioDrawing {
  readonly library: Library;
  /** Every client read, withheld or not. */
  readonly clients: readonly Client[];
  readonly planned: readonly PlannedClient[];
  /** By client; of every one planned. */
  readonly shown: ReadonlyMap<ClientId, Shown>;
  readonly problems: readonly Problem[];
  readonly drawing: Drawing;
}

const FORMS = [
  { kind: 'phone', file: 'booklet.html' },
  { kind: 'paper', file: 'booklet-a5.pdf' },
  { kind: 'plan', file: 'plan.json' },
  { kind: 'draft-phone', file: 'draft.html' },
  { kind: 'draft-paper', file: 'draft-a5.pdf' },
  { kind: 'draft-plan', file: 'draft-plan.json' },
] as const;

/** The forms of a booklet that stand in the stage, each with its way there from the desk. */
function formsOf(stage: Stage, client: ClientId) {
  const home = join('clients', client);
  return FORMS.filter(({ file }) => existsSync(join(stage.folder, 'private', home, file))).map(({ kind, file }) => ({
    kind,
    path: `../clients/${client}/${file}`,
  }));
}

/** The public library and the private desk: two separate runs, so that no page of the one can see the other's data. */
export async function drawStudio(
  stage: Stage,
  { library, clients, planned, shown, problems, drawing }: StudioDrawing,
): Promise<void> {
  const { RULEBOOK, renderLibrary } = await import('../web/library/render-library.js');
  const { renderDesk } = await import('../web/desk/render-desk.js');
  const { sources } = drawing;
  const { fonts } = drawing.parts;
  await renderLibrary({
    library,
    rulebook: listRulebook(library.overrides),
    out: join(stage.folder, 'public'),
    fonts,
    sources,
  });
  const plans = planned.map(({ client, plan }) => shown.get(client.id)?.book.plan ?? plan);
  const editions = new Map(
    [...shown].flatMap(([client, { issued, draft, since }]) =>
      issued === null ? [] : [[client, { ...issued, draft: draft?.plan ?? null, since }] as const],
    ),
  );
  const forms = new Map(planned.map(({ client }) => [client.id, formsOf(stage, client.id)]));
  const exercises = exercisesById(library.exercises);
  const sets = new Map(plans.map((plan) => [plan.client, countSets(plan, exercises)]));
  await renderDesk({
    library,
    clients,
    plans,
    problems,
    forms,
    editions,
    sets,
    rulebook: `../../public/${RULEBOOK}`,
    sayProblem,
    fonts,
    sources,
    out: join(stage.folder, 'private', 'desk'),
  });
  for (const [name, schema] of Object.entries(readerSchemas())) {
    await writeStaged(stage, `private/schemas/${name}.schema.json`, asText(schema));
  }
  const planSchema = await readFile(join(projectFolder(), 'src', 'engine', 'plan.schema.json'));
  await writeStaged(stage, 'private/schemas/plan.schema.json', planSchema);
}
