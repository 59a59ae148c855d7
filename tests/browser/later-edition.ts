/** What comes after a first edition: marks that came back, another edition made of them with what it changes, and its end. */

import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { composeWithdrawn } from '../../src/booklet/compose-changes.js';
import { compareEditions } from '../../src/engine/compare-plans.js';
import { linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Edition, Withdrawal } from '../../src/model/edition.js';
import type { BookletId } from '../../src/model/identity.js';
import type { Log, LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { invariant } from '../../src/model/result.js';
import type { Library } from '../../src/model/studio.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { sayPlan } from '../../src/words/say-plan.js';

const ISSUED = '2026-12-28';
const LATER = '2027-01-06';

export interface Later {
  readonly edition: Edition;
  readonly booklet: Booklet;
  /** The same edition once nobody is to train from it any more. */
  readonly withdrawal: Withdrawal;
  readonly withdrawn: Booklet;
}

export interface Before {
  readonly library: Library;
  readonly client: Client;
  /** The first edition's. */
  readonly plan: Plan;
  readonly bookletId: BookletId;
  /** Words of whoever marks and withdraws, others each time. */
  readonly words: () => string;
}

const editionOf = (n: number, issued: string, { bookletId }: Before, plan: Plan): Edition => ({
  schema: 1,
  bookletId,
  n,
  issued,
  from: plan.starts,
  block: plan.block,
  contentHash: '',
  engineVersion: '',
  rulesHash: '',
  wordsHash: '',
  plan,
});

/** The first session, done with ease and with words of one's own for what was lifted; and pain in what came last. */
function marksIn({ plan, words }: Before): readonly LogEvent[] {
  const day = plan.starts;
  const session = plan.weeks[0]?.sessions[0];
  const items = session?.groups.flatMap(({ items: own }) => own) ?? [];
  const last = items.at(-1);
  invariant(session !== undefined && last !== undefined, 'there is a session to mark');
  const { occurrence } = session;
  let count = 0;
  const head = (): Pick<LogEvent, 'id' | 'seq' | 'edition' | 'at'> => {
    count += 1;
    const two = String(count).padStart(2, '0');
    return { id: `7c9e6679-7425-40de-944b-0000000000${two}`, seq: count, edition: 1, at: `${day}T18:${two}:00+00:00` };
  };
  const sets = items.flatMap((item) =>
    item.sets.map((set): LogEvent => {
      const { key, reps = 0, load } = set;
      const held = load === undefined ? {} : { load: { ...load, label: words() } };
      return {
        ...head(),
        kind: 'set',
        key,
        exercise: set.exercise ?? item.exercise,
        tempo: item.tempo,
        done: 'done',
        ...(reps === 0 ? {} : { reps: reps + 4 }),
        ...held,
        asPlanned: false,
      };
    }),
  );
  return [
    { ...head(), kind: 'opened', occurrence, today: 'as usual' },
    ...sets,
    ...items.map(({ row }): LogEvent => ({ ...head(), kind: 'reserve', occurrence, row, side: 'both', reps: 5 })),
    { ...head(), kind: 'pain', occurrence, row: last.row, report: { where: 'knee', degree: 5 } },
    { ...head(), kind: 'closed', occurrence, effort: 4, minutes: 30 },
    { ...head(), kind: 'note', text: words() },
  ];
}

export function laterEdition(before: Before): Later {
  const { library, client, bookletId, words } = before;
  const first = editionOf(1, ISSUED, before, before.plan);
  const log: Log = { schema: 1, bookletId, device: 'phone', events: marksIn(before) };
  const history = gatherHistory([first], [log]);
  const today = dayOfIso(LATER);
  invariant(today !== undefined && history.problems.length === 0, 'the marks are of the plan');
  const linked = linkLibrary(library.exercises);
  const planned = planBlock({ library, client, today, edition: 2, linked, history: history.value });
  invariant(planned.value !== null, 'there is another plan');
  const plan = sayPlan(planned.value, library.studio.language);
  const changes = compareEditions(before.plan, plan);
  invariant(changes.length > 0, 'the marks change something');
  const booklet = composeBooklet({ library, client, plan, changes });
  return {
    edition: { ...editionOf(2, LATER, before, plan), supersedes: 1, changes },
    booklet,
    withdrawal: { schema: 1, date: LATER, why: words() },
    withdrawn: composeWithdrawn(booklet, LATER),
  };
}
