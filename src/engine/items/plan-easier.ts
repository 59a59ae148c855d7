/** The easier versions of a planned item that this client may do with this kit, each with its own sets. */
import type { Exercise } from '../../model/exercise.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { EasierItem, PlanSet } from '../../model/plan.js';
import type { Grams, PerMille, Tenths } from '../../model/quantity.js';
import type { VersionInput } from '../../model/strand.js';
import {
  carriedCapacity,
  type Equation,
  externalLoad,
  isCounted,
  repsToFailure,
  resistedLoad,
  slowedReps,
} from '../capacity.js';
import { isWalked } from '../rows/planned-by.js';
import type { Judged } from '../versions/judge-version.js';
import type { Beside, EasierVersion } from '../versions/list-beside.js';
import { planLoad } from './plan-load.js';
import type { AmountOf } from './set-amount.js';

/** What is planned, and what the easier version may not exceed. */
export interface Planned {
  readonly judged: Judged;
  readonly version: VersionInput;
  /** Capacity of this week in this version; 0 where nothing is known. */
  readonly k: number;
  readonly equation: Equation;
  /** n₀ of the test, tenths. */
  readonly tested: Tenths;
  readonly bodyMass: Grams | null;
  /** Factor of a slow lowering, thousandths. */
  readonly slow: PerMille;
  /** `null` where no load is claimed. */
  readonly load: MakeableLoad | null;
  readonly reps: number;
  /** Predicted; `null` where no load is claimed. */
  readonly reserve: Tenths | null;
  readonly bottom: number;
  readonly asked: Tenths;
  readonly floor: Tenths;
  /** The sets it takes the place of; their keys stay. */
  readonly sets: readonly PlanSet[];
  /** How much so many reps are, as the row's dose is written; plain reps where it says nothing. */
  readonly amount?: AmountOf;
}

/**
 * Easier ways of the same exercise in the order a coach makes it easier, then easier exercises in the order of their
 * links. Of an exercise that is itself done in an easier way, only other ways that answer the same cautions.
 *
 * An exercise to which capacity passes has the heaviest load, not above the one held, that leaves the asked reserve
 * with the reps planned or up to two fewer than the bottom of the range. One to which it does not pass claims no
 * load: the bottom of the range at most, and the asked reserve. A way keeps the load; since it may be a slower one, it
 * has only the reps that a slow lowering would leave with the asked reserve, at least one.
 */
export function planEasier(planned: Planned, { ways, easier }: Beside): readonly EasierItem[] {
  const { exercise } = planned.judged;
  const own = wayOf(planned);
  const items: EasierItem[] = [];
  for (const { slug, say, causes } of ways) {
    const sets = easierSets(planned, own, exercise);
    items.push({ exercise: `${exercise.id}#${slug}`, way: exercise.facts.way, say, for: causes, sets });
  }
  for (const version of easier) {
    const { link, to } = version;
    const sets = easierSets(planned, doseOf(planned, version), to.exercise);
    items.push({ exercise: to.exercise.id, way: to.exercise.facts.way, say: link.say, for: link.causes, sets });
  }
  return items;
}

interface Dose {
  readonly load: MakeableLoad | null;
  readonly reps: number;
  /** `null` where reps to failure are not counted. */
  readonly reserve: Tenths | null;
}

/** In place of the item's own sets and under their keys; rounds are numbered through, since there is no trial. */
function easierSets({ sets, amount }: Planned, { load, reps, reserve }: Dose, exercise: Exercise): readonly PlanSet[] {
  const held = load === null || load.grams === 0 ? {} : { load: planLoad(load) };
  const left = reserve === null ? {} : { reserve };
  const much = amount?.(reps, exercise, 'normal') ?? { reps };
  const rounds = { left: 0, right: 0, both: 0 };
  return sets.map(({ key, side }): PlanSet => {
    rounds[side ?? 'both'] += 1;
    const round = rounds[side ?? 'both'];
    return side === undefined
      ? { key, kind: 'work', round, ...much, ...held, ...left }
      : { key, kind: 'work', round, ...much, side, ...held, ...left };
  });
}

function wayOf({ version, k, equation, tested, bodyMass, slow, load, reps, reserve, asked, floor }: Planned): Dose {
  if (k === 0 || load === null) return { load, reps, reserve: reserve ?? asked };
  const toFailure = repsToFailure(equation, k, tested, resistedLoad(version, load, bodyMass));
  const slowly = slowedReps(toFailure, slow);
  const most = Math.max(1, Math.min(reps, Math.floor((slowly - Math.max(asked, floor)) / 10)));
  return { load, reps: most, reserve: slowly - 10 * most };
}

function doseOf(planned: Planned, { link, to, version, counted, carried }: EasierVersion): Dose {
  const { asked, bottom, reps, bodyMass } = planned;
  if (!isWalked(to.exercise.facts)) return { load: null, reps: Math.min(reps, bottom), reserve: null };
  const unknown: Dose = { load: null, reps: Math.min(reps, bottom), reserve: asked };
  if (planned.k === 0 || planned.load === null || !carried) return unknown;
  const from = { share: planned.version.share, counted: isCounted(planned.version, bodyMass) };
  const k = carriedCapacity(planned.k, from, { share: version.share, counted }, link.ratio);
  if (k === 0) return unknown;
  const held = externalLoad(planned.load);
  const needed = Math.max(asked, planned.floor);
  const least = Math.min(reps, Math.max(1, bottom - 2));
  for (let index = version.loads.length - 1; index >= 0; index -= 1) {
    const load = version.loads[index];
    if (load === undefined || externalLoad(load) > held) continue;
    const toFailure = repsToFailure(planned.equation, k, planned.tested, resistedLoad(version, load, bodyMass));
    const most = Math.min(reps, Math.floor((toFailure - needed) / 10));
    if (most >= least) return { load, reps: most, reserve: toFailure - 10 * most };
  }
  return unknown;
}
