/** Tests: each exercise once a week at most, in no more than two weeks, and what is published as it was published. */
import type { PlanItem, PlanJson } from './plan-json.js';

interface Tested {
  readonly week: number;
  readonly session: string;
  readonly measure: boolean;
  readonly item: PlanItem;
}

export function auditTests(plan: PlanJson): string[] {
  const tested = testedIn(plan);
  return [...twiceInOneWeek(tested), ...tooOften(tested), ...stoppedMeasures(tested), ...triedBeside(plan, tested)];
}

function testedIn({ weeks }: PlanJson): readonly Tested[] {
  return weeks.flatMap(({ number, sessions }) =>
    sessions.flatMap(({ id, groups }) =>
      groups.flatMap(({ kind, items }) =>
        items
          .filter(({ sets }) => sets.some((set) => set.kind === 'test'))
          .map((item) => ({ week: number, session: id, measure: kind === 'test', item })),
      ),
    ),
  );
}

function twiceInOneWeek(tested: readonly Tested[]): string[] {
  return tested.flatMap(({ week, session, item }, index) => {
    const before = tested.slice(0, index).find((one) => one.week === week && one.item.exercise === item.exercise);
    return before === undefined
      ? []
      : [`week ${week}: ${item.exercise} is tested twice, in ${before.session} and in ${session}`];
  });
}

/** A row has a test at the start and one at the end. */
function tooOften(tested: readonly Tested[]): string[] {
  const rows = new Set(tested.map(({ session, item }) => `${session}/${item.row}`));
  return [...rows].flatMap((row) => {
    const weeks = tested.filter(({ session, item }) => `${session}/${item.row}` === row).map(({ week }) => week);
    return weeks.length > 2 ? [`${row}: tested in weeks ${weeks.join(', ')}`] : [];
  });
}

/** A published measure lasts its time: with a reserve to stop at, or so many reps, it would be another. */
function stoppedMeasures(tested: readonly Tested[]): string[] {
  return tested
    .filter(({ measure }) => measure)
    .flatMap(({ week, item }) =>
      item.sets.some(({ stopAt, reps, seconds }) => stopAt !== undefined || reps !== undefined || seconds === undefined)
        ? [`week ${week}: ${item.exercise} is measured, and yet not for its time alone`]
        : [],
    );
}

/** In a week in which an exercise is tested, nothing is tried in any row of it that the test stands in. */
function triedBeside(plan: PlanJson, tested: readonly Tested[]): string[] {
  return tested
    .filter(({ measure }) => !measure)
    .flatMap(({ week, session, item }) => {
      const strand = plan.inputs.strands.find((one) => one.session === session && one.row === item.row);
      const held = strand?.occurrences.filter((one) => one.week === week) ?? [];
      return held.length > 0 && held.every((one) => one.held !== undefined)
        ? []
        : [`week ${week} ${session}/${item.row}: tested, and not held`];
    });
}
