/** What every `read…`, `check…` and `plan…` returns: a value, and what was found on the way. */
import type { Problem } from './problem.js';

export interface Result<Value> {
  readonly value: Value;
  readonly problems: readonly Problem[];
}

/** Thrown only for a fault in this program, never for what an author wrote. */
class BrokenInvariant extends Error {}

export function invariant(condition: unknown, what: string): asserts condition {
  if (!condition) throw new BrokenInvariant(what);
}
