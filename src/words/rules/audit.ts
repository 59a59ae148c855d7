/** The rules of the audit of a whole block: their names, and what English says of each. */
import { begun, clause, type Figure, held, type Saying } from '../rule-words.js';

export const AUDIT_RULES = [
  'audit-balance-days',
  'audit-bone-back',
  'audit-bone-balance',
  'audit-direct-set',
  'audit-group-days',
  'audit-indirect-set',
  'audit-push-pull',
  'audit-side-side',
  'audit-squat-hinge',
  'audit-unknown-muscle',
  'audit-weekly-sets',
] as const;
export type AuditRuleName = (typeof AUDIT_RULES)[number];

/** `Chest, arms: fewer than …`. */
const ofGroups = (f: Figure, said: string): string => begun(clause(f('group'), (names) => `${names}: `) + said);

/** How many there are where the plan falls short. */
const found = (f: Figure, name: string): string =>
  clause(f(name), (n) => `; here it is ${n.startsWith('0') ? 'none' : n}`);

/** `: 8 sets against 3 in week 1`. */
const against = (f: Figure, one: string, other: string): string =>
  clause(f(one), (n) => `: ${n} ${n === '1' ? 'set' : 'sets'} against ${f(other)} in week ${f('week')}`);

export const englishAudit: Readonly<Record<AuditRuleName, Saying>> = {
  'audit-balance-days': (f) =>
    `From 65, strength and balance belong on at least ${held(f, '3 days')} of the week${found(f, 'days')}.`,
  'audit-bone-back': (f) =>
    `With low bone density, every training day wants something for the back extensors${clause(f('days'), (n) => `; ${n} of this block without`)}.`,
  'audit-bone-balance': (f) =>
    `With low bone density, every training day wants something for balance${clause(f('days'), (n) => `; ${n} of this block without`)}.`,
  'audit-direct-set': 'A set counts whole for the muscles it is mainly for.',
  'audit-group-days': (f) =>
    `${ofGroups(f, `trained on fewer than ${held(f, '2 days')} of the week, the least that is advised`)}.`,
  'audit-indirect-set': 'A set counts half for the muscles that only assist.',
  'audit-push-pull': (f) => `Pushes and pulls are far apart in number${against(f, 'push', 'pull')}.`,
  'audit-side-side': (f) =>
    `One side works more than the other${clause(f('exercise'), (name) => ` in the ${name}`)}${clause(f('side'), (side) => `: the ${side}, by up to ${f('sets')} a week`)}.`,
  'audit-squat-hinge': (f) =>
    `Squats and lunges together are far apart in number from hinges${against(f, 'squat', 'hinge')}.`,
  'audit-unknown-muscle': (f) =>
    `A muscle of no major group is counted nowhere${clause(f('muscle'), (names) => `: ${names}`)}${clause(f('exercise'), (names) => ` (${names})`)}. Write its anatomical name.`,
  'audit-weekly-sets': (f) =>
    `${ofGroups(f, `fewer than ${held(f, '4 sets')} in a work week, the least that is advised`)}.`,
};
