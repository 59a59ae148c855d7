/** The demo studio read and planned, as a command would, on one fixed day. */
import { withheldClients } from '../../src/app/report.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Item, Plan, PlanSet } from '../../src/model/plan.js';
import { invariant } from '../../src/model/result.js';
import { type ReadDemo, readDemo } from './demo-library.js';
import { itemsOf } from './plan-lines.js';

export const TODAY = '2026-11-24';

export interface PlannedDemo extends ReadDemo {
  /** By client; only those whose plan stands. */
  readonly plans: ReadonlyMap<string, Plan>;
}

let planned: Promise<PlannedDemo> | undefined;
/** Planned once for all files of a worker: nobody changes what was planned. */
export function planDemo(): Promise<PlannedDemo> {
  planned ??= planAnew();
  return planned;
}

async function planAnew(): Promise<PlannedDemo> {
  const demo = await readDemo();
  const today = dayOfIso(TODAY);
  invariant(today !== undefined, 'a day');
  const plans = new Map<string, Plan>();
  const problems = [...demo.problems];
  const withheld = withheldClients(demo.problems);
  for (const client of demo.clients.filter(({ id }) => !withheld.has(id))) {
    const planned = planBlock({ library: demo.library, client, today, edition: 0 });
    problems.push(...planned.problems);
    if (planned.value !== null) plans.set(client.id, planned.value);
  }
  return { ...demo, plans, problems };
}

/** The plan of one client; a test that asks for one that does not stand says why. */
export function planIn(demo: PlannedDemo, client: string): Plan {
  const plan = demo.plans.get(client);
  const codes = demo.problems.map(({ code }) => code).join(', ');
  invariant(plan !== undefined, `${client} has no plan: ${codes}`);
  return plan;
}

/** A row's item of each week, by the week's number; a row that comes twice in a week is there with its last. */
export function rowOf(plan: Plan, session: string, row: string): ReadonlyMap<number, Item> {
  return new Map(
    plan.weeks.flatMap(({ number, sessions }) =>
      sessions
        .filter(({ id }) => id === session)
        .flatMap(itemsOf)
        .filter((item) => item.row === row)
        .map((item) => [number, item] as const),
    ),
  );
}

export const workOf = (item: Item | undefined): readonly PlanSet[] =>
  (item?.sets ?? []).filter(({ kind }) => kind === 'work');
export const gramsOf = (item: Item | undefined): number => workOf(item)[0]?.load?.grams ?? 0;
export const everyItem = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap(({ sessions }) => sessions.flatMap(itemsOf));
