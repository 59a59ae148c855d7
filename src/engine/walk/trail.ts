/** A walk that has been walked: its steps, and what findings and gates need of the way. */
import type { WalkStep } from '../walk-step.js';
import type { Situation } from './situation.js';

/** What one occurrence leaves to the next. */
export type Standing = Omit<Situation, 'occurrence' | 'week'>;

export interface Trail {
  readonly steps: readonly WalkStep[];
  /** The situation before each step. */
  readonly situations: readonly Situation[];
  /** Where the gate stands, and what the walk had come to before it. */
  readonly gated: { readonly index: number; readonly before: Standing } | null;
}
