/** The rules of the audit of a whole block, in order of id. */
import type { Rule } from '../model/reason.js';

export const RULES_OF_THE_AUDIT: readonly Rule[] = [];
