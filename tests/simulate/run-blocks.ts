/** Two blocks of one person as a coach would run them: looked through every Sunday, issued again where the plan changed. */
import { type BlockInput, linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { addDays, type Day, isoOfDay } from '../../src/model/day.js';
import type { Edition } from '../../src/model/edition.js';
import type { DoneSession, History } from '../../src/model/history.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Finding, Plan, PlanSession } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { aLog, anEdition } from '../session/make-marks.js';
import { clearedOn, type Person } from './people.js';
import { sessionsOf, simulate } from './simulate.js';
import { type Body, bodyOf } from './true-capacity.js';

export interface ReviewedWeek {
  /** Calendar week from 1. */
  readonly number: number;
  readonly block: number;
  readonly monday: string;
  /** What lay in front of them, and its edition. */
  readonly plan: Plan;
  readonly edition: number;
  readonly events: readonly LogEvent[];
  /** Everything marked of the block until its Sunday. */
  readonly marked: readonly LogEvent[];
  readonly done: readonly DoneSession[];
  /** As it would be issued on that Sunday. */
  readonly again: Plan;
  readonly issued: boolean;
  readonly findings: readonly Finding[];
  readonly client: Client;
  readonly history: History;
  readonly today: Day;
}

export interface Run {
  readonly person: Person;
  readonly body: Body;
  readonly weeks: readonly ReviewedWeek[];
}

function planFor(person: Person, client: Client, today: Day, edition: number, history?: History): Plan {
  const input: BlockInput = {
    library: person.library,
    client,
    today,
    edition,
    linked: linkedOf(person),
    ...(history === undefined ? {} : { history }),
  };
  const { value, problems } = planBlock(input);
  return value === null ? withheld(person, problems) : sayPlan(value);
}

const linked = new Map<Person, ReturnType<typeof linkLibrary>>();
function linkedOf(person: Person): ReturnType<typeof linkLibrary> {
  const known = linked.get(person) ?? linkLibrary(person.library.exercises);
  linked.set(person, known);
  return known;
}

function withheld({ name }: Person, problems: readonly Problem[]): never {
  throw new Error(
    `${name} is withheld: ${problems.map(({ code, data }) => `${code} ${JSON.stringify(data)}`).join('; ')}`,
  );
}

/** What a client reads of the sessions still to come, without dates, which move by themselves. */
const worded = (sessions: readonly PlanSession[]): string =>
  JSON.stringify(
    sessions.map(({ groups }) =>
      groups.map(({ items }) => items.map(({ exercise, sets, tempo }) => [exercise, tempo, sets])),
    ),
  );

const MOST_WEEKS = 12;

export function runBlocks(person: Person, seed: number): Run {
  const weeks: ReviewedWeek[] = [];
  const editions: Edition[] = [];
  const events: LogEvent[] = [];
  let { client } = person;
  let monday = client.starts;
  let body: Body | null = null;
  let week = 0;
  for (let block = 1; block <= 2; block += 1) {
    const history = gatherHistory(editions, [aLog(events)]).value;
    client = { ...client, starts: monday, blocksBefore: person.client.blocksBefore + block - 1 };
    const before = addDays(monday, -1);
    const fresh =
      editions.length === 0
        ? planFor(person, client, before, 1)
        : planFor(person, client, before, editions.length + 1, history);
    editions.push(anEdition(fresh, editions.length + 1));
    body ??= bodyOf(person, fresh);
    const ofBlock: LogEvent[] = [];
    for (let inBlock = 0; inBlock < MOST_WEEKS; inBlock += 1) {
      week += 1;
      const edition = editions.at(-1);
      if (edition === undefined) break;
      const iso = isoOfDay(monday);
      const own = simulate(
        person,
        { plan: edition.plan, edition: edition.n, week, monday: iso, before: ofBlock, body },
        seed,
      );
      events.push(...own);
      ofBlock.push(...own);
      const sunday = addDays(monday, 6);
      if (person.cleared === week) client = clearedOn(client, isoOfDay(sunday));
      const found = gatherHistory(editions, [aLog(events)]);
      if (found.problems.length > 0) withheld(person, found.problems);
      const again = planFor(person, client, sunday, editions.length + 1, found.value);
      const done = new Set(
        found.value.sessions.filter((one) => one.block === edition.block).map(({ occurrence }) => occurrence),
      );
      const open = (plan: Plan) => sessionsOf(plan).filter(({ occurrence }) => !done.has(occurrence));
      const issued = worded(open(edition.plan)) !== worded(open(again)) && open(again).length > 0;
      weeks.push({
        number: week,
        block,
        monday: iso,
        plan: edition.plan,
        edition: edition.n,
        events: own,
        marked: [...ofBlock],
        done: found.value.sessions.filter(({ day }) => day >= monday && day <= sunday),
        again,
        issued,
        findings: again.findings,
        client,
        history: found.value,
        today: sunday,
      });
      if (issued) editions.push(anEdition(again, editions.length + 1));
      monday = addDays(monday, 7);
      if (open(again).length === 0) break;
    }
  }
  return { person, body: body ?? withheld(person, []), weeks };
}
