/** Draws what was planned: a client's booklet in each of its forms, the studio's library, the coach's desk. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { readerSchemas } from '../content/reader-schemas.js';
import { countSets } from '../engine/audit/count-sets.js';
import { exercisesById } from '../engine/block-context.js';
import { listRulebook } from '../engine/rulebook.js';
import { drawLibrary } from '../figures/draw-library.js';
import type { Client } from '../model/client.js';
import type { Exercise } from '../model/exercise.js';
import type { HandOver } from '../model/hand-over.js';
import type { ClientId, ExerciseId } from '../model/identity.js';
import type { PublicKey } from '../model/marks-key.js';
import type { Drawings, Photographs } from '../model/picture.js';
import type { Problem } from '../model/problem.js';
import { publicPartOf } from '../model/public-library.js';
import type { Library } from '../model/studio.js';
import type { WebAddress } from '../print/code.js';
import type { WebSources } from '../web/prepare-shell.js';
import type { ShellParts } from '../web/shell-parts.js';
import { sayProblem } from '../words/say-problem.js';
import { formsOf, testSheetPath } from './booklet-forms.js';
import { previewsOf, writePreviews } from './draw-previews.js';
import type { Shown } from './issued.js';
import type { PlannedClient } from './planned-client.js';
import { type Stage, writeStaged } from './publish-build.js';
import { projectFolder, webSources } from './web-sources.js';

/** What every booklet of a build shares. */
export interface Drawing {
  readonly parts: ShellParts;
  readonly sources: WebSources;
  /** Of every exercise that has a table of poses. */
  readonly drawings: Drawings;
  /** Of every exercise that has one of the coach's own. */
  readonly photographs: Photographs;
  /** The studio's key that marks are sealed to; `null` where they go as plain text. */
  readonly marksTo: PublicKey | null;
  /** Of the booklet a client was issued, on the web; absent where it has none. */
  readonly addressOf: (client: ClientId) => WebAddress | undefined;
}

export interface DrawnFile {
  /** Below the build. */
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

export async function openDrawing(
  exercises: readonly Exercise[],
  photographs: Photographs,
  marksTo: PublicKey | null,
  addressOf: Drawing['addressOf'] = () => undefined,
): Promise<Drawing> {
  const { prepareShell } = await import('../web/prepare-shell.js');
  const sources = webSources();
  const drawings = withOwnWords(drawLibrary(exercises), exercises);
  return { parts: await prepareShell(sources), sources, drawings, photographs, marksTo, addressOf };
}

/** What the coach says of a drawing stands in place of what its table says. */
function withOwnWords(drawings: Drawings, exercises: readonly Exercise[]): Drawings {
  const said = new Map(exercises.map(({ id, drawingSaid }) => [id, drawingSaid]));
  return new Map(
    [...drawings].map(([id, drawn]) => {
      const own = said.get(id);
      return [id, own === undefined ? drawn : { ...drawn, said: own }] as const;
    }),
  );
}

const draftName = (name: string): string => name.replace('booklet', 'draft');

const asText = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

/**
 * `plan.json`, the booklet as one page and as a folder, and on paper where the faces can print it. What would be issued
 * now stands beside an edition as a draft, where it says something else.
 */
export async function drawClient(
  client: ClientId,
  { book, issued, draft }: Shown,
  { parts, drawings, photographs, marksTo, addressOf }: Drawing,
): Promise<{
  readonly files: readonly DrawnFile[];
  /** The client's part with everything in it, for where nothing may lie beside it. */
  readonly alone: () => Uint8Array;
  readonly problems: readonly Problem[];
}> {
  const { renderAlone, renderBookletFile, renderBookletFolder } = await import('../web/render-booklet.js');
  const { renderPartner } = await import('../web/render-partner.js');
  const { clientPlanOf } = await import('../web/client-plan.js');
  const { drawBooklet } = await import('../print/draw-booklet.js');
  const { drawForms, singleName } = await import('../print/draw-forms.js');
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
  const paper = await drawForms(book.booklet, client, issued === null ? undefined : addressOf(client), {
    drawings,
    photographs,
  });
  const draftPaper =
    draft === null
      ? { value: null, problems: [] }
      : await drawBooklet(draft.booklet, client, undefined, { drawings, photographs });
  return {
    files: [
      { path: `${home}/plan.json`, bytes: asText(book.plan) },
      {
        path: `${home}/booklet.html`,
        bytes: renderBookletFile(book.booklet, clientPlan, parts, drawings, photographs),
      },
      ...[
        ...(await renderBookletFolder(book.booklet, clientPlan, parts, drawings, photographs)),
        ...renderPartner(book.booklet),
      ].map((file) => ({
        path: `${home}/booklet/${file.path}`,
        bytes: file.bytes,
      })),
      ...paper.value.map(({ name, bytes }) => ({ path: `${home}/${name}`, bytes })),
      ...(draft === null
        ? []
        : [
            { path: `${home}/draft-plan.json`, bytes: asText(draft.plan) },
            {
              path: `${home}/draft.html`,
              bytes: renderBookletFile(draft.booklet, clientPlanOf(draft.plan), parts, drawings, photographs),
            },
          ]),
      ...(draft === null || draftPaper.value === null
        ? []
        : [{ path: `${home}/${draftName(singleName(draft.booklet))}`, bytes: draftPaper.value }]),
    ],
    alone: () => renderAlone(book.booklet, clientPlan, drawings, photographs).bytes,
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
  /** Since when exercises say what they say; absent while nobody knows where the library will be hosted. */
  readonly since: ReadonlyMap<ExerciseId, string> | undefined;
  readonly drawing: Drawing;
  /** What is handed over, by client. */
  readonly handOvers: ReadonlyMap<ClientId, HandOver>;
}

/** The public library and the private desk: two separate runs, so that no page of the one can see the other's data. */
export async function drawStudio(
  stage: Stage,
  { library, clients, planned, shown, problems, drawing, handOvers, since }: StudioDrawing,
): Promise<void> {
  const { RULEBOOK, renderLibrary } = await import('../web/library/render-library.js');
  const { renderDesk } = await import('../web/desk/render-desk.js');
  const { sources } = drawing;
  const { fonts } = drawing.parts;
  // Whoever shows them elsewhere needs a whole address.
  const previews =
    library.studio.address === undefined ? undefined : await previewsOf(drawing.drawings, drawing.photographs);
  await renderLibrary({
    library: publicPartOf(library),
    rulebook: listRulebook(library.overrides),
    drawings: drawing.drawings,
    photographs: drawing.photographs,
    ...(previews === undefined ? {} : { previews }),
    ...(since === undefined ? {} : { changed: since }),
    out: join(stage.folder, 'public'),
    fonts,
    sources,
  });
  if (previews !== undefined) await writePreviews(stage, previews.values());
  const { drawTestSheet } = await import('../print/draw-test-sheet.js');
  const { paper, name: author } = library.studio;
  await writeStaged(stage, testSheetPath(paper), await drawTestSheet(paper, author));
  const plans = planned.map(({ client, plan }) => shown.get(client.id)?.book.plan ?? plan);
  const editions = new Map(
    [...shown].flatMap(([client, { issued, draft, since }]) =>
      issued === null ? [] : [[client, { ...issued, draft: draft?.plan ?? null, since }] as const],
    ),
  );
  const forms = new Map(planned.map(({ client }) => [client.id, formsOf(stage.folder, client.id)]));
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
    handOvers,
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
