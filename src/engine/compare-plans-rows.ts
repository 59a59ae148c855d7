/** Within a block: every row of every session still to come, against itself. */
import type { ChangedPlace, ChangeWay, RowChange, RowChangeKind } from '../model/change.js';
import type { RowId, SessionId } from '../model/identity.js';
import type { Group, Item, Plan, PlanSession } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { explaining, isOfSafety, newFindingOf, newTrims, type Pair } from './compare-plans-reasons.js';
import { differencesOf, workOf } from './compare-plans-work.js';

interface Place extends Pair {
  /** Why the session has less of the row than the programme, where that is new. */
  readonly trimmed: readonly Reason[];
  readonly occurrence: number;
  readonly week: number;
  readonly date: string;
}

/** One row of one session over the block, in both plans. */
interface Row {
  readonly session: SessionId;
  readonly row: RowId;
  readonly group: Group['kind'];
  readonly places: Place[];
}

interface Standing {
  readonly week: number;
  readonly session: PlanSession;
}

const standingsIn = ({ weeks }: Plan): ReadonlyMap<number, Standing> =>
  new Map(
    weeks.flatMap(({ number, sessions }) =>
      sessions.map((session) => [session.occurrence, { week: number, session }] as const),
    ),
  );

/** A test stands apart from the work of its row. */
const keyOf = (session: PlanSession, group: Group, item: Item): string =>
  `${session.id}/${group.kind === 'test' ? 'test/' : ''}${item.row}`;

interface Found {
  readonly key: string;
  readonly group: Group;
  readonly item: Item;
}

const foundIn = (session: PlanSession): readonly Found[] =>
  session.groups.flatMap((group) => group.items.map((item) => ({ key: keyOf(session, group, item), group, item })));

/** Every row that stands in either plan after what is done, in the order of the new one. */
function rowsOf(before: Plan, after: Plan): readonly Row[] {
  const done = new Set((after.inputs.done ?? []).map(({ occurrence }) => occurrence));
  const [then, now] = [standingsIn(before), standingsIn(after)];
  const rows = new Map<string, Row>();
  const occurrences = [...new Set([...now.keys(), ...then.keys()])].sort((a, b) => a - b);
  for (const occurrence of occurrences.filter((one) => !done.has(one))) {
    const [old, fresh] = [then.get(occurrence), now.get(occurrence)];
    // Whole sessions more or fewer are told as such.
    if (old === undefined || fresh === undefined) continue;
    const where = { occurrence, week: fresh.week, date: fresh.session.date };
    const [gone, stands] = [foundIn(old.session), foundIn(fresh.session)];
    const note = (session: SessionId, { key, group, item }: Found, pair: Pair): void => {
      const row = rows.get(key) ?? { session, row: item.row, group: group.kind, places: [] };
      row.places.push({ ...where, ...pair, trimmed: newTrims(old.session, fresh.session, item.row) });
      rows.set(key, row);
    };
    for (const one of stands) {
      note(fresh.session.id, one, { before: gone.find(({ key }) => key === one.key)?.item ?? null, after: one.item });
    }
    for (const one of gone.filter(({ key }) => !stands.some((other) => other.key === key))) {
      note(old.session.id, one, { before: one.item, after: null });
    }
  }
  return [...rows.values()];
}

const ORDER: readonly RowChangeKind[] = [
  'removed',
  'added',
  'version',
  'load',
  'amount',
  'sets',
  'effort',
  'tempo',
  'rest',
  'conditions',
];

function differencesAt({ before, after }: Place): readonly (readonly [RowChangeKind, ChangeWay])[] {
  if (before === null) return after === null ? [] : [['added', 'up']];
  return after === null ? [['removed', 'down']] : differencesOf(before, after);
}

const placeOf = ({ before, after, trimmed, ...where }: Place): ChangedPlace => ({
  ...where,
  before: before === null ? null : workOf(before),
  after: after === null ? null : workOf(after),
});

export function compareRows(before: Plan, after: Plan): readonly RowChange[] {
  return rowsOf(before, after).flatMap((row) => changesOf(row, before, after));
}

function changesOf({ session, row, group, places }: Row, before: Plan, after: Plan): readonly RowChange[] {
  const found = places.map((place) => ({ place, differences: differencesAt(place) }));
  return ORDER.flatMap((what): readonly RowChange[] => {
    const own = found.filter(({ differences }) => differences.some(([one]) => one === what));
    const [first] = own;
    if (first === undefined) return [];
    const way = first.differences.find(([one]) => one === what)?.[1] ?? 'other';
    const pairs = own.map(({ place }) => place);
    const [trimmed] = what === 'removed' || what === 'sets' ? pairs.flatMap((pair) => pair.trimmed) : [];
    const reason = trimmed ?? explaining(pairs, what === 'version') ?? newFindingOf(before, after, session, row);
    return [
      {
        what,
        session,
        row,
        group,
        way,
        safety: reason !== undefined && isOfSafety(reason.rule),
        places: pairs.map(placeOf),
        toEnd: own.length === found.length - found.indexOf(first),
        ...(reason === undefined ? {} : { reason }),
      },
    ];
  });
}
