/** The rules of what came back and what was seen: their names, and what English says of each. */
import type { RuleWords } from '../rule-words.js';

/** Of marks and of pain. */
const MARK_RULES = [] as const;

/** Of what the coach saw. */
const SEEN_RULES = [] as const;

export const HISTORY_RULES = [...MARK_RULES, ...SEEN_RULES] as const;
export type HistoryRuleName = (typeof HISTORY_RULES)[number];

const englishMarks: Readonly<Record<(typeof MARK_RULES)[number], RuleWords>> = {};

const englishSeen: Readonly<Record<(typeof SEEN_RULES)[number], RuleWords>> = {};

export const englishHistory: Readonly<Record<HistoryRuleName, RuleWords>> = { ...englishMarks, ...englishSeen };
