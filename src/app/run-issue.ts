/** `chalkleaf issue CLIENT`: freezes one client's plan and words as the next numbered edition. */
import { join } from 'node:path';
import type { Problem } from '../model/problem.js';
import { FOLDER } from '../model/problem.js';
import { freezeEdition, nextEdition, saysTheSame } from './editions.js';
import { tellChanges } from './issued.js';
import { keepFolderOf, readHeld } from './keep-state.js';
import type { CommonOptions } from './options.js';
import { chosenClients, concerning, planClient, publishable, type ReadStudio, readStudio } from './read-studio.js';
import { printReport } from './report.js';

interface Issued {
  readonly problems: readonly Problem[];
  readonly summary: readonly string[];
  readonly facts: Readonly<Record<string, unknown>>;
}

export async function runIssue(options: CommonOptions): Promise<number> {
  const studio = await readStudio(options);
  const issued = await issueOne(studio, options);
  return printReport(
    {
      problems: [...concerning(studio.problems, options.only), ...issued.problems],
      sourceOf: studio.sourceOf,
      summary: issued.summary,
      facts: { command: 'issue', ...issued.facts },
    },
    options.json,
  );
}

const NOTHING = { summary: ['Nothing was issued.'], facts: { issued: null } };

async function issueOne(studio: ReadStudio, options: CommonOptions): Promise<Issued> {
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) return { problems: [chosen], ...NOTHING };
  if (options.only === undefined) {
    const clients = studio.content.clients.map((client) => client.id).join(', ');
    return { problems: [{ code: 'issue-whom', severity: 'error', scope: FOLDER, data: { clients } }], ...NOTHING };
  }
  const [client] = publishable(studio, chosen);
  if (client === undefined) return { problems: [], ...NOTHING };
  const next = await nextEdition(options.content, client.id);
  if ('code' in next) return { problems: [next], ...NOTHING };
  const last = studio.issued.get(client.id);
  const { planned, problems } = planClient(studio, client, options.today, next.n);
  if (planned === null) return { problems, ...NOTHING };
  // One that was withdrawn holds no more, whatever it says.
  const holds = last?.withdrawal === null ? last.edition : null;
  if (holds !== null && saysTheSame(holds, studio.content.library, planned)) {
    const summary = [`Nothing has changed since edition ${holds.n}: it still holds, and no other is issued.`];
    return { problems, summary, facts: { issued: null, holds: holds.n } };
  }
  const held = await readHeld(options);
  if ('code' in held) return { problems: [...problems, held], ...NOTHING };
  const unkept = await keepFolderOf(options.state, client.id, options.today);
  if (unkept !== null) return { problems: [...problems, unkept], ...NOTHING };
  const { told, changes } = tellChanges(studio.content.library, planned, last?.edition);
  const edition = await freezeEdition(options.content, next, told, options.today, changes);
  if ('code' in edition) return { problems: [...problems, edition], ...NOTHING };
  return {
    problems,
    summary: [
      `Issued: edition ${edition.n} for ${client.name}, from ${edition.from}. It will not change any more.`,
      `It is kept in ${join(options.content, 'clients', client.id, 'editions', String(edition.n))}.`,
      `\`chalkleaf build\` draws it, seals it, and lays what you hand over on your desk.`,
    ],
    facts: { issued: { client: client.id, n: edition.n, from: edition.from, contentHash: edition.contentHash } },
  };
}
