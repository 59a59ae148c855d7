/** Rows of different exercises that lead to the same one by the time they are tested: it is tested in the first of them. */
import type { BlockContext } from '../block-context.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { WalkedRow } from '../rows/walked-row.js';
import { TEST_ONCE } from '../rules/test-once.js';
import type { PlannedTests } from './test-sets.js';

/** The places in the queue at which a row is tested after all. */
export function testedApart(
  { rules }: BlockContext,
  tests: PlannedTests,
  walked: ReadonlyMap<FittedRow, WalkedRow>,
): (fitted: FittedRow) => readonly number[] {
  const most = rules.valueOf(TEST_ONCE);
  const due = [...tests].flatMap(([fitted, { occurrences }]) => {
    const one = walked.get(fitted);
    return one === undefined ? [] : occurrences.map((occurrence) => ({ fitted, occurrence, ...at(one, occurrence) }));
  });
  const done = new Map<string, number>();
  const kept = due
    .sort((a, b) => a.occurrence - b.occurrence)
    .filter(({ week, exercise }) => {
      const before = done.get(`${week}/${exercise}`) ?? 0;
      done.set(`${week}/${exercise}`, before + 1);
      return before < most;
    });
  return (fitted) => kept.filter((one) => one.fitted === fitted).map(({ occurrence }) => occurrence);
}

/** What is planned at that place of the queue. */
function at({ fitted, plan, sessions }: WalkedRow, occurrence: number) {
  const index = sessions.findIndex(({ queued }) => queued.occurrence === occurrence);
  const version = plan.kind === 'walked' ? plan.steps[index]?.option.version : undefined;
  return {
    week: sessions[index]?.queued.week,
    exercise: fitted.chain.judged[version ?? fitted.chain.base]?.exercise.id,
  };
}
