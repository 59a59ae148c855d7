/** Whether every version a row may reach has an easier one; its sets are planned with the items. */
import type { EasierItem } from '../../model/plan.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { Refusal } from '../../model/problems-plan.js';
import { invariant } from '../../model/result.js';
import type { BlockContext } from '../block-context.js';
import { planEasier } from '../items/plan-easier.js';
import { EASIER_IN_KIT } from '../rules/easier-in-kit.js';
import { unlocksOf } from '../versions/list-unlocks.js';
import type { Versions, WalkFitted } from './fit-rows.js';

function easierOf(context: BlockContext, { chain, reps }: WalkFitted, { besideOf }: Versions): readonly EasierItem[] {
  const judged = chain.judged[chain.base];
  const version = chain.versions[chain.base];
  invariant(judged !== undefined && version !== undefined, 'a row begins with a version of its chain');
  const nothing = {
    judged,
    version,
    k: 0,
    equation: 'epley',
    tested: 0,
    load: null,
    reps: reps.min,
    reserve: null,
    bottom: reps.min,
    asked: 0,
    floor: 0,
    bodyMass: context.client.bodyMass?.mass.grams ?? null,
    slow: 1000,
    sets: [],
  } as const;
  return planEasier(nothing, besideOf(judged));
}

/**
 * Of the row's first version, one that is counted in reps; `null` where there is none. Another exercise before a way: a
 * slower or shorter way leaves no more reps than the exercise does.
 */
export function easierInReps(context: BlockContext, fitted: WalkFitted, versions: Versions): EasierItem | null {
  const counted = easierOf(context, fitted, versions).filter(
    ({ way }) => way === 'strength' || way === 'bodyweight' || way === 'combination',
  );
  return counted.find(({ exercise }) => exercise?.includes('#') === false) ?? counted[0] ?? null;
}

/** Every version the walk may reach needs an easier one below it: promised to whoever trains alone. */
export function easierMissing(context: BlockContext, fitted: WalkFitted, versions: Versions): readonly Problem[] {
  return fitted.chain.judged.flatMap((judged, index): readonly Problem[] => {
    const { ways, easier, refused } = versions.besideOf(judged);
    const enough = ways.length + easier.length >= context.rules.valueOf(EASIER_IN_KIT);
    return enough ? [] : [noEasier(context, fitted, index, refused)];
  });
}

export function noEasier(
  context: BlockContext,
  { session, row, chain }: WalkFitted,
  index: number,
  refused: readonly Refusal[],
): Problem {
  const exercise = chain.judged[index]?.exercise.id ?? '';
  const data = { session: session.id, row: row.id, exercise, refused, unlocks: unlocksOf(refused, context) };
  const scope = ofClient(context.client.id);
  return { code: 'no-easier-version', severity: 'error', scope, place: row.place, data };
}
