/** The demo studio read and planned, as a command would, on one fixed day. */
import { withheldClients } from '../../src/app/report.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Plan } from '../../src/model/plan.js';
import { invariant } from '../../src/model/result.js';
import { type ReadDemo, readDemo } from './demo-library.js';

const TODAY = '2026-11-24';

export interface PlannedDemo extends ReadDemo {
  /** By client; only those whose plan stands. */
  readonly plans: ReadonlyMap<string, Plan>;
}

export async function planDemo(): Promise<PlannedDemo> {
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
