/**
 * No more of an exercise on the side than the client works with: an easier version without a load, or a drill of a
 * composed warm-up or cool-down, asks at most what the client's own sets of that exercise ask in that week, or else in
 * any week. What the work itself asks is decided before.
 */
import type { EasierItem, Item, PlanSet, Week } from '../../model/plan.js';
import type { BlockContext } from '../block-context.js';
import { OWN_DOSE } from '../rules/own-dose.js';

const UNITS = ['reps', 'seconds', 'metres'] as const;
type Least = Partial<Record<(typeof UNITS)[number], number>>;
type LeastOf = ReadonlyMap<string, Least>;

const itemsIn = ({ sessions }: Week): readonly Item[] =>
  sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items));

export function withinOwnDose({ rules }: BlockContext, weeks: readonly Week[]): readonly Week[] {
  if (rules.valueOf(OWN_DOSE) === 0) return weeks;
  const always = leastOf(weeks);
  return weeks.map((week) => {
    const here = leastOf([week]);
    const most = (exercise: string | undefined): Least | undefined =>
      exercise === undefined ? undefined : (here.get(exercise) ?? always.get(exercise));
    const sessions = week.sessions.map((session) => ({
      ...session,
      groups: session.groups.map((group) => ({ ...group, items: group.items.map((item) => held(item, most)) })),
    }));
    return { ...week, sessions };
  });
}

/** The least that any work set of an exercise asks, in each unit it is counted by. */
function leastOf(weeks: readonly Week[]): LeastOf {
  const found = new Map<string, Least>();
  for (const { exercise, sets } of weeks.flatMap(itemsIn)) {
    for (const set of sets) {
      if (set.kind !== 'work') continue;
      const least = found.get(exercise) ?? {};
      for (const unit of UNITS) {
        const amount = set[unit];
        if (amount !== undefined) least[unit] = Math.min(amount, least[unit] ?? amount);
      }
      found.set(exercise, least);
    }
  }
  return found;
}

type MostOf = (exercise: string | undefined) => Least | undefined;

function held(item: Item, most: MostOf): Item {
  const drill = item.row.startsWith('warm-up-') || item.row.startsWith('cool-down-');
  const own = drill ? most(item.exercise) : undefined;
  const easier = item.easier.map((version) => heldEasier(version, most));
  if (own === undefined) return { ...item, easier };
  const limit = own[item.asked.unit] ?? item.asked.max;
  const asked = { ...item.asked, min: Math.min(item.asked.min, limit), max: Math.min(item.asked.max, limit) };
  return { ...item, easier, asked, sets: item.sets.map((set) => heldSet(set, own)) };
}

function heldEasier(version: EasierItem, most: MostOf): EasierItem {
  const own = most(version.exercise);
  return own === undefined ? version : { ...version, sets: version.sets.map((set) => heldSet(set, own)) };
}

/** With a load in hand the amounts say nothing of each other. What is taken off stays in reserve. */
function heldSet(set: PlanSet, own: Least): PlanSet {
  if (set.load !== undefined || set.steps !== undefined) return set;
  let less = set;
  for (const unit of UNITS) {
    const amount = set[unit];
    const limit = own[unit];
    if (amount === undefined || limit === undefined || amount <= limit) continue;
    less = { ...less, [unit]: limit };
    if (unit === 'reps' && set.reserve !== undefined) less = { ...less, reserve: set.reserve + 10 * (amount - limit) };
  }
  return less;
}
