/** A row's bell by its role: the client's main one for the movement, and its neighbours among what can be made. */
import type { BellRole } from '../../model/dose.js';
import type { Exercise } from '../../model/exercise.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { Grams } from '../../model/quantity.js';
import type { VersionInput } from '../../model/strand.js';
import { type BlockContext, names } from '../block-context.js';
import { isAtMost } from '../kit/at-most.js';
import { inOneHand } from '../kit/hands.js';
import { LIGHTER_BELL } from '../rules/lighter-bell.js';
import { NEXT_UP_BELL } from '../rules/next-up-bell.js';

export interface RoleBell {
  readonly role: BellRole;
  /** As the exercise counts its loads. */
  readonly main: Grams;
  /** The load of the role; the main one where there is no neighbour. */
  readonly load: Grams;
}

/**
 * What one hand holds of the main bell: as the coach states it for the movement pattern; else the load last tested in
 * this exercise, else in any of the pattern (of one day: the lighter); by the coach, since what a row of the lighter bell
 * was marked with is no main bell. `null` where nothing is known.
 */
function mainBellOf(context: BlockContext, exercise: Exercise): Grams | null {
  const { client, today, exercises } = context;
  const { pattern } = exercise.facts;
  const stated = client.mainBells.find((bell) => bell.pattern === pattern);
  if (stated !== undefined) return stated.mass.grams;
  const tested = client.tests.flatMap((test) => {
    const of = exercises.get(test.exercise);
    if (test.marked === true) return [];
    if (of === undefined || test.load === undefined || test.date > today || of.facts.pattern !== pattern) return [];
    const own = names(context, test.exercise, exercise);
    return [{ own, date: test.date, grams: inOneHand(test.load.grams, of) }];
  });
  const [latest] = tested.sort((a, b) => Number(b.own) - Number(a.own) || b.date - a.date || a.grams - b.grams);
  return latest?.grams ?? null;
}

/** `loads` lightest first. `null` where no main bell is known, or none as light can be made. */
export function roleBell(
  context: BlockContext,
  exercise: Exercise,
  loads: readonly MakeableLoad[],
  role: BellRole,
): RoleBell | null {
  const mass = mainBellOf(context, exercise);
  if (mass === null) return null;
  const main = loads.findLastIndex((load) => load.grams > 0 && isWithin(load, exercise, mass));
  const at = loads[main];
  if (at === undefined) return null;
  const by = { main: 0, lighter: -context.rules.valueOf(LIGHTER_BELL), 'next up': context.rules.valueOf(NEXT_UP_BELL) };
  const load = loads[Math.min(loads.length - 1, Math.max(0, main + by[role]))] ?? at;
  return { role, main: at.grams, load: load.grams };
}

/** A row of the lighter bell goes above it in no version. */
export function noHeavierThan(
  versions: readonly VersionInput[],
  exercises: readonly Exercise[],
  base: number,
  most: Grams,
): readonly VersionInput[] {
  const own = exercises[base];
  if (own === undefined) return versions;
  const hand = inOneHand(most, own);
  return versions.map((version, index) => {
    const exercise = exercises[index] ?? own;
    return { ...version, loads: version.loads.filter((load) => isWithin(load, exercise, hand)) };
  });
}

const isWithin = (load: MakeableLoad, exercise: Exercise, hand: Grams): boolean =>
  isAtMost({ ...load, grams: inOneHand(load.grams, exercise) }, hand);
