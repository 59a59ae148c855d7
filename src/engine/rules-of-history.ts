/** The rules of what came back and what was seen: of marks, of pain, and of the coach's observations. */
import type { Rule } from '../model/reason.js';

const RULES_OF_MARKS: readonly Rule[] = [];

const RULES_OF_SEEN: readonly Rule[] = [];

export const RULES_OF_HISTORY: readonly Rule[] = [...RULES_OF_MARKS, ...RULES_OF_SEEN];
