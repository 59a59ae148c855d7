/** `chalkleaf build`: checks, plans and draws everything into a stage, and puts it in place at once. */

import { isRowChange } from '../model/change.js';
import type { Client } from '../model/client.js';
import { type ClientId, clientId, compareIds } from '../model/identity.js';
import type { Photographs } from '../model/picture.js';
import { ofClient, type Problem } from '../model/problem.js';
import { sayFindings } from '../words/print-findings.js';
import { sayAdviceCount } from '../words/say-advice.js';
import { sayEdition } from '../words/say-editions.js';
import { accountIn, findingsOf, recordsOf } from '../words/say-findings.js';
import { sayWithheld } from '../words/say-withheld.js';
import { checkFigures } from './check-figures.js';
import { type Drawing, type DrawnFile, drawClient, drawStudio, openDrawing } from './draw-client.js';
import { readEditions } from './editions.js';
import { drawCalendar, handOversOf } from './hand-over.js';
import { bookOf, readLatest, type Shown, showOf, standingOf } from './issued.js';
import { changedSince, keepChanged } from './keep-changed.js';
import { type Held, publicKeyOf, readHeld } from './keep-state.js';
import type { CommonOptions } from './options.js';
import { placeLetters } from './place-letters.js';
import type { PlannedClient } from './planned-client.js';
import { preparePictures } from './prepare-pictures.js';
import { type Progress, progressOn } from './progress.js';
import {
  abandonStage,
  carryOver,
  notWritable,
  openStage,
  publishStage,
  type Stage,
  writeStaged,
} from './publish-build.js';
import { chosenClients, concerning, planClient, publishable, type ReadStudio, readStudio } from './read-studio.js';
import { inOrder, printReport, stopsEverything, withheldClients } from './report.js';
import { plainOf, sealClient } from './seal-client.js';
import { sweepOften } from './sweep-often.js';
import { webAddressOf } from './web-address.js';

interface Built {
  readonly problems: readonly Problem[];
  readonly summary: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

const UNTOUCHED: Omit<Built, 'problems'> = {
  summary: ['Nothing was built; what you built before still stands.'],
  facts: { built: null },
};

export async function runBuild(options: CommonOptions): Promise<number> {
  sweepOften();
  const progress = progressOn(process.stderr);
  progress.step('Reading …');
  const studio = await readStudio(options);
  const built = await build(studio, options, progress);
  progress.done();
  return printReport(
    { ...built, facts: { command: 'build', ...built.facts }, sourceOf: studio.sourceOf },
    options.json,
  );
}

async function build(studio: ReadStudio, options: CommonOptions, progress: Progress): Promise<Built> {
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) return { problems: [...studio.problems, chosen], ...UNTOUCHED };
  if (studio.problems.some(stopsEverything)) return { problems: studio.problems, ...UNTOUCHED };

  // What is drawn anyway is not sought through twice.
  const problems: Problem[] = [...studio.problems, ...checkFigures(studio.content.library.exercises)];
  progress.step('Pictures …');
  const { exercises } = studio.content.library;
  const pictures = await preparePictures(options.content, exercises, studio.problems);
  problems.push(...pictures.problems);
  const planned: PlannedClient[] = [];
  const shown = new Map<ClientId, Shown>();
  for (const client of publishable(studio, studio.content.clients)) {
    progress.step(`Planning ${client.id} …`);
    const result = planClient(studio, client, options.today, 0);
    problems.push(...result.problems);
    if (result.planned === null) continue;
    const last = studio.issued.get(client.id) ?? null;
    planned.push(result.planned);
    shown.set(client.id, showOf(studio.content.library, result.planned, last, options.today));
  }
  const held = await readHeld(options);
  if ('code' in held) problems.push(held);
  if ('code' in held || problems.some(stopsEverything)) return { problems, ...UNTOUCHED };

  const stage = await openStage(options.out, options.content);
  if ('code' in stage) return { problems: [...problems, stage], ...UNTOUCHED };
  return fill(stage, { studio, photographs: pictures.value, planned, shown, problems, options, progress, held });
}

interface Filling {
  readonly studio: ReadStudio;
  readonly photographs: Photographs;
  readonly planned: readonly PlannedClient[];
  readonly shown: ReadonlyMap<ClientId, Shown>;
  readonly problems: Problem[];
  readonly options: CommonOptions;
  readonly progress: Progress;
  readonly held: Held;
}

async function fill(stage: Stage, filling: Filling): Promise<Built> {
  const { studio, photographs, planned, shown, problems, options, progress, held } = filling;
  const { library } = studio.content;
  try {
    const drawing = await openDrawing(library.exercises, photographs, publicKeyOf(held), (client) =>
      webAddressOf(library.studio, held.access.get(client)),
    );
    const pages = { paths: studio.files.map(({ path }) => path), sourceOf: studio.sourceOf };
    let drawn = 0;
    const wanted = planned.filter(({ client }) => options.only === undefined || client.id === options.only);
    const astray: ClientId[] = [];
    for (const { client } of planned.filter((one) => !wanted.includes(one))) {
      await carryOver(stage, `private/clients/${client.id}`);
      const access = held.access.get(client.id);
      if (access === undefined || (shown.get(client.id)?.issued ?? null) === null) continue;
      // It was given another folder since, or was never built.
      if (!(await carryOver(stage, `public/${access.folder}`))) astray.push(client.id);
    }
    for (const one of wanted) {
      drawn += 1;
      progress.step(`Drawing ${one.client.id} (${drawn} of ${wanted.length}) …`);
      const show = shown.get(one.client.id);
      if (show === undefined) continue;
      const { files: drawnFiles, alone, problems: found } = await drawClient(one.client.id, show, drawing);
      problems.push(...placeLetters(found, one.client.id, pages));
      const files = [...drawnFiles, ...(await drawCalendar({ studio: library.studio, client: one.client, show }))];
      for (const file of files) await writeStaged(stage, file.path, file.bytes);
      const unsealed = await sealInto(stage, one.client.id, { show, files, alone, held, state: options.state });
      if (unsealed !== null) problems.push(unsealed);
    }
    const withheld = [...withheldClients(problems)].sort(compareIds);
    for (const id of withheld) {
      const own = inOrder(problems.filter(({ scope }) => scope.kind === 'client' && scope.client === id));
      const kept = await drawKept(stage, clientId(id), own, drawing, filling);
      await writeStaged(stage, `private/clients/${id}/withheld.txt`, sayWithheld(own, studio.sourceOf, kept));
    }
    if (problems.some(stopsEverything)) {
      await abandonStage(stage);
      return { problems, ...UNTOUCHED };
    }
    progress.step('Library and desk …');
    // A library that nobody hosts has no feed to tell of.
    const changed =
      library.studio.address === undefined
        ? undefined
        : await changedSince(options.state, library.exercises, options.today);
    await drawStudio(stage, {
      library: studio.content.library,
      clients: studio.content.clients,
      planned,
      shown,
      problems: inOrder(problems),
      drawing,
      handOvers: handOversOf(library.studio, planned, shown, held),
      since: changed?.since,
    });
    progress.step('Putting it in place …');
    const published = await publishStage(stage);
    if ('code' in published) return { problems: [...problems, published], ...UNTOUCHED };
    const unkept = changed === undefined ? undefined : await keepChanged(options.state, changed);
    if (unkept !== undefined) problems.push(unkept);
    const findings = wanted.flatMap(({ plan }) => findingsOf(accountIn(plan, studio.content.library)));
    const told = sayFindings(
      findings,
      wanted.map(({ plan }) => plan),
    );
    const advice = concerning(studio.advice, options.only).length;
    const issued = wanted.flatMap(({ client }) => editionOf(client, shown.get(client.id)));
    const built = { clients: wanted.map(({ client }) => client.id), withheld, astray, changed: published.changed };
    return {
      problems: concerning(problems, options.only),
      summary: [
        ...told,
        ...issued.flatMap(sayEdition),
        ...summarise(wanted.length, { withheld, astray, changed: published.changed, out: options.out }),
        ...(advice > 0 ? [sayAdviceCount(advice)] : []),
      ],
      facts: { built, editions: issued, findings: recordsOf(findings), advice },
    };
  } catch (fault) {
    await abandonStage(stage);
    if (fault instanceof Error && 'code' in fault && typeof fault.code === 'string' && /^E[A-Z]+$/.test(fault.code)) {
      return { problems: [...problems, notWritable(options.out, fault)], ...UNTOUCHED };
    }
    throw fault;
  }
}

interface SealingInto {
  readonly show: Shown;
  readonly files: readonly DrawnFile[];
  /** The client's part as it is sealed. */
  readonly alone: () => Uint8Array;
  readonly held: Held;
  readonly state: string;
}

/** What was issued goes into the client's public folder, sealed; nothing else of a client is ever public. Reports `no-key`, `state-not-writable`. */
async function sealInto(
  stage: Stage,
  client: ClientId,
  { show, files, alone, held, state }: SealingInto,
): Promise<Problem | null> {
  if (show.issued === null) return null;
  const access = held.access.get(client);
  if (access === undefined) {
    return { code: 'no-key', severity: 'warning', scope: ofClient(client), data: { client } };
  }
  const plain = await plainOf(client, files, alone(), show.book.booklet.language);
  const sealed = await sealClient(state, access, plain);
  if ('code' in sealed) return sealed;
  for (const { path, bytes } of sealed) await writeStaged(stage, `public/${access.folder}/${path}`, bytes);
  return null;
}

/**
 * An issued edition is a fact: it is drawn even where nothing newer can be planned, and so is that it was withdrawn.
 * Only where it is not safe to train from nothing but a withdrawal is drawn. The number of the edition that still
 * stands, or has ended, is given back.
 */
async function drawKept(
  stage: Stage,
  client: ClientId,
  own: readonly Problem[],
  drawing: Drawing,
  { options: { content, today, state }, held, problems, studio }: Filling,
): Promise<number | null> {
  // Read anew: of a client whose page cannot be read nothing else is known.
  const editions = await readEditions(content, client);
  const { value } = await readLatest(content, client, editions.value);
  if (value === null) return null;
  const { edition, withdrawal } = value;
  if (withdrawal === null && own.some(({ unsafe }) => unsafe === true)) return null;
  const standing = standingOf({ edition, withdrawal, latestBlock: edition.block, today });
  const show = { book: bookOf(value, standing), issued: { edition, standing, withdrawal }, draft: null, since: [] };
  const known = studio.content.clients.find(({ id }) => id === client);
  const days =
    known === undefined ? [] : await drawCalendar({ studio: studio.content.library.studio, client: known, show });
  const drawn = await drawClient(client, show, drawing);
  const files = [...drawn.files, ...days];
  for (const file of files) await writeStaged(stage, file.path, file.bytes);
  const unsealed = await sealInto(stage, client, { show, files, alone: drawn.alone, held, state });
  if (unsealed !== null) problems.push(unsealed);
  return withdrawal === null ? edition.n : null;
}

const editionOf = ({ id, name }: Client, shown: Shown | undefined) =>
  shown === undefined || shown.issued === null
    ? []
    : [
        {
          client: id,
          name,
          n: shown.issued.edition.n,
          standing: shown.issued.standing,
          draft: shown.draft !== null,
          over: shown.issued.standing === 'ended' && !shown.since.some(({ what }) => what === 'block'),
          changes: new Set(shown.since.map((one) => (isRowChange(one) ? `${one.session}/${one.row}` : one.what))).size,
        },
      ];

interface Whereabouts {
  readonly withheld: readonly string[];
  /** Clients whose link leads nowhere in what was built. */
  readonly astray: readonly string[];
  readonly changed: boolean;
  readonly out: string;
}

function summarise(booklets: number, { withheld, astray, changed, out }: Whereabouts): readonly string[] {
  const count = `${booklets} ${booklets === 1 ? 'booklet' : 'booklets'}`;
  return [
    changed
      ? `Built: ${count}, the library and the desk, in ${out}.`
      : `Built: ${count}; nothing has changed in ${out}.`,
    ...(withheld.length > 0 ? [`Withheld: ${withheld.join(', ')}.`] : []),
    ...(astray.length > 0
      ? [`No sealed folder yet, and so a link that leads nowhere: ${astray.join(', ')}. Build without --only.`]
      : []),
  ];
}
