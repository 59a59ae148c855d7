/** What the walk of one strand yields: one step an occurrence, in order, and what is worth telling the coach. */

import type { Grams, Tenths } from '../model/quantity.js';
import type { Reason } from '../model/reason.js';
import type { Ground } from './walk/situation.js';

/** Version, load and tempo, as indices into the strand's own lists; `load` in grams. */
export interface Option {
  readonly version: number;
  readonly load: Grams;
  readonly tempo: number;
}

/** Which rule of the step chose this option. */
export type StepRule =
  | 'start'
  | 'stay'
  | 'back-up'
  | 'small-step'
  | 'big-step'
  | 'slower'
  | 'harder-version'
  | 'fewer-reps'
  | 'normal-tempo'
  | 'lower-load'
  | 'easier-version'
  | 'easy-week';

export interface WalkStep {
  readonly week: number;
  readonly easy: boolean;
  readonly option: Option;
  readonly reps: number;
  readonly sets: number;
  /** Predicted reserve after a set, tempo counted. */
  readonly reserve: Tenths;
  readonly rule: StepRule;
  /** Replaces the first set. */
  readonly trial?: { readonly option: Option; readonly reps: number; readonly reserve: Tenths };
  /** A rise that must first be earned; `weeks` is empty where it was earned before this block. */
  readonly gate?: {
    readonly needs: {
      readonly option: Option;
      readonly reps: number;
      readonly reserve: Tenths;
      readonly weeks: readonly number[];
    };
  };
  /** On the gate's own step and every later one: what to do if the gate did not open. */
  readonly otherwise?: {
    readonly option: Option;
    readonly reps: number;
    readonly reserve: Tenths;
    readonly sets: number;
  };
  readonly relaxed: readonly string[];
  /**
   * Every next option considered, with the rule that refuses it; absent `refusedBy` is open. `predicted` is reps to
   * failure there, at normal tempo for a load or a version, 0 where nothing can be predicted.
   */
  readonly considered: readonly { readonly option: Option; readonly predicted: Tenths; readonly refusedBy?: string }[];
  /** After this occurrence. */
  readonly earned: 0 | 1 | 2;
  readonly reasons: readonly Reason[];
}

export interface WalkFinding {
  /** `kit-too-light`, `nothing-climbs`, `range-too-high`, `to-earn-a-try`. */
  readonly rule: string;
  readonly weeks: readonly number[];
  readonly reason: Reason;
}

export type WalkResult =
  | {
      readonly kind: 'walked';
      readonly steps: readonly WalkStep[];
      readonly findings: readonly WalkFinding[];
      readonly ground: Ground;
    }
  /** Nothing is known to start from: a feeler set, and no load is claimed. */
  | { readonly kind: 'feeler' }
  /** Nothing leaves the floor in this week: a client-scoped error. */
  | { readonly kind: 'impossible'; readonly week: number; readonly reason: Reason };
