/** What a case came to: the plan or why there is none, every set of it where it stands, and the booklet's words. */
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Group, Item, OtherwiseSet, Plan, PlanLoad, PlanSession, PlanSet } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import { tellBooklet } from '../booklet/tell-booklet.js';
import type { Case } from './read-case.js';

export type Spot = 'work' | 'test' | 'warm-up' | 'cool-down' | 'easier' | 'harder' | 'otherwise' | 'choose' | 'then';

/** One amount of one exercise, wherever it is printed. */
export interface Told {
  readonly spot: Spot;
  readonly week: number;
  readonly easy: boolean;
  readonly session: string;
  readonly item: Item;
  readonly group: Group;
  readonly row: string;
  readonly exercise: string;
  readonly reps?: number | undefined;
  readonly seconds?: number | undefined;
  readonly metres?: number | undefined;
  readonly load?: PlanLoad | undefined;
  readonly reserve?: number | undefined;
  readonly set?: PlanSet;
}

export interface Placed {
  readonly week: number;
  readonly easy: boolean;
  readonly session: PlanSession;
  readonly group: Group;
  readonly item: Item;
}

export interface Planned {
  readonly of: Case;
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
  readonly exercises: ReadonlyMap<string, Exercise>;
  readonly items: readonly Placed[];
  readonly told: readonly Told[];
  readonly booklet: () => string;
}

export function planCase(of: Case): Planned {
  const { library, client, today, history } = of;
  const { value: plan, problems } = planBlock({ library, client, today, edition: 0, history });
  const items = (plan?.weeks ?? []).flatMap(({ number, deload, sessions }) =>
    sessions.flatMap((session) =>
      session.groups.flatMap((group) =>
        group.items.map((item) => ({ week: number, easy: deload, session, group, item })),
      ),
    ),
  );
  return {
    of,
    plan,
    problems,
    exercises: new Map(library.exercises.map((exercise) => [exercise.id, exercise])),
    items,
    told: items.flatMap(tellItem),
    booklet: () => (plan === null ? '' : tellBooklet(composeBooklet({ library, client, plan }))),
  };
}

function tellItem(placed: Placed): readonly Told[] {
  const { item, group, week, easy, session } = placed;
  const base = { week, easy, session: session.id, item, group, row: item.row };
  const ownSpot: Spot =
    group.kind === 'warm-up' || group.kind === 'cool-down' || group.kind === 'test' ? group.kind : 'work';
  const told: Told[] = [];
  const tellSets = (sets: readonly PlanSet[], exercise: string, spot: Spot) => {
    for (const set of sets) {
      const { reps, seconds, metres, load, reserve, then } = set;
      const kind = set.kind === 'warm-up' && spot === 'work' ? 'warm-up' : set.kind === 'test' ? 'test' : spot;
      const held = set.exercise ?? exercise;
      told.push({ ...base, spot: kind, exercise: held, reps, seconds, metres, load, reserve, set });
      if (then !== undefined) told.push({ ...base, spot: 'then', exercise: held, reps: then.reps, load: then.load });
      for (const other of set.otherwise ?? []) told.push({ ...base, ...amountOf(other), spot: 'otherwise' });
      for (const choice of set.choose ?? []) {
        const { exercise: chosen, reps: count, load: with_, reserve: left } = choice;
        told.push({ ...base, spot: 'choose', exercise: chosen, reps: count, load: with_, reserve: left });
      }
    }
  };
  tellSets(item.sets, item.exercise, ownSpot);
  for (const easier of item.easier) tellSets(easier.sets, exerciseOf(easier.exercise, item), 'easier');
  for (const harder of item.harder) tellSets(harder.sets, exerciseOf(harder.exercise, item), 'harder');
  return told;
}

const exerciseOf = (named: string | undefined, item: Item): string => named?.split('#')[0] ?? item.exercise;

const amountOf = ({ exercise, reps, seconds, metres, load, reserve }: OtherwiseSet) => {
  return { exercise, reps, seconds, metres, load, reserve };
};
