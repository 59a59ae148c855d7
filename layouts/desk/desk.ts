/** What every page of the desk is drawn from, and the sentences it makes of a plan's records. It decides nothing. */
import type { Change } from '../../src/model/change.js';
import type { Client } from '../../src/model/client.js';
import type { Edition, EditionStanding, Withdrawal } from '../../src/model/edition.js';
import type { HandOver } from '../../src/model/hand-over.js';
import { compareIds } from '../../src/model/identity.js';
import type { Group, Item, Plan, PlanSession } from '../../src/model/plan.js';
import { type Problem, withheldBy } from '../../src/model/problem.js';
import type { Library } from '../../src/model/studio.js';
import type { WeeklySets } from '../../src/model/weekly-sets.js';
import type { CoachSpeech } from '../../src/words/coach-speech.js';
import type { DeskWords } from '../../src/words/desk-words.js';

/** A problem with its sentences. */
export interface SaidProblem {
  readonly problem: Problem;
  readonly message: string;
  readonly hint: string;
}

/** One form of a client's booklet, as it stands in the output. */
export interface BookletForm {
  readonly kind: keyof DeskWords['forms'];
  /** From the desk's own folder. */
  readonly path: string;
}

/** The latest edition issued to a client, and what would be issued now where that says something else. */
export interface DeskEdition {
  readonly edition: Edition;
  readonly standing: EditionStanding;
  readonly withdrawal: Withdrawal | null;
  readonly draft: Plan | null;
  /** What the draft changes. */
  readonly since: readonly Change[];
}

export interface Desk {
  readonly library: Library;
  readonly words: DeskWords;
  readonly speech: CoachSpeech;
  readonly problems: readonly SaidProblem[];
  /** By client; none for those withheld. */
  readonly forms: ReadonlyMap<string, readonly BookletForm[]>;
  /** By client; none where nothing was issued. */
  readonly editions: ReadonlyMap<string, DeskEdition>;
  /** By client; none where nothing that was issued stands, or nothing opens it. */
  readonly handOvers: ReadonlyMap<string, HandOver>;
  /** The rulebook's page, from the desk's own folder; absent where there is none. */
  readonly rulebook?: string;
}

/** One client as the desk knows them; without a plan where withheld. */
export interface DeskClient {
  readonly id: string;
  readonly name: string;
  readonly client?: Client;
  readonly plan?: Plan;
  /** Working sets of the plan by week. */
  readonly sets?: WeeklySets;
  readonly problems: readonly SaidProblem[];
  readonly withheld: boolean;
}

const clientIn = ({ problem }: SaidProblem): string | undefined =>
  problem.scope.kind === 'client' ? problem.scope.client : undefined;

/** Every client who was read, planned or only named by a problem; by id. */
export function deskClients(
  clients: readonly Client[],
  plans: readonly Plan[],
  problems: readonly SaidProblem[],
  sets: ReadonlyMap<string, WeeklySets>,
): readonly DeskClient[] {
  const named = problems.flatMap((said) => clientIn(said) ?? []);
  const ids = [...new Set<string>([...clients.map(({ id }) => id), ...plans.map(({ client }) => client), ...named])];
  return ids.sort(compareIds).map((id): DeskClient => {
    const client = clients.find((one) => one.id === id);
    const plan = plans.find((one) => one.client === id);
    const own = problems.filter((said) => clientIn(said) === id);
    const counted = sets.get(id);
    const refused = own.some(({ problem }) => withheldBy(problem) !== undefined);
    return {
      id,
      name: client?.name ?? id,
      ...(client ? { client } : {}),
      ...(plan ? { plan } : {}),
      ...(counted ? { sets: counted } : {}),
      problems: own,
      withheld: refused || plan === undefined,
    };
  });
}

/** With a capital, where it stands first. */
export const sentenceOf = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

export const programmeName = ({ library }: Desk, id: string): string =>
  library.programmes.find((programme) => programme.id === id)?.name ?? id;

/** Rows of the table of one session's weeks: a row's items by week, the same session twice a week in one cell. */
export interface GlanceRow {
  readonly row: string;
  /** Where in the session it stands. */
  readonly group: Group['kind'];
  readonly weeks: readonly { readonly week: number; readonly items: readonly Item[] }[];
}

export interface GlanceTable {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly GlanceRow[];
}

const itemsOf = (session: PlanSession): readonly Item[] => session.groups.flatMap(({ items }) => items);

/** The group of a session that a row stands in. */
const groupOf = (sessions: readonly PlanSession[], row: string): Group['kind'] =>
  sessions.flatMap(({ groups }) => groups).find(({ items }) => items.some((item) => item.row === row))?.kind ??
  'straight';

/** One table for each session, in the order the sessions and rows first come. */
export function glanceOf(plan: Plan): readonly GlanceTable[] {
  const sessions = plan.weeks.flatMap(({ sessions }) => sessions);
  const firsts = [...new Map([...sessions].reverse().map((session) => [session.id, session])).values()].reverse();
  const inOrder = [...firsts].sort((a, b) => a.occurrence - b.occurrence || compareIds(a.id, b.id));
  return inOrder.map(({ id, name }) => {
    const rows = [
      ...new Set(sessions.filter((one) => one.id === id).flatMap((one) => itemsOf(one).map(({ row }) => row))),
    ];
    return {
      id,
      name,
      rows: rows.map((row) => ({
        row,
        group: groupOf(
          sessions.filter((one) => one.id === id),
          row,
        ),
        weeks: plan.weeks.map((week) => ({
          week: week.number,
          items: week.sessions
            .filter((one) => one.id === id)
            .flatMap((one) => itemsOf(one).filter((item) => item.row === row)),
        })),
      })),
    };
  });
}
