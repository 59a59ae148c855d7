/** What the whole walk tells the coach: what it could not climb past, and what would help. */
import type { WalkFinding } from '../walk-step.js';
import type { Trail } from './walk-on.js';

export function findingsOf(_trail: Trail): readonly WalkFinding[] {
  return [];
}
