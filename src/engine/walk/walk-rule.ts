/** The kinds of rule the walk is made of. Every rule has a row in the rulebook and may be taken out by its id. */
import type { Grams, Tenths } from '../../model/quantity.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { StepRule, WalkFinding } from '../walk-step.js';
import type { Candidate, Place, Situation } from './situation.js';
import type { Trail } from './trail.js';

/** A way on. The walk takes the first whose guards all permit it. */
export interface StepOfWalk {
  readonly kind: 'step';
  readonly row: Rule;
  /** Where it would go; `null` where there is nothing of its sort to go to. */
  readonly next: (at: Situation, ahead: Ahead) => Candidate | null;
  /** In the order they are asked; the first that refuses is the reason given. */
  readonly guards: readonly Guard[];
  readonly outcome: 'rise' | 'gate' | 'trial';
  readonly named: StepRule;
}

/** The next load, tempo and version from where the walk stands. */
export interface Ahead {
  readonly load: Candidate | null;
  readonly tempo: Candidate | null;
  readonly version: Candidate | null;
}

export interface Guard {
  readonly kind: 'guard';
  readonly row: Rule;
  readonly permits: (at: Situation, next: Candidate) => boolean;
  /** The figures with which it refuses. */
  readonly numbers: (at: Situation, next: Candidate) => readonly ReasonInput[];
}

/** A limit to the reps of a set: the most it allows at a place, given its reps to failure. */
export interface Limit {
  readonly kind: 'limit';
  readonly row: Rule;
  /** Limits of work weeks, of easy weeks, or of both. */
  readonly weeks: 'work' | 'easy' | 'both';
  readonly most: (at: Situation, place: Place, toFailure: Tenths) => number;
}

/** A set one may fall back on where nothing in the range leaves the floor. */
export interface Fallback {
  readonly place: Place;
  readonly reps: number;
  readonly reserve: Tenths;
  readonly external: Grams;
}

/** Where fallbacks come from. Those of the same `turn` are weighed together, a later turn only if there are none. */
export interface Fall {
  readonly kind: 'fall';
  readonly row: Rule;
  readonly turn: 1 | 2;
  readonly named: 'fewer-reps' | 'normal-tempo' | 'lower-load' | 'easier-version';
  readonly offers: (at: Situation) => readonly Fallback[];
}

/** An order between fallbacks: below 0 where `a` comes first. Asked in order until one decides. */
export interface Preference {
  readonly kind: 'preference';
  readonly row: Rule;
  readonly compare: (at: Situation, a: Fallback, b: Fallback) => number;
}

/** A condition for an occurrence to count as earned. */
export interface Earning {
  readonly kind: 'earning';
  readonly row: Rule;
  readonly holds: (at: Situation, reps: number, reserve: Tenths) => boolean;
}

/** Something the coach is told about a whole walk; `null` where there is nothing to tell. */
export interface Telling {
  readonly kind: 'telling';
  readonly row: Rule;
  readonly tell: (trail: Trail) => WalkFinding | null;
}

/** A value or a habit that other rules and the walk consult. */
export interface Custom {
  readonly kind: 'custom';
  readonly row: Rule;
}

export type RuleOfWalk = StepOfWalk | Guard | Limit | Fall | Preference | Earning | Telling | Custom;
