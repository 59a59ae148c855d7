/** The rules of the audit of a whole block: their names, and what English says of each. */
import type { RuleWords } from '../rule-words.js';

export const AUDIT_RULES = [] as const;
export type AuditRuleName = (typeof AUDIT_RULES)[number];

export const englishAudit: Readonly<Record<AuditRuleName, RuleWords>> = {};
