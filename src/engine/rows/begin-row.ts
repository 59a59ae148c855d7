/** Where one row begins: from a test, from its parts or a relative that were tested, or unknown, with a feeler set. */
import type { Grams } from '../../model/quantity.js';
import type { CapacityInput, VersionInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { trustIn, WHOLE } from '../breaks/trust.js';
import { readCapacity, type TestedCapacity } from '../capacity/read-capacity.js';
import { isCounted } from '../capacity.js';
import { heaviestUpTo } from '../kit/at-most.js';
import { RETURN_LIGHTER } from '../rules/return-lighter.js';
import type { Judged } from '../versions/judge-version.js';
import type { Beginning, Begun, Found } from './beginning.js';
import { caresAtStart } from './cares-met.js';
import type { Versions, WalkFitted } from './fit-rows.js';
import { asRecalled, beginWhereItEnded } from './from-marks.js';
import { weakestPart } from './from-parts.js';
import { firstLoad, fromRelative, neededAtFirst } from './from-relative.js';
import { noHeavierThan, type RoleBell, roleBell } from './role-bell.js';
import { walkValues } from './walk-values.js';

/** As `begin` says, with what is remembered of the exercise and what a break has left of it. */
export function beginRow(context: BlockContext, fitted: WalkFitted, versions: Versions): Beginning {
  return trusted(context, asRecalled(context, fitted, begin(context, fitted, versions)));
}

/**
 * After a long break one load lighter and weak, or anew with a feeler set; else as it was. What it goes on from is made
 * lighter by a break since, and what says how much can be lifted is weak by one since: each by its own day.
 */
export function trusted(context: BlockContext, begun: Begun): Beginning {
  const { tested, source, capacity, start, since } = begun;
  const trust = tested === null ? WHOLE : trustIn(context, tested.test.date);
  const ended = since === undefined ? trust : trustIn(context, since);
  if (capacity === null || start === null) return { ...begun, trust, lighter: 0 };
  if (trust.kind === 'nothing') return { ...begun, ...FEELER, tested, source, trust, lighter: 0 };
  const known = trust.kind === 'whole' ? capacity : { ...capacity, weak: true };
  if (ended.kind === 'whole') return { ...begun, capacity: known, trust, lighter: 0 };
  const loads = begun.versions[start.version]?.loads ?? [];
  const index = loads.findIndex(({ grams }) => grams === start.load);
  const to = Math.max(0, index - context.rules.valueOf(RETURN_LIGHTER));
  const again = { ...start, load: loads[to]?.grams ?? start.load, tempo: 0, earned: 0 } as const;
  return { ...begun, capacity: known, start: again, trust: ended, lighter: Math.max(0, index - to) };
}

/**
 * Where it ended by its marks. Else from the row's own test: the load tested, or the heaviest that can be made below it, unless the row asks for a bell by
 * its role. Without one, a combination from its weakest part, and others from the first linked version that was tested
 * and from which capacity passes: the heaviest load that leaves the asked reserve at the bottom of the range and is no
 * heavier than what was tested, and then one lighter, since the movement is new. Else nothing is claimed.
 */
function begin(context: BlockContext, fitted: WalkFitted, versions: Versions): Begun {
  const { judged, base, versions: chain } = fitted.chain;
  const own = judged[base];
  const version = chain[base];
  if (own === undefined || version === undefined) return { ...FEELER, versions: chain, role: null };
  const { bell } = fitted.row;
  const role = bell === undefined ? null : roleBell(context, own.exercise, version.loads, bell);
  const exercises = judged.map(({ exercise }) => exercise);
  const within = role?.role === 'lighter' ? noHeavierThan(chain, exercises, base, role.load) : chain;
  // Nobody was tested in an easier way of the exercise.
  if (own.way !== null) return { ...FEELER, versions: within, role };
  const ended = role === null ? beginWhereItEnded(context, fitted, chain) : null;
  if (ended !== null) return ended;
  const tested = readCapacity(context, own, version);
  if (tested !== null) {
    const load = heaviestUpTo(version.loads, tested.grams)?.grams ?? null;
    if (load === null) return { ...FEELER, tested, source: own, versions: within, role };
    const asked = role === null ? load : loadByRole(context, fitted, tested, role);
    // Where the body is part of what is lifted and its mass not known, a test says nothing of a heavier load.
    const first = isCounted(version, context.client.bodyMass?.mass.grams ?? null) ? asked : Math.min(asked, load);
    const start = { version: base, load: first, tempo: 0, earned: 0 } as const;
    return { how: 'tested', capacity: tested.capacity, start, tested, source: own, versions: within, role };
  }
  if (own.exercise.facts.parts.length > 0) return fromParts(context, fitted, own, within, role, versions);
  return { ...(fromRelative(context, fitted, own, version, versions) ?? FEELER), versions: within, role };
}

const FEELER: Found = { how: 'feeler', capacity: null, start: null, tested: null, source: null };

/** The next bell up is begun with on a sound estimate only, and never while something asks for care. */
function loadByRole(context: BlockContext, fitted: WalkFitted, tested: TestedCapacity, role: RoleBell): Grams {
  if (role.role !== 'next up') return role.load;
  const { weak, reps } = tested.capacity;
  const { moderate, steady } = context.standing;
  const careful = moderate || steady || caresAtStart(fitted).length > 0;
  return weak || careful || reps > walkValues(context.rules).weakAbove ? role.main : role.load;
}

/** A combination carries its weakest part's capacity, with that part's share of the body. */
function fromParts(
  context: BlockContext,
  fitted: WalkFitted,
  own: Judged,
  chain: readonly VersionInput[],
  role: RoleBell | null,
  { judge }: Versions,
): Begun {
  const { base } = fitted.chain;
  const weakest = weakestPart(context, own, judge, neededAtFirst(context, fitted));
  const unknown = { ...FEELER, versions: chain, role };
  if (weakest === null) return unknown;
  const { part, version: theirs, tested, most } = weakest;
  const versions = chain.map((version, index) => (index === base ? { ...version, share: theirs.share } : version));
  const version = versions[base];
  const capacity: CapacityInput = { ...tested.capacity, weak: true };
  const load = version === undefined ? null : firstLoad(context, fitted, version, capacity, most);
  if (load === null) return unknown;
  const start = { version: base, load, tempo: 0, earned: 0 } as const;
  return { how: 'parts', capacity, start, tested, source: part, versions, role };
}
