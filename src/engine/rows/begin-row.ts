/** Where one row begins: from a test, from a relative that was tested, or unknown, with a feeler set. */
import type { Grams } from '../../model/quantity.js';
import type { CapacityInput, StrandInput, VersionInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { readCapacity, type TestedCapacity } from '../capacity/read-capacity.js';
import { capacityOf, carriedCapacity, externalLoad, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { askedReserve, floorIn, floorsOf } from '../effort/plan-effort.js';
import { isAtMost } from '../kit/at-most.js';
import { NEW_MOVEMENT_LIGHTER } from '../rules/new-movement-lighter.js';
import { carries, versionOf } from '../versions/chain-versions.js';
import type { Judged } from '../versions/judge-version.js';
import type { Link } from '../versions/linked-versions.js';
import type { Versions, WalkFitted } from './fit-rows.js';
import { walkValues } from './walk-values.js';

export interface Beginning {
  readonly how: 'tested' | 'relative' | 'feeler';
  readonly capacity: CapacityInput | null;
  readonly start: StrandInput['start'];
  /** The test it rests on, the row's own or its relative's. */
  readonly tested: TestedCapacity | null;
  /** The exercise tested. */
  readonly source: Judged | null;
}

/**
 * From the row's own test: the load tested, or the heaviest that can be made below it. Without one, from the first
 * linked version that was tested and from which capacity passes: the heaviest load that leaves the asked reserve at
 * the bottom of the range and is no heavier than the load tested, and then one lighter, since the movement is new. Else
 * nothing is claimed.
 */
export function beginRow(context: BlockContext, fitted: WalkFitted, versions: Versions): Beginning {
  const { judged, base, versions: chain } = fitted.chain;
  const own = judged[base];
  const version = chain[base];
  if (own === undefined || version === undefined) return FEELER;
  const tested = readCapacity(context, own, version);
  if (tested !== null) {
    const load = heaviestUpTo(version, tested.grams);
    if (load === null) return { ...FEELER, tested, source: own };
    const start = { version: base, load, tempo: 0, earned: 0 } as const;
    return { how: 'tested', capacity: tested.capacity, start, tested, source: own };
  }
  return fromRelative(context, fitted, own, version, versions) ?? FEELER;
}

const FEELER: Beginning = { how: 'feeler', capacity: null, start: null, tested: null, source: null };

function heaviestUpTo(version: VersionInput, grams: Grams): Grams | null {
  return version.loads.filter((load) => isAtMost(load, grams)).at(-1)?.grams ?? null;
}

function fromRelative(
  context: BlockContext,
  fitted: WalkFitted,
  own: Judged,
  version: VersionInput,
  { judge, linksOf }: Versions,
): Beginning | null {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const links = linksOf(own.exercise);
  const relatives = [
    ...links.easier.map((link) => ({ link, back: 'harder' as const })),
    ...links.harder.map((link) => ({ link, back: 'easier' as const })),
  ];
  for (const { link, back } of relatives) {
    const relative = judge(link.to);
    const returning = linksOf(link.to)[back].find(({ to }) => to.id === own.exercise.id);
    if (returning === undefined || !carries(relative, own, returning, bodyMass)) continue;
    const theirs = versionOf(relative, bodyMass);
    const tested = readCapacity(context, relative, theirs);
    const capacity = tested === null ? null : passOn(tested.capacity, theirs, version, returning, bodyMass);
    if (tested === null || capacity === null) continue;
    const load = firstLoad(context, fitted, version, capacity, tested.external);
    if (load === null) continue;
    const start = { version: fitted.chain.base, load, tempo: 0, earned: 0 } as const;
    return { how: 'relative', capacity, start, tested, source: relative };
  }
  return null;
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

function firstLoad(
  context: BlockContext,
  fitted: WalkFitted,
  version: VersionInput,
  capacity: CapacityInput,
  /** In all hands: the heaviest the client was seen with. */
  most: Grams,
): Grams | null {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const counted = isCounted(version, bodyMass);
  if (!counted) return version.loads.length === 1 ? (version.loads[0]?.grams ?? null) : null;
  const k = capacityOf('epley', capacity, true);
  const needed = 10 * fitted.reps.min + firstAsked(context, fitted) - walkValues(context.rules).tolerance;
  const fits = version.loads.filter(
    (load) =>
      isAtMost({ ...load, grams: externalLoad(load) }, most) &&
      repsToFailure('epley', k, capacity.reps, resistedLoad(version, load, bodyMass)) >= needed,
  );
  if (fits.length === 0) return null;
  const index = Math.max(0, fits.length - 1 - context.rules.valueOf(NEW_MOVEMENT_LIGHTER));
  return fits[index]?.grams ?? null;
}

/** Asked reserve of the block's first week. */
function firstAsked(context: BlockContext, fitted: WalkFitted): number {
  const curve = context.programme.curve[0];
  const floor = floorIn(1, floorsOf(context))?.reserve ?? 0;
  return curve === undefined ? floor : askedReserve(context, curve, fitted.effort, floor, fitted.inCircuit);
}
