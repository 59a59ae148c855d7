/** What the coach's tests say a client can lift in one version, and where the walk begins from them. */
import type { Test } from '../../model/client.js';
import type { Side } from '../../model/identity.js';
import type { Grams, PerMille, Tenths } from '../../model/quantity.js';
import type { CapacityInput, VersionInput } from '../../model/strand.js';
import { type BlockContext, names } from '../block-context.js';
import { bodyPart, capacityOf, isCounted } from '../capacity.js';
import { inAllHands } from '../kit/hands.js';
import { walkValues } from '../rows/walk-values.js';
import { WEAK_RESERVE } from '../rules/weak-reserve.js';
import type { Judged } from '../versions/judge-version.js';
import { normalReps, tempoFactor } from './tempo-factor.js';

export interface TestedCapacity {
  readonly capacity: CapacityInput;
  /** The load tested, as the exercise counts it. */
  readonly grams: Grams;
  /** The same in all hands together. */
  readonly external: Grams;
  readonly test: Test;
  /** Every side's latest test, the weaker first. */
  readonly sides: readonly {
    readonly side: Side | 'both';
    readonly k: number;
    readonly weak: boolean;
    readonly test: Test;
  }[];
  /** How far the weaker side is below the stronger, against the stronger; `null` unless both were tested. */
  readonly gap: PerMille | null;
  /** One-sided work of which only one side was tested. */
  readonly untested: Side | null;
}

/**
 * The latest test of each side up to today decides (of one day: the lower), and the weaker side decides for both.
 * A test for both sides stands for either. `null` where nothing was tested.
 *
 * Weak are: more reps and reserve than the walk's `walk-weak-above`, a reserve said to be above `weak-reserve`, a set
 * from a circuit, one-sided work of which one side was not tested, and whatever marks or the coach's eye make so. A test at a
 * slower tempo is read as the fewest reps at normal tempo that go with it.
 */
export function readCapacity(context: BlockContext, judged: Judged, version: VersionInput): TestedCapacity | null {
  const { client, today, rules } = context;
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  const counted = isCounted(version, bodyMass);
  const unsure = context.recalls.get(judged.exercise.id)?.weak ?? false;
  const measured = client.tests
    .filter((test) => test.date <= today && names(context, test.exercise, judged.exercise))
    .filter((test) => isReadable(test, version, counted))
    .map((test) => {
      const resisted = counted ? externalOf(test, judged) + bodyPart(version.share, bodyMass) : 1;
      const reps: Tenths = normalReps(10 * test.reps + test.reserve, tempoFactor(test.tempo ?? 'normal', rules));
      const weak =
        unsure || test.inCircuit || test.reserve > rules.valueOf(WEAK_RESERVE) || reps > walkValues(rules).weakAbove;
      const capacity: CapacityInput = { side: test.side, resisted, reps, weak };
      return { test, side: test.side, k: capacityOf('epley', capacity, counted), weak, capacity };
    })
    .sort((a, b) => b.test.date - a.test.date || weakerFirst(a, b));
  const each = judged.exercise.facts.sides === 'each';
  const latest = (side: Side) => measured.find((one) => one.side === side || one.side === 'both');
  const [left, right] = [latest('left'), latest('right')];
  const found = each ? [left, right].filter((one) => one !== undefined) : measured.slice(0, 1);
  const [weaker, stronger] = [...found].sort(weakerFirst);
  if (weaker === undefined) return null;
  const untested = each && found.length === 1 ? (left === undefined ? 'left' : 'right') : null;
  const apart = each && stronger !== undefined && stronger !== weaker;
  const capacity = each ? weaker.capacity : { ...weaker.capacity, side: 'both' as const };
  return {
    capacity: untested === null ? capacity : { ...capacity, weak: true },
    grams: weaker.test.load?.grams ?? 0,
    external: externalOf(weaker.test, judged),
    test: weaker.test,
    sides: found
      .filter((one, i) => found.indexOf(one) === i)
      .sort(weakerFirst)
      .map(({ side, k, weak, test }) => ({ side, k, weak, test })),
    gap: apart ? Math.floor(((stronger.k - weaker.k) * 1000) / stronger.k) : null,
    untested,
  };
}

/** Of equal sides the one less surely known comes first. */
function weakerFirst(a: Measured, b: Measured): number {
  return a.k - b.k || Number(b.weak) - Number(a.weak);
}

interface Measured {
  readonly k: number;
  readonly weak: boolean;
}

const externalOf = ({ load }: Test, { exercise }: Judged): Grams => inAllHands(load?.grams ?? 0, exercise);

/** Where loads are not counted, a test speaks only of the load it was done with. */
function isReadable(test: Test, version: VersionInput, counted: boolean): boolean {
  return counted || version.loads.some((load) => load.grams === (test.load?.grams ?? 0));
}
