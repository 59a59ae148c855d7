/** Sides far apart: the stronger one keeps the bell it was tested with for some of its sets. */
import type { Side } from '../../model/identity.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { PlanSet } from '../../model/plan.js';
import type { Tenths } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { externalLoad, gainedCapacity, repsToFailure, resistedLoad } from '../capacity.js';
import { planLoad } from '../items/plan-load.js';
import { isAtMost } from '../kit/at-most.js';
import { SIDE_GAP_OWN_BELL } from '../rules/side-gap-own-bell.js';
import { SIDE_GAP_WHY } from '../rules/side-gap-why.js';
import type { WalkStep } from '../walk-step.js';
import type { Beginning } from './beginning.js';
import { caresAtStart } from './cares-met.js';
import type { WalkFitted } from './fit-rows.js';
import type { WalkedRow } from './walked-row.js';

export interface OwnBell {
  readonly side: Side;
  readonly load: MakeableLoad;
  /** Predicted, with the reps both sides do. */
  readonly reserve: Tenths;
  /** How many of its sets are done with it. */
  readonly sets: number;
}

/** Whether some set may be: a gap above `side-gap-why` in the row's own test, and nothing that asks for care. */
export function keepsOwnBell(context: BlockContext, fitted: WalkFitted, { how, tested, trust }: Beginning): boolean {
  const { standing, rules } = context;
  // Inside a circuit it would be one more piece in hand.
  if (fitted.inCircuit) return false;
  if (how !== 'tested' || trust.kind !== 'whole' || tested === null || tested.sides[1]?.weak !== false) return false;
  if (standing.moderate || standing.steady || caresAtStart(fitted).length > 0) return false;
  return tested.gap !== null && tested.gap > rules.valueOf(SIDE_GAP_WHY);
}

/**
 * In a work week, in the version and at the tempo tested: the heaviest load above the one both sides work with, up to
 * the one the stronger side was tested with, that leaves it the asked reserve with the same reps. None beside a trial,
 * from a gate on, or while nothing may be made harder: those sets say enough already.
 */
export function ownBellIn(context: BlockContext, walked: WalkedRow, step: WalkStep): OwnBell | null {
  const { fitted, beginning, strand, plan, cares } = walked;
  const stronger = beginning.tested?.sides[1];
  const version = strand.versions[fitted.chain.base];
  const occurrence = plan.kind === 'walked' ? strand.occurrences[plan.steps.indexOf(step)] : undefined;
  if (plan.kind !== 'walked' || stronger === undefined || version === undefined || occurrence === undefined)
    return null;
  if (cares.length > 0 || !keepsOwnBell(context, fitted, beginning)) return null;
  if (step.easy || step.trial !== undefined || step.otherwise !== undefined || occurrence.held !== undefined)
    return null;
  if (step.option.version !== fitted.chain.base || step.option.tempo !== 0) return null;
  const grams = stronger.test.load?.grams ?? 0;
  const reps = 10 * stronger.test.reps + stronger.test.reserve;
  let k = stronger.k;
  for (let week = plan.ground.weeks.get(step.week)?.workWeeks ?? 0; week > 0; week -= 1) {
    k = gainedCapacity(k, strand.gain);
  }
  const held = version.loads.find((load) => load.grams === step.option.load);
  const { side } = stronger;
  const able = version.loads.flatMap((load): readonly OwnBell[] => {
    const heavier = held !== undefined && externalLoad(load) > externalLoad(held) && isAtMost(load, grams);
    const reserve = repsToFailure('epley', k, reps, resistedLoad(version, load, strand.bodyMass)) - 10 * step.reps;
    if (!heavier || reserve < Math.max(occurrence.asked, occurrence.floor)) return [];
    return side === 'both' ? [] : [{ side, load, reserve, sets: context.rules.valueOf(SIDE_GAP_OWN_BELL) }];
  });
  return able.at(-1) ?? null;
}

/** The same reps; the stronger side's first sets with the bell it was tested with. */
export function withOwnBell(sets: readonly PlanSet[], own: OwnBell | null): readonly PlanSet[] {
  if (own === null) return sets;
  return sets.map((set) => {
    if (set.side !== own.side || set.round > own.sets) return set;
    return { ...set, load: planLoad(own.load), reserve: own.reserve };
  });
}
