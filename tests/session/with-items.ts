/** A plan as a phone has it with each of its items changed. */
import type { ClientItem, ClientPlan } from '../../src/model/client-plan.js';

export const withItems = (plan: ClientPlan, change: (item: ClientItem) => ClientItem): ClientPlan => ({
  ...plan,
  weeks: plan.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => ({
      ...session,
      groups: session.groups.map((group) => ({ ...group, items: group.items.map(change) })),
    })),
  })),
});
