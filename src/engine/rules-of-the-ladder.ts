/** The rules of the ladder, in order of id. */
import type { Rule } from '../model/reason.js';

export const RULES_OF_THE_LADDER: readonly Rule[] = [];
