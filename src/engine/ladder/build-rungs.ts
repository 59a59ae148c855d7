/** All the rungs of one row: a stage for each load from the first one up, then for harder versions. */
import type { Rung, RungLoad } from '../../model/ladder.js';
import { externalLoad } from '../capacity.js';
import type { LadderFitted } from '../rows/fit-rows.js';
import { plannedBy } from '../rows/planned-by.js';
import type { Rulebook } from '../rulebook.js';
import { LADDER_STEP_GRAMS } from '../rules/ladder-step-grams.js';
import { LADDER_STEP_SHARE } from '../rules/ladder-step-share.js';
import { STAGES_AHEAD } from '../rules/stages-ahead.js';
import type { Judged } from '../versions/judge-version.js';
import { dosesOf } from './rungs-of-way.js';
import { type LadderStart, loadsOf } from './start-ladder.js';

export interface BuiltRungs {
  readonly rungs: readonly Rung[];
  /** Index of the rung it begins on. */
  readonly start: number;
}

interface Stage {
  readonly judged: Judged;
  readonly load: RungLoad | null;
  readonly nextUp: RungLoad | null;
}

export function buildRungs(fitted: LadderFitted, start: LadderStart, rules: Rulebook): BuiltRungs {
  const { dose } = fitted;
  const stages = stagesOf(fitted, start, rules);
  let first = 0;
  const rungs = stages.flatMap(({ judged, load, nextUp }, stage): readonly Rung[] => {
    const { facts, id } = judged.exercise;
    const fresh = stage === 0 && start.fresh;
    const { doses, known } = dosesOf({ dose, facts, fresh, nextUp: nextUp !== null, inForce: rules.valueOf });
    if (stage === 0 && !fresh) first = known;
    return doses.map((one) => ({
      exercise: id,
      load,
      nextUp: one.dose.kind === 'main-next' ? nextUp : null,
      deadStop: one.deadStop,
      dose: one.dose,
      stage,
    }));
  });
  return { rungs, start: first };
}

function stagesOf(fitted: LadderFitted, start: LadderStart, rules: Rulebook): readonly Stage[] {
  const { judged: chain, base } = fitted.chain;
  const most = 1 + (start.stays ? 0 : rules.valueOf(STAGES_AHEAD));
  const stages: Stage[] = [];
  for (const judged of chain.slice(base)) {
    if (stages.length > 0 && !isLikeBase(fitted, judged)) break;
    const loads = loadsOf(judged);
    const from = stages.length === 0 ? start.load : lighterThan(loads, stages.at(-1)?.load ?? null);
    const near = loads.slice(from, from + climbable(loads, from, rules));
    near.forEach((load, index) => {
      stages.push({ judged, load, nextUp: fitted.dose.kind === 'main-next' ? (near[index + 1] ?? null) : null });
    });
    if (stages.length >= most) break;
  }
  return stages.slice(0, most);
}

/** How many loads from `from` on follow each other in steps that are not too big. */
function climbable(loads: readonly (RungLoad | null)[], from: number, rules: Rulebook): number {
  const over = loads.findIndex((load, index) => {
    return index > from && !isNear(loads[index - 1] ?? null, load, rules);
  });
  return (over < 0 ? loads.length : over) - from;
}

function isNear(held: RungLoad | null, next: RungLoad | null, rules: Rulebook): boolean {
  if (next === null || 'band' in next || (held !== null && 'band' in held)) return true;
  const grams = held?.grams ?? 0;
  const most = Math.max(
    rules.valueOf(LADDER_STEP_GRAMS),
    Math.floor((grams * rules.valueOf(LADDER_STEP_SHARE)) / 1000),
  );
  return next.grams - grams <= most;
}

/** A harder version continues the ladder where it works in the same way and takes the same dose. */
function isLikeBase({ chain, dose }: LadderFitted, { exercise }: Judged): boolean {
  const own = chain.judged[chain.base]?.exercise.facts;
  return own !== undefined && exercise.facts.way === own.way && plannedBy(exercise.facts, dose) === 'ladder';
}

/** A version that is new starts with the heaviest load lighter than the one held, else with its lightest. */
function lighterThan(loads: readonly (RungLoad | null)[], held: RungLoad | null): number {
  if (held === null || 'band' in held) return 0;
  const grams = externalLoad(held);
  return Math.max(
    0,
    loads.findLastIndex((load) => load !== null && 'grams' in load && externalLoad(load) < grams),
  );
}
