/** The rules of versions, cautions and sign-offs, of breaks, and of tests, in order of id. */
import type { Rule } from '../model/reason.js';
import { BIRTH_TEST } from './rules/birth-test.js';
import { BREAK_AWAY } from './rules/break-away.js';
import { BREAK_COUNTS } from './rules/break-counts.js';
import { BREAK_FLOOR } from './rules/break-floor.js';
import { BREAK_FLOOR_WEEKS } from './rules/break-floor-weeks.js';
import { BREAK_HELD } from './rules/break-held.js';
import { BREAK_HELD_ILL } from './rules/break-held-ill.js';
import { BREAK_HURT } from './rules/break-hurt.js';
import { BREAK_ILL } from './rules/break-ill.js';
import { BREAK_JOINED } from './rules/break-joined.js';
import { CAUTION_IN_BLOCK } from './rules/caution-in-block.js';
import { CAUTION_MET } from './rules/caution-met.js';
import { CAUTION_REVIEW } from './rules/caution-review.js';
import { CEILING_ARMS } from './rules/ceiling-arms.js';
import { CEILING_LOAD } from './rules/ceiling-load.js';
import { CHAIR_STAND_LOW } from './rules/chair-stand-low.js';
import { CHAIR_STAND_NORM } from './rules/chair-stand-norm.js';
import { CHAIR_STAND_SECONDS } from './rules/chair-stand-seconds.js';
import { EASIER_IN_KIT } from './rules/easier-in-kit.js';
import { GAIN_RETURN } from './rules/gain-return.js';
import { GAIN_STEADY } from './rules/gain-steady.js';
import { MEASURES_APART } from './rules/measures-apart.js';
import { MISSED_SESSION } from './rules/missed-session.js';
import { ONE_LEG_SECONDS } from './rules/one-leg-seconds.js';
import { PREGNANCY_TEST } from './rules/pregnancy-test.js';
import { RETURN_CUT_FIRST } from './rules/return-cut-first.js';
import { RETURN_CUT_FOURTH } from './rules/return-cut-fourth.js';
import { RETURN_CUT_SECOND } from './rules/return-cut-second.js';
import { RETURN_CUT_THIRD } from './rules/return-cut-third.js';
import { RETURN_DAYS_FIRST } from './rules/return-days-first.js';
import { RETURN_DAYS_SECOND } from './rules/return-days-second.js';
import { RETURN_LIGHTER } from './rules/return-lighter.js';
import { RETURN_REST_FIRST } from './rules/return-rest-first.js';
import { RETURN_REST_SECOND } from './rules/return-rest-second.js';
import { RETURN_VOLUME } from './rules/return-volume.js';
import { SAME_BELL } from './rules/same-bell.js';
import { SIGN_OFF_LAPSES } from './rules/sign-off-lapses.js';
import { STRENGTH_KEPT } from './rules/strength-kept.js';
import { STRENGTH_KEPT_OLDER } from './rules/strength-kept-older.js';
import { STRENGTH_UNKNOWN } from './rules/strength-unknown.js';
import { TEST_MOST } from './rules/test-most.js';
import { TEST_NOT_COUNTED } from './rules/test-not-counted.js';
import { TEST_ONCE } from './rules/test-once.js';
import { TEST_RESERVE } from './rules/test-reserve.js';
import { TEST_WAITS } from './rules/test-waits.js';
import { VERSION_CHOSEN } from './rules/version-chosen.js';
import { WAY_UNLOCKS } from './rules/way-unlocks.js';
import { WOULD_UNLOCK } from './rules/would-unlock.js';

export const RULES_OF_VERSIONS: readonly Rule[] = [
  BIRTH_TEST,
  BREAK_AWAY,
  BREAK_COUNTS,
  BREAK_FLOOR,
  BREAK_FLOOR_WEEKS,
  BREAK_HELD,
  BREAK_HELD_ILL,
  BREAK_HURT,
  BREAK_ILL,
  BREAK_JOINED,
  CAUTION_IN_BLOCK,
  CAUTION_MET,
  CAUTION_REVIEW,
  CEILING_ARMS,
  CEILING_LOAD,
  CHAIR_STAND_LOW,
  CHAIR_STAND_NORM,
  CHAIR_STAND_SECONDS,
  EASIER_IN_KIT,
  GAIN_RETURN,
  GAIN_STEADY,
  MEASURES_APART,
  MISSED_SESSION,
  ONE_LEG_SECONDS,
  PREGNANCY_TEST,
  RETURN_CUT_FIRST,
  RETURN_CUT_FOURTH,
  RETURN_CUT_SECOND,
  RETURN_CUT_THIRD,
  RETURN_DAYS_FIRST,
  RETURN_DAYS_SECOND,
  RETURN_LIGHTER,
  RETURN_REST_FIRST,
  RETURN_REST_SECOND,
  RETURN_VOLUME,
  SAME_BELL,
  SIGN_OFF_LAPSES,
  STRENGTH_KEPT,
  STRENGTH_KEPT_OLDER,
  STRENGTH_UNKNOWN,
  TEST_MOST,
  TEST_NOT_COUNTED,
  TEST_ONCE,
  TEST_RESERVE,
  TEST_WAITS,
  VERSION_CHOSEN,
  WAY_UNLOCKS,
  WOULD_UNLOCK,
];
