/** Plans with some of their items alone, or changed: what is left without an item is left out. */
import type { ClientItem, ClientPlan } from '../../src/model/client-plan.js';

type Group = ClientPlan['weeks'][number]['sessions'][number]['groups'][number];

/** `null` leaves an item out. */
export const changeItems = (
  plan: ClientPlan,
  change: (item: ClientItem, group: Group) => ClientItem | null,
): ClientPlan => ({
  ...plan,
  weeks: plan.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.flatMap((session) => {
      const groups = session.groups.flatMap((group) => {
        const items = group.items.flatMap((item) => change(item, group) ?? []);
        return items.length === 0 ? [] : [{ ...group, items }];
      });
      return groups.length === 0 ? [] : [{ ...session, groups }];
    }),
  })),
});

/** With every rep let down slowly: its seconds are counted. */
export const slowed = (plan: ClientPlan): ClientPlan =>
  changeItems(plan, (item) => ({ ...item, tempo: 'slow lowering' }));
