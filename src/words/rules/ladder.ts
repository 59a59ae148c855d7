/** The rules of the ladder: their names, and what English says of each. */
import type { RuleWords } from '../rule-words.js';

export const LADDER_RULES = [] as const;
export type LadderRuleName = (typeof LADDER_RULES)[number];

export const englishLadder: Readonly<Record<LadderRuleName, RuleWords>> = {};
