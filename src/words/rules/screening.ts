/** The rules of screening and health: their names, and what English says of each. */
import { held, only, type RuleWords } from '../rule-words.js';

export const SCREENING_RULES = ['adult-from', 'clearance-holds', 'older-from', 'screening-holds'] as const;
export type ScreeningRuleName = (typeof SCREENING_RULES)[number];

export const englishScreening: Readonly<Record<ScreeningRuleName, RuleWords>> = {
  'adult-from': only((f) => `Nobody under ${held(f, '18')} is planned for.`),
  'clearance-holds': only('A clearance must reach to the end of the block, and be no older than a year by then.'),
  'older-from': only((f) => `From ${held(f, '65')} a client counts as older.`),
  'screening-holds': only((f) => `Screening answers older than ${held(f, '365 days')} are asked again.`),
};
