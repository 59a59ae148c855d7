/** One row in one session against the same in another plan: what of it is otherwise, and whether that is less or more. */
import type { ChangedSets, ChangedWork, ChangeWay, RowChangeKind } from '../model/change.js';
import type { Item, PlanSet } from '../model/plan.js';

/** What is done whatever happens: the rest is earned, tried or found out. */
const isCounted = ({ kind }: PlanSet): boolean => kind === 'work' || kind === 'test' || kind === 'cool-down';

/** What is lifted and how much of it; what it rests on, and its place, left away. */
function withCount(set: PlanSet): ChangedSets {
  const { key, round, exercise, reserve, gate, otherwise, choose, optional, stopAt, deadStop, ...lifted } = set;
  return { ...lifted, count: 1 };
}

export function workOf(item: Item): ChangedWork {
  const sets: ChangedSets[] = [];
  const counted = item.sets.filter(isCounted);
  for (const set of counted.length > 0 ? counted : item.sets) {
    const one = withCount(set);
    const at = sets.findIndex((other) => JSON.stringify({ ...other, count: 1 }) === JSON.stringify(one));
    const alike = sets[at];
    if (alike === undefined) sets.push(one);
    else sets[at] = { ...alike, count: alike.count + 1 };
  }
  return {
    exercise: item.exercise,
    ...(item.done === undefined ? {} : { done: item.done.say }),
    sets,
    tempo: item.tempo,
    restSeconds: item.restSeconds,
    reserve: item.asked.reserve,
  };
}

/** Grams held, or the step of a band; 0 for the body alone. */
const heft = ({ load }: Pick<ChangedSets, 'load'>): number => load?.grams ?? load?.step ?? 0;
const amount = ({ seconds, metres, reps }: ChangedSets): number => seconds ?? metres ?? reps ?? 0;
const sideOf = ({ side }: ChangedSets): string => side ?? 'both';

const loadsIn = ({ sets }: ChangedWork): string =>
  JSON.stringify(sets.map((set) => [sideOf(set), heft(set), set.load?.mode, set.load?.label, set.then?.load.label]));
const amountsIn = ({ sets }: ChangedWork): string =>
  JSON.stringify(
    sets.map((set) => [sideOf(set), set.reps, set.seconds, set.metres, set.steps, set.then?.reps, heft(set)]),
  );

/** Sets of the side that has most. */
function setsIn({ sets }: ChangedWork): number {
  const bySide = new Map<string, number>();
  for (const set of sets) bySide.set(sideOf(set), (bySide.get(sideOf(set)) ?? 0) + set.count);
  return Math.max(0, ...bySide.values());
}

const most = (work: ChangedWork, of: (set: ChangedSets) => number): number => Math.max(0, ...work.sets.map(of));

const compared = (before: number, after: number): ChangeWay =>
  after < before ? 'down' : after > before ? 'up' : 'other';

const leads = (item: Item, way: 'easier' | 'harder', to: ChangedWork): boolean =>
  item[way].some(({ exercise }) => exercise === to.exercise);

function versionWay(before: Item, to: ChangedWork): ChangeWay {
  if (leads(before, 'easier', to)) return 'down';
  return leads(before, 'harder', to) ? 'up' : 'other';
}

/** What must be earned, tried or found out, and what is done otherwise. */
const conditionsIn = ({ sets }: Item): string =>
  JSON.stringify(
    sets
      .filter((set) => set.kind !== 'warm-up')
      .map(({ gate, otherwise, choose, exercise, ...set }) =>
        isCounted(set) ? { gate, otherwise, choose } : { ...withCount(set), exercise, choose },
      ),
  );

export type Difference = readonly [what: RowChangeKind, way: ChangeWay];

/**
 * A change of version brings load and amount of its own with it, and a change of load its amount: these are not told
 * apart from it.
 */
export function differencesOf(before: Item, after: Item): readonly Difference[] {
  const [then, now] = [workOf(before), workOf(after)];
  const found: Difference[] = [];
  const sameVersion = then.exercise === now.exercise && then.done === now.done;
  if (!sameVersion) found.push(['version', versionWay(before, now)]);
  else if (loadsIn(then) !== loadsIn(now)) found.push(['load', compared(most(then, heft), most(now, heft))]);
  else if (amountsIn(then) !== amountsIn(now)) found.push(['amount', compared(most(then, amount), most(now, amount))]);
  if (setsIn(then) !== setsIn(now)) found.push(['sets', compared(setsIn(then), setsIn(now))]);
  if (sameVersion && then.reserve !== now.reserve) {
    found.push(['effort', compared(now.reserve ?? 0, then.reserve ?? 0)]);
  }
  if (sameVersion && then.tempo !== now.tempo) found.push(['tempo', 'other']);
  if (then.restSeconds !== now.restSeconds) found.push(['rest', 'other']);
  if (sameVersion && found.length === 0 && conditionsIn(before) !== conditionsIn(after)) {
    found.push(['conditions', 'other']);
  }
  return found;
}
