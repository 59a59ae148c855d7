/** The rules of screening and health, in order of id. */
import type { Rule } from '../model/reason.js';
import { ADULT_FROM } from './rules/adult-from.js';
import { CLEARANCE_HOLDS } from './rules/clearance-holds.js';
import { OLDER_FROM } from './rules/older-from.js';
import { SCREENING_HOLDS } from './rules/screening-holds.js';

export const RULES_OF_SCREENING: readonly Rule[] = [ADULT_FROM, CLEARANCE_HOLDS, OLDER_FROM, SCREENING_HOLDS];
