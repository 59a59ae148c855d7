/** The rules of the weekly review: what is shown of a load, and what is proposed to the coach. They change no plan. */
import type { Rule } from '../model/reason.js';
import { PROPOSE_BREAK } from './rules/propose-break.js';
import { PROPOSE_CAUTION } from './rules/propose-caution.js';
import { PROPOSE_CAUTION_DAYS } from './rules/propose-caution-days.js';
import { PROPOSE_FEWER_DAYS } from './rules/propose-fewer-days.js';
import { PROPOSE_LOOK } from './rules/propose-look.js';
import { PROPOSE_MAIN_BELL } from './rules/propose-main-bell.js';
import { PROPOSE_MESSAGE } from './rules/propose-message.js';
import { PROPOSE_MINUTES } from './rules/propose-minutes.js';
import { PROPOSE_MINUTES_OVER } from './rules/propose-minutes-over.js';
import { PROPOSE_NEXT_BLOCK } from './rules/propose-next-block.js';
import { PROPOSE_REPEAT } from './rules/propose-repeat.js';
import { PROPOSE_SIGN_OFF } from './rules/propose-sign-off.js';
import { PROPOSE_TEST } from './rules/propose-test.js';
import { PROPOSE_TEST_WEAK } from './rules/propose-test-weak.js';
import { REVIEW_LOAD } from './rules/review-load.js';
import { REVIEW_SHARE } from './rules/review-share.js';

export const RULES_OF_REVIEW: readonly Rule[] = [
  REVIEW_LOAD,
  REVIEW_SHARE,
  PROPOSE_MESSAGE,
  PROPOSE_SIGN_OFF,
  PROPOSE_CAUTION,
  PROPOSE_CAUTION_DAYS,
  PROPOSE_BREAK,
  PROPOSE_NEXT_BLOCK,
  PROPOSE_REPEAT,
  PROPOSE_TEST,
  PROPOSE_TEST_WEAK,
  PROPOSE_FEWER_DAYS,
  PROPOSE_MINUTES,
  PROPOSE_MINUTES_OVER,
  PROPOSE_MAIN_BELL,
  PROPOSE_LOOK,
];
