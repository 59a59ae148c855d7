/** A reason that rests on one rule of the rulebook. */
import type { Confidence } from '../model/quantity.js';
import type { Audience, Reason, ReasonInput, Rule } from '../model/reason.js';

export function reasonOf(
  rule: Rule,
  audience: Audience,
  inputs: readonly ReasonInput[],
  confidence: Confidence = 'estimated',
): Reason {
  return { rule: rule.id, says: '', inputs, source: rule.source, confidence, audience };
}
