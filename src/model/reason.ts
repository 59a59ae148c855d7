/** Why a number is what it is. Data only: `words` makes the sentence, in the reader's language. */
import type { RuleId } from './identity.js';
import type { Confidence } from './quantity.js';

export type Audience = 'coach' | 'client';

export interface ReasonInput {
  readonly name: string;
  readonly value: number | string;
  /** `g`, `tenths`, `reps`, `per-mille`, `per-ten-thousand`, `s`, `weeks`, or empty for a bare word or count. */
  readonly unit: string;
}

export interface Reason {
  readonly rule: RuleId;
  /** Empty until filled outside the engine. */
  readonly says: string;
  readonly inputs: readonly ReasonInput[];
  readonly source: string;
  readonly confidence: Confidence;
  readonly audience: Audience;
}

/** How faithful a rule's value is to where it comes from. */
export type Standing = 'published' | 'derived' | 'adapted' | 'practice';

/** One row of the rulebook: the value and its source on the same line. */
export interface Rule {
  readonly id: RuleId;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  /** Page, table or paragraph in the source; empty for practice. */
  readonly locator: string;
  readonly standing: Standing;
  /** When the value was last looked at. */
  readonly date: string;
  readonly overridden?: { readonly value: number; readonly reason: string };
}
