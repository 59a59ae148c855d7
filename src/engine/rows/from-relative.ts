/** Where a row begins that was never tested itself: from a linked version that was, weakly and one load lighter. */
import type { MakeableLoad } from '../../model/kit.js';
import type { Grams, Tenths } from '../../model/quantity.js';
import type { CapacityInput, VersionInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { readCapacity, type TestedCapacity } from '../capacity/read-capacity.js';
import { capacityOf, carriedCapacity, externalLoad, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { askedReserve, floorIn, floorsOf, floorsOfRow } from '../effort/plan-effort.js';
import { isAtMost } from '../kit/at-most.js';
import { NEW_MOVEMENT_LIGHTER } from '../rules/new-movement-lighter.js';
import { carries, versionOf } from '../versions/chain-versions.js';
import type { Judged } from '../versions/judge-version.js';
import type { Link } from '../versions/linked-versions.js';
import type { Found } from './beginning.js';
import { caresAtStart } from './cares-met.js';
import type { Versions, WalkFitted } from './fit-rows.js';
import { isHurried } from './planned-by.js';
import { walkValues } from './walk-values.js';

/** A linked version that was tested, and what its test says here. */
interface PassedOn {
  readonly relative: Judged;
  readonly tested: TestedCapacity;
  readonly capacity: CapacityInput;
}

/** `null` where no linked version was tested from which capacity passes, or none of its loads may be begun with. */
export function fromRelative(
  context: BlockContext,
  fitted: WalkFitted,
  own: Judged,
  version: VersionInput,
  versions: Versions,
): Found | null {
  for (const { relative, tested, capacity } of passedOn(context, own, version, versions)) {
    const load = firstLoad(context, fitted, version, capacity, tested.external);
    if (load === null) continue;
    const start = { version: fitted.chain.base, load, tempo: 0, earned: 0 } as const;
    return { how: 'relative', capacity, start, tested, source: relative };
  }
  return null;
}

/**
 * Whether a relative's test says that the lightest load leaves the asked reserve at the bottom of the range: then a
 * feeler set with it is well within reach.
 */
export function relativeAllows(
  context: BlockContext,
  fitted: WalkFitted,
  own: Judged,
  version: VersionInput,
  versions: Versions,
): boolean {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const [lightest] = version.loads;
  if (lightest === undefined) return false;
  const counted = isCounted(version, bodyMass);
  const resisted = counted ? resistedLoad(version, lightest, bodyMass) : 1;
  return passedOn(context, own, version, versions).some(({ capacity }) => {
    const k = capacityOf('epley', capacity, counted);
    return repsToFailure('epley', k, capacity.reps, resisted) >= neededAtFirst(context, fitted);
  });
}

function passedOn(
  context: BlockContext,
  own: Judged,
  version: VersionInput,
  { judge, linksOf }: Versions,
): readonly PassedOn[] {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const links = linksOf(own.exercise);
  const relatives = [
    ...links.easier.map((link) => ({ link, back: 'harder' as const })),
    ...links.harder.map((link) => ({ link, back: 'easier' as const })),
  ];
  return relatives.flatMap(({ link, back }): readonly PassedOn[] => {
    const relative = judge(link.to);
    const returning = linksOf(link.to)[back].find(({ to }) => to.id === own.exercise.id);
    if (returning === undefined || !carries(relative, own, returning, bodyMass)) return [];
    const theirs = versionOf(relative);
    const tested = readCapacity(context, relative, theirs);
    const capacity = tested === null ? null : passOn(tested.capacity, theirs, version, returning, bodyMass);
    return tested === null || capacity === null ? [] : [{ relative, tested, capacity }];
  });
}

/** What a relative's test says of this version: never measured, so weak. */
function passOn(
  from: CapacityInput,
  theirs: VersionInput,
  version: VersionInput,
  link: Link,
  bodyMass: Grams | null,
): CapacityInput | null {
  const a = { share: theirs.share, counted: isCounted(theirs, bodyMass) };
  const b = { share: version.share, counted: isCounted(version, bodyMass) };
  const before = capacityOf('epley', from, a.counted);
  const k = carriedCapacity(before, a, b, link.ratio);
  if (k === before) return { ...from, weak: true };
  if (b.counted) return { ...from, resisted: Math.floor(k / (300 + from.reps)), weak: true };
  const reps = k - 300;
  return reps > 0 ? { ...from, resisted: 1, reps, weak: true } : null;
}

/** The heaviest load no heavier than `most` that leaves the asked reserve, and then one lighter: the movement is new. */
export function firstLoad(
  context: BlockContext,
  fitted: WalkFitted,
  version: VersionInput,
  capacity: CapacityInput,
  /** In all hands: the heaviest the client was seen with. */
  most: Grams,
): Grams | null {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const counted = isCounted(version, bodyMass);
  const held = (load: MakeableLoad): boolean => isAtMost({ ...load, grams: externalLoad(load) }, most);
  const [only] = version.loads;
  if (!counted) return only !== undefined && version.loads.length === 1 && held(only) ? only.grams : null;
  const k = capacityOf('epley', capacity, true);
  const needed = neededAtFirst(context, fitted);
  const fits = version.loads.filter(
    (load) => held(load) && repsToFailure('epley', k, capacity.reps, resistedLoad(version, load, bodyMass)) >= needed,
  );
  if (fits.length === 0) return null;
  const index = Math.max(0, fits.length - 1 - context.rules.valueOf(NEW_MOVEMENT_LIGHTER));
  return fits[index]?.grams ?? null;
}

/** Reps to failure for the bottom of the range with the asked reserve of the first week, less the tolerance. */
export const neededAtFirst = (context: BlockContext, fitted: WalkFitted): Tenths =>
  10 * fitted.reps.min + firstAsked(context, fitted) - walkValues(context.rules).tolerance;

function firstAsked(context: BlockContext, fitted: WalkFitted): number {
  const curve = context.programme.curve[0];
  const floors = floorsOfRow(context, floorsOf(context), caresAtStart(fitted).length > 0, fitted.dose);
  const floor = floorIn(1, floors)?.reserve ?? 0;
  return curve === undefined ? floor : askedReserve(context, curve, fitted.effort, floor, isHurried(fitted));
}
