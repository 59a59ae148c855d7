/** The rules of versions, cautions and sign-offs, in order of id. */
import type { Rule } from '../model/reason.js';
import { CAUTION_IN_BLOCK } from './rules/caution-in-block.js';
import { CEILING_ARMS } from './rules/ceiling-arms.js';
import { CEILING_LOAD } from './rules/ceiling-load.js';
import { EASIER_IN_KIT } from './rules/easier-in-kit.js';
import { SIGN_OFF_LAPSES } from './rules/sign-off-lapses.js';
import { VERSION_CHOSEN } from './rules/version-chosen.js';

export const RULES_OF_VERSIONS: readonly Rule[] = [
  CAUTION_IN_BLOCK,
  CEILING_ARMS,
  CEILING_LOAD,
  EASIER_IN_KIT,
  SIGN_OFF_LAPSES,
  VERSION_CHOSEN,
];
