/** The booklet of one client of the demo studio, without planning for the others. */
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Booklet } from '../../src/model/booklet.js';
import { dayOfIso } from '../../src/model/day.js';
import { invariant } from '../../src/model/result.js';
import { readDemo } from './demo-library.js';
import { TODAY } from './demo-plans.js';

export async function demoBooklet(name: string): Promise<Booklet> {
  const { library, clients } = await readDemo();
  const client = clients.find(({ id }) => id === name);
  const today = dayOfIso(TODAY);
  invariant(client !== undefined && today !== undefined, `${name} is a client of the demo`);
  const { value: plan } = planBlock({ library, client, today, edition: 0 });
  invariant(plan !== null, `${name} has a plan`);
  return composeBooklet({ library, client, plan });
}
