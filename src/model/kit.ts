/** What a client owns, and what an exercise needs. */
import type { KitItemId } from './identity.js';
import type { Grams, Mass } from './quantity.js';

/** Kinds that have a mass and can be lifted. */
export type LoadKind = 'bell' | 'dumbbell' | 'handle' | 'bar' | 'plate';
/** Kinds that are there or not. */
export type ThingKind = 'bench' | 'step' | 'chair' | 'wall' | 'mat' | 'box';
export type KitKind = LoadKind | ThingKind | 'band';

export type KitItem =
  | { readonly id: KitItemId; readonly kind: LoadKind; readonly mass: Mass }
  | { readonly id: KitItemId; readonly kind: 'band'; readonly step: number; readonly label: string }
  | { readonly id: KitItemId; readonly kind: ThingKind };

/** Clear height and floor at home, where known. */
export interface Room {
  readonly ceilingMillimetres?: number;
  readonly floorMillimetres?: { readonly long: number; readonly wide: number };
}

/**
 * What an exercise is loaded with. `one` item, an equal `pair`, a `bar` or a `handle` with plates;
 * where several are listed any of them will do, in the order preferred.
 */
export type LoadNeed =
  | { readonly kind: 'bell' | 'dumbbell'; readonly count: 1 | 2; readonly unequal: boolean }
  | { readonly kind: 'bar' }
  | { readonly kind: 'band' };

export interface KitNeed {
  /** Ways to load it, any one; empty for an exercise without a load. */
  readonly load: readonly LoadNeed[];
  /** May also be done with nothing in the hands. */
  readonly unloaded: boolean;
  /** All of these. */
  readonly things: readonly ThingKind[];
}

/**
 * How the load is counted: what one hand holds, what both hold together, what is added to the body (a vest, a
 * bell on the lap), what is taken off it (a band under the foot), or a band by its step.
 */
export type LoadMode = 'per-hand' | 'total' | 'added' | 'assisted' | 'band';

/** One load that can be made from this kit, with the items that make it. */
export interface MakeableLoad {
  /** What one hand holds (`per-hand`) or both hold together (`total`). */
  readonly grams: Grams;
  readonly mode: LoadMode;
  readonly pieces: readonly { readonly id: KitItemId; readonly grams: Grams }[];
  /** As printed: `16 kg`, `35 lb`. */
  readonly label: string;
}
