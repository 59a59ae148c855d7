/** From a folder on disk to planned clients: the part every command shares. */
import { composeBooklet } from '../booklet/compose-booklet.js';
import { nearestOf } from '../content/nearest.js';
import { type FolderFile, readFolder } from '../content/read-folder.js';
import { type LinkedLibrary, linkLibrary, planBlock } from '../engine/plan-block.js';
import { layOverrides, RULE_IDS } from '../engine/rulebook.js';
import { isAdvice } from '../model/advice.js';
import type { Client } from '../model/client.js';
import { dayOfIso } from '../model/day.js';
import type { History } from '../model/history.js';
import type { ClientId } from '../model/identity.js';
import { isPicturePath } from '../model/picture-kind.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { invariant, type Result } from '../model/result.js';
import type { Content } from '../model/studio.js';
import { sayPlan } from '../words/say-plan.js';
import { checkExpectations } from './check-expectations.js';
import { gatherFiles } from './gather-files.js';
import type { IssuedEdition } from './issued.js';
import type { CommonOptions } from './options.js';
import type { PlannedClient } from './planned-client.js';
import { readHistory } from './read-history.js';
import { stopsEverything, withheldClients } from './report.js';

export interface ReadStudio {
  readonly content: Content;
  /** Read once, for every client. */
  readonly linked: LinkedLibrary;
  /** What was done, by client; of a client without editions nothing stands here. */
  readonly histories: ReadonlyMap<ClientId, History>;
  /** The latest edition, by client; as above. */
  readonly issued: ReadonlyMap<ClientId, IssuedEdition>;
  /** The pages as they lie in the folder, with the beginnings of the pictures beside them, and all that was read in them. */
  readonly files: readonly FolderFile[];
  readonly read: Result<Content>;
  /** What is wrong; `advice` apart, which `check` alone tells in full. */
  readonly problems: readonly Problem[];
  readonly advice: readonly Problem[];
  readonly sourceOf: (file: string) => string | undefined;
}

export async function readStudio(options: CommonOptions): Promise<ReadStudio> {
  const gathered = await gatherFiles(options.content);
  const pages = gathered.value.filter(({ path }) => !isPicturePath(path));
  const texts = new Map(pages.map((file) => [file.path, file.bytes]));
  const sourceOf = (file: string): string | undefined => {
    const bytes = texts.get(file);
    return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
  };
  const read = readFolder(gathered.value, { rules: RULE_IDS });
  const { value, problems } = read;
  const linked = linkLibrary(value.library.exercises);
  // Told once, and not with every client; a rule that is not there was told when its page was read.
  const rules = layOverrides(value.library.overrides).problems.filter(({ code }) => code !== 'rule-not-found');
  const advice = problems.filter(({ code }) => isAdvice(code));
  const wrong = problems.filter(({ code }) => !isAdvice(code));
  const histories = new Map<ClientId, History>();
  const issued = new Map<ClientId, IssuedEdition>();
  const marks: Problem[] = [];
  for (const { id } of value.clients) {
    const { value: past, problems: unread } = await readHistory(options.content, id);
    marks.push(...unread);
    if (past.history.blocks.length > 0) histories.set(id, past.history);
    if (past.issued !== null) issued.set(id, past.issued);
  }
  const found = [...gathered.problems, ...wrong, ...rules, ...marks];
  return { content: value, linked, histories, issued, files: gathered.value, read, problems: found, advice, sourceOf };
}

/** The clients a command is about; the problem `no-such-client` where `--only` names none. */
export function chosenClients(studio: ReadStudio, only: string | undefined): readonly Client[] | Problem {
  const { clients } = studio.content;
  if (only === undefined) return clients;
  const chosen = clients.filter((client) => client.id === only);
  // A client who could not even be read has problems of their own to show.
  if (chosen.length > 0 || withheldClients(studio.problems).has(only)) return chosen;
  const known = [...clients.map((client) => client.id), ...withheldClients(studio.problems)];
  const nearest = nearestOf(only, known);
  return { code: 'no-such-client', severity: 'error', scope: FOLDER, data: { client: only, nearest } };
}

/** With `--only`, what concerns other clients alone is not the question. */
export const concerning = (problems: readonly Problem[], only: string | undefined): readonly Problem[] =>
  only === undefined ? problems : problems.filter(({ scope }) => scope.kind === 'folder' || scope.client === only);

export interface PlanResult {
  readonly planned: PlannedClient | null;
  readonly problems: readonly Problem[];
}

/** Plans one client and composes the booklet; `null` where the client is withheld. */
export function planClient(
  { content, linked, histories }: Pick<ReadStudio, 'content' | 'linked' | 'histories'>,
  client: Client,
  today: string,
  edition: number,
): PlanResult {
  const day = dayOfIso(today);
  invariant(day !== undefined, `${today} is not a day`);
  const { library } = content;
  const history = histories.get(client.id);
  const done = history === undefined ? {} : { history };
  const { value, problems } = planBlock({ library, client, today: day, edition, linked, ...done });
  if (value === null || problems.some((problem) => problem.severity === 'error')) return { planned: null, problems };
  const programme = library.programmes.find(({ id }) => id === client.programme);
  // What was worked out beforehand holds until something comes back: from then on the marks move the numbers.
  const marked = (history?.sessions.length ?? 0) > 0;
  const missed = marked ? [] : checkExpectations(programme, client, value);
  if (missed.length > 0) return { planned: null, problems: [...problems, ...missed] };
  const plan = sayPlan(value, library.studio.language);
  return { planned: { client, plan, booklet: composeBooklet({ library, client, plan }) }, problems };
}

/** What a command may go on with: nothing where the folder has an error, else the clients without one of their own. */
export function publishable(studio: ReadStudio, clients: readonly Client[]): readonly Client[] {
  if (studio.problems.some(stopsEverything)) return [];
  const withheld = withheldClients(studio.problems);
  return clients.filter((client) => !withheld.has(client.id));
}
