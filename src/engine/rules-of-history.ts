/** The rules of what came back and what was seen: of marks, of pain, and of the coach's observations. */
import type { Rule } from '../model/reason.js';
import { DONE_DAYS } from './rules/done-days.js';
import { DONE_EARNED } from './rules/done-earned.js';
import { DONE_EASIER } from './rules/done-easier.js';
import { DONE_GAP } from './rules/done-gap.js';
import { DONE_GREATEST } from './rules/done-greatest.js';
import { DONE_MEDIAN } from './rules/done-median.js';
import { DONE_MISSED } from './rules/done-missed.js';
import { DONE_OVER_TARGET } from './rules/done-over-target.js';
import { DONE_QUIET } from './rules/done-quiet.js';
import { DONE_SIDE } from './rules/done-side.js';
import { DONE_TRIAL } from './rules/done-trial.js';
import { DONE_UNSAID } from './rules/done-unsaid.js';
import { PAIN_ALARM } from './rules/pain-alarm.js';
import { PAIN_BACK } from './rules/pain-back.js';
import { PAIN_EASIER } from './rules/pain-easier.js';
import { PAIN_GENTLE } from './rules/pain-gentle.js';
import { PAIN_HOLD_DAYS } from './rules/pain-hold-days.js';
import { PAIN_LEAVE } from './rules/pain-leave.js';
import { PAIN_NEXT_MORNING } from './rules/pain-next-morning.js';
import { PAIN_SIGN_OFF } from './rules/pain-sign-off.js';
import { SEEN_BALANCE } from './rules/seen-balance.js';
import { SEEN_BREATH } from './rules/seen-breath.js';
import { SEEN_DAYS } from './rules/seen-days.js';
import { SEEN_GRIP } from './rules/seen-grip.js';
import { SEEN_HEAVY } from './rules/seen-heavy.js';
import { SEEN_HOLD_DAYS } from './rules/seen-hold-days.js';
import { SEEN_HURRYING } from './rules/seen-hurrying.js';
import { SEEN_LIGHT } from './rules/seen-light.js';
import { SEEN_MISSED_REPS } from './rules/seen-missed-reps.js';
import { SEEN_NEW } from './rules/seen-new.js';
import { SEEN_PAIN } from './rules/seen-pain.js';
import { SEEN_RESERVE } from './rules/seen-reserve.js';
import { SEEN_SHORTER_SIDE } from './rules/seen-shorter-side.js';
import { SEEN_WELL } from './rules/seen-well.js';

const RULES_OF_MARKS: readonly Rule[] = [
  DONE_MEDIAN,
  DONE_DAYS,
  DONE_UNSAID,
  DONE_EARNED,
  DONE_OVER_TARGET,
  DONE_MISSED,
  DONE_EASIER,
  DONE_GREATEST,
  DONE_GAP,
  DONE_SIDE,
  DONE_QUIET,
  DONE_TRIAL,
  PAIN_GENTLE,
  PAIN_HOLD_DAYS,
  PAIN_EASIER,
  PAIN_LEAVE,
  PAIN_BACK,
  PAIN_NEXT_MORNING,
  PAIN_ALARM,
  PAIN_SIGN_OFF,
];

const RULES_OF_SEEN: readonly Rule[] = [
  SEEN_BALANCE,
  SEEN_BREATH,
  SEEN_DAYS,
  SEEN_GRIP,
  SEEN_HEAVY,
  SEEN_HOLD_DAYS,
  SEEN_HURRYING,
  SEEN_LIGHT,
  SEEN_MISSED_REPS,
  SEEN_NEW,
  SEEN_PAIN,
  SEEN_RESERVE,
  SEEN_SHORTER_SIDE,
  SEEN_WELL,
];

export const RULES_OF_HISTORY: readonly Rule[] = [...RULES_OF_MARKS, ...RULES_OF_SEEN];
