/** Holds a plan to the lines its programme expects of it, for a coach who wants to be told when a number moves. */
import type { Client } from '../model/client.js';
import type { Item, Plan } from '../model/plan.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Programme } from '../model/programme.js';
import { saySet } from '../words/say-dose.js';
import { sayDoses } from '../words/say-doses.js';
import { sayLoad } from '../words/say-load.js';
import { speechOf } from '../words/speech.js';

/** One space for another, and a letter x for the sign, as people type. */
const typed = (text: string): string =>
  text
    .normalize('NFKC')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/\s*[×x]\s*/g, ' × ')
    .trim()
    .toLowerCase();

/** Reports `expectation-missed`. */
export function checkExpectations(programme: Programme | undefined, client: Client, plan: Plan): readonly Problem[] {
  const speech = speechOf('en-GB');
  const problems: Problem[] = [];
  for (const { client: whose, week, session, row, text, place } of programme?.expectations ?? []) {
    if (whose !== client.id) continue;
    const item = itemOf(plan, week, session, row);
    const work = item?.sets.find(({ kind }) => kind === 'work');
    const single = work === undefined ? '' : saySet(sayLoad(work.load, plan.inputs.kit, speech), work, speech);
    const whole = item === undefined ? [] : sayDoses(plan, item.sets, speech);
    if ([single, ...whole].some((said) => typed(said) === typed(text))) continue;
    const data = { week, session, row, wanted: text, planned: typed(single) };
    problems.push({ code: 'expectation-missed', severity: 'error', scope: ofClient(client.id), place, data });
  }
  return problems;
}

function itemOf(plan: Plan, week: number, session: string, row: string): Item | undefined {
  return plan.weeks
    .find(({ number }) => number === week)
    ?.sessions.filter(({ id }) => id === session)
    .flatMap(({ groups }) => groups.flatMap(({ items }) => items))
    .find((item) => item.row === row);
}
