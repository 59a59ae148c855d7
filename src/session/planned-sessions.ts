/** Sessions as issued editions planned them, found by edition, block and place in the queue. */
import type { Edition } from '../model/edition.js';
import type { SetKey } from '../model/identity.js';
import type { Group, Item, PlanSession, PlanSet } from '../model/plan.js';

export interface PlannedRow {
  readonly item: Item;
  readonly group: Group;
}

/** A session of one edition. */
export interface PlannedPlace {
  readonly edition: number;
  /** 1-based. */
  readonly block: number;
  readonly week: number;
  readonly easy: boolean;
  readonly session: PlanSession;
  readonly rows: ReadonlyMap<string, PlannedRow>;
  readonly sets: ReadonlyMap<SetKey, PlanSet>;
}

/** One edition by occurrence. */
export interface EditionPlaces {
  readonly edition: Edition;
  readonly block: number;
  readonly places: ReadonlyMap<number, PlannedPlace>;
}

export function placesOf(edition: Edition): EditionPlaces {
  const { plan, n } = edition;
  const { block } = plan;
  const places = plan.weeks.flatMap(({ number, deload, sessions }) =>
    sessions.map((session): readonly [number, PlannedPlace] => {
      const rows = session.groups.flatMap((group) =>
        group.items.map((item): readonly [string, PlannedRow] => [item.row, { item, group }]),
      );
      const sets = rows.flatMap(([, { item }]) => item.sets.map((set): readonly [SetKey, PlanSet] => [set.key, set]));
      const place = { edition: n, block, week: number, easy: deload, session };
      return [session.occurrence, { ...place, rows: new Map(rows), sets: new Map(sets) }];
    }),
  );
  return { edition, block, places: new Map(places) };
}
