/** The rules of the audit of a whole block, in order of id. */
import type { Rule } from '../model/reason.js';
import { AUDIT_BALANCE_DAYS } from './rules/audit-balance-days.js';
import { AUDIT_BONE_BACK } from './rules/audit-bone-back.js';
import { AUDIT_BONE_BALANCE } from './rules/audit-bone-balance.js';
import { AUDIT_DIRECT_SET } from './rules/audit-direct-set.js';
import { AUDIT_GROUP_DAYS } from './rules/audit-group-days.js';
import { AUDIT_INDIRECT_SET } from './rules/audit-indirect-set.js';
import { AUDIT_PUSH_PULL } from './rules/audit-push-pull.js';
import { AUDIT_SIDE_SIDE } from './rules/audit-side-side.js';
import { AUDIT_SQUAT_HINGE } from './rules/audit-squat-hinge.js';
import { AUDIT_UNKNOWN_MUSCLE } from './rules/audit-unknown-muscle.js';
import { AUDIT_WEEKLY_SETS } from './rules/audit-weekly-sets.js';

export const RULES_OF_THE_AUDIT: readonly Rule[] = [
  AUDIT_BALANCE_DAYS,
  AUDIT_BONE_BACK,
  AUDIT_BONE_BALANCE,
  AUDIT_DIRECT_SET,
  AUDIT_GROUP_DAYS,
  AUDIT_INDIRECT_SET,
  AUDIT_PUSH_PULL,
  AUDIT_SIDE_SIDE,
  AUDIT_SQUAT_HINGE,
  AUDIT_UNKNOWN_MUSCLE,
  AUDIT_WEEKLY_SETS,
];
