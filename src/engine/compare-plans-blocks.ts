/**
 * From one block to the next: every exercise of work where it first stands, against where it last stood. Rows may be
 * other ones, so that an exercise is what is followed.
 */
import type { ChangedPlace, ChangeWay, RowChange, RowChangeKind } from '../model/change.js';
import type { Group, Item, Plan, PlanSession } from '../model/plan.js';
import { explaining, isOfSafety } from './compare-plans-reasons.js';
import { differencesOf, workOf } from './compare-plans-work.js';

interface Stand {
  readonly week: number;
  readonly session: PlanSession;
  readonly group: Group;
  readonly item: Item;
}

const WORK: readonly Group['kind'][] = ['straight', 'circuit'];

/** In the order trained. An easier week says little of where a block got to. */
const standsIn = ({ weeks }: Plan): readonly Stand[] =>
  weeks
    .filter(({ deload }) => !deload)
    .flatMap(({ number, sessions }) => sessions.map((session) => ({ week: number, session })))
    .sort((a, b) => a.session.occurrence - b.session.occurrence)
    .flatMap(({ week, session }) =>
      session.groups
        .filter(({ kind }) => WORK.includes(kind))
        .flatMap((group) => group.items.map((item) => ({ week, session, group, item }))),
    );

const placeOf = (stand: Stand, before: Item | null, after: Item | null): ChangedPlace => ({
  occurrence: stand.session.occurrence,
  week: stand.week,
  date: stand.session.date,
  before: before === null ? null : workOf(before),
  after: after === null ? null : workOf(after),
});

function change(what: RowChangeKind, way: ChangeWay, stand: Stand, before: Item | null, after: Item | null): RowChange {
  const reason = explaining([{ before, after }]);
  return {
    what,
    session: stand.session.id,
    row: stand.item.row,
    group: stand.group.kind,
    way,
    safety: reason !== undefined && isOfSafety(reason.rule),
    places: [placeOf(stand, before, after)],
    toEnd: true,
    ...(reason === undefined ? {} : { reason }),
  };
}

/** What a block begins with: load, amount, sets and tempo; rest and effort follow the programme. */
const TOLD: readonly RowChangeKind[] = ['load', 'amount', 'sets', 'tempo'];

export function compareBlocks(before: Plan, after: Plan): readonly RowChange[] {
  const [then, now] = [standsIn(before), standsIn(after)];
  // The last of each exercise, and the first.
  const ended = new Map(then.map((stand) => [stand.item.exercise, stand]));
  const begins = new Map([...now].reverse().map((stand) => [stand.item.exercise, stand]));
  const inOrder = [...begins.values()].reverse();
  return [
    ...inOrder.flatMap((stand): readonly RowChange[] => {
      const old = ended.get(stand.item.exercise);
      if (old === undefined) return [change('added', 'up', stand, null, stand.item)];
      return differencesOf(old.item, stand.item)
        .filter(([what]) => TOLD.includes(what))
        .map(([what, way]) => change(what, way, stand, old.item, stand.item));
    }),
    ...[...ended.values()]
      .filter(({ item }) => !begins.has(item.exercise))
      .map((stand) => change('removed', 'other', stand, stand.item, null)),
  ];
}
