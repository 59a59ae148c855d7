/** What a combination that was never tested itself can be done with: what its weakest part can. */
import type { Exercise } from '../../model/exercise.js';
import type { Grams, Tenths } from '../../model/quantity.js';
import type { VersionInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { readCapacity, type TestedCapacity } from '../capacity/read-capacity.js';
import { bodyPart, capacityOf, heaviestFor, isCounted } from '../capacity.js';
import { handsOf } from '../kit/hands.js';
import { versionOf } from '../versions/chain-versions.js';
import type { Judge, Judged } from '../versions/judge-version.js';

export interface WeakestPart {
  readonly part: Judged;
  readonly version: VersionInput;
  readonly tested: TestedCapacity;
  /** In all hands: the lightest of the loads the parts were tested with. */
  readonly most: Grams;
}

/**
 * The part whose heaviest load for `needed` reps to failure is least, of equal ones the first. `null` unless every part
 * was tested, with a load that counts, on the same sides and with as many hands full as the combination.
 */
export function weakestPart(context: BlockContext, own: Judged, judge: Judge, needed: Tenths): WeakestPart | null {
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const { parts } = own.exercise.facts;
  let weakest: (WeakestPart & { readonly load: number }) | null = null;
  let most = Number.MAX_SAFE_INTEGER;
  for (const id of parts) {
    const exercise = context.exercises.get(id);
    if (exercise === undefined || !isDoneAlike(exercise, own.exercise)) return null;
    const part = judge(exercise);
    const version = versionOf(part);
    const tested = readCapacity(context, part, version);
    if (tested === null || !isCounted(version, bodyMass)) return null;
    const k = capacityOf('epley', tested.capacity, true);
    const load = heaviestFor('epley', k, tested.capacity.reps, needed) - bodyPart(version.share, bodyMass);
    most = Math.min(most, tested.external);
    if (weakest === null || load < weakest.load) weakest = { part, version, tested, most, load };
  }
  return weakest === null ? null : { ...weakest, most };
}

/** Parts whose test says nothing of the combination: done on other sides, or with other hands full. In their order. */
export const heldOtherwise = ({ client, exercises, today }: BlockContext, own: Exercise): readonly Exercise[] =>
  own.facts.parts
    .flatMap((id) => exercises.get(id) ?? [])
    .filter((part) => !isDoneAlike(part, own))
    .filter((part) => client.tests.some((test) => test.date <= today && exercises.get(test.exercise) === part));

function isDoneAlike({ facts: part }: Exercise, { facts: whole }: Exercise): boolean {
  return part.sides === whole.sides && handsOf(part.kit.load[0]) === handsOf(whole.kit.load[0]);
}
