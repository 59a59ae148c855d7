/**
 * The rules of the ladder. Those of the walk of rungs stand in the order they are asked; taking one out of that list
 * leaves the others as they are: a guard no longer refuses, a habit is not kept, nothing is told.
 */
import type { Rule } from '../model/reason.js';
import type { RuleOfLadder } from './ladder/ladder-rule.js';
import { DEAD_STOP_REPS } from './rules/dead-stop-reps.js';
import { HOLD_MOST } from './rules/hold-most.js';
import { ladderCounted } from './rules/ladder-counted.js';
import { ladderEarned } from './rules/ladder-earned.js';
import { ladderEasy } from './rules/ladder-easy.js';
import { ladderEasyDown } from './rules/ladder-easy-down.js';
import { ladderGate } from './rules/ladder-gate.js';
import { ladderGateOnce } from './rules/ladder-gate-once.js';
import { ladderHeld } from './rules/ladder-held.js';
import { ladderNewStage } from './rules/ladder-new-stage.js';
import { ladderOneAtATime } from './rules/ladder-one-at-a-time.js';
import { LADDER_START_LIGHTEST } from './rules/ladder-start-lightest.js';
import { LADDER_START_MAIN_BELL } from './rules/ladder-start-main-bell.js';
import { LADDER_START_ROLE } from './rules/ladder-start-role.js';
import { LADDER_START_SIGNED_OFF } from './rules/ladder-start-signed-off.js';
import { LADDER_START_TESTED } from './rules/ladder-start-tested.js';
import { LADDER_STEP_GRAMS } from './rules/ladder-step-grams.js';
import { LADDER_STEP_SHARE } from './rules/ladder-step-share.js';
import { ladderTop } from './rules/ladder-top.js';
import { ladderUp } from './rules/ladder-up.js';
import { ladderWeeks } from './rules/ladder-weeks.js';
import { MOBILITY_FIXED } from './rules/mobility-fixed.js';
import { NEXT_UP_FIRST } from './rules/next-up-first.js';
import { NEXT_UP_PASSED } from './rules/next-up-passed.js';
import { RUNG_METRES } from './rules/rung-metres.js';
import { RUNG_MINUTES } from './rules/rung-minutes.js';
import { RUNG_REPS } from './rules/rung-reps.js';
import { RUNG_SECONDS } from './rules/rung-seconds.js';
import { RUNG_SIGNAL_REPS } from './rules/rung-signal-reps.js';
import { SIGNAL_MINUTES_FIRST } from './rules/signal-minutes-first.js';
import { SIGNAL_REPS_FIRST } from './rules/signal-reps-first.js';
import { STAGES_AHEAD } from './rules/stages-ahead.js';
import { SWING_CAP } from './rules/swing-cap.js';
import { TALK_LIMIT } from './rules/talk-limit.js';
import { TALK_SENTENCES } from './rules/talk-sentences.js';

export const rulesOfTheLadder: readonly RuleOfLadder[] = [
  ladderUp,
  ladderHeld,
  ladderNewStage,
  ladderGateOnce,
  ladderOneAtATime,
  ladderEarned,
  ladderWeeks,
  ladderGate,
  ladderCounted,
  ladderEasy,
  ladderEasyDown,
  ladderTop,
];

/** What rungs are made of, where a ladder begins, and how hard breath may work. */
const RULES_OF_RUNGS: readonly Rule[] = [
  DEAD_STOP_REPS,
  HOLD_MOST,
  LADDER_START_LIGHTEST,
  LADDER_START_MAIN_BELL,
  LADDER_START_ROLE,
  LADDER_START_SIGNED_OFF,
  LADDER_START_TESTED,
  LADDER_STEP_GRAMS,
  LADDER_STEP_SHARE,
  MOBILITY_FIXED,
  NEXT_UP_FIRST,
  NEXT_UP_PASSED,
  RUNG_METRES,
  RUNG_MINUTES,
  RUNG_REPS,
  RUNG_SECONDS,
  RUNG_SIGNAL_REPS,
  SIGNAL_MINUTES_FIRST,
  SIGNAL_REPS_FIRST,
  STAGES_AHEAD,
  SWING_CAP,
  TALK_LIMIT,
  TALK_SENTENCES,
];

export const RULES_OF_THE_LADDER: readonly Rule[] = [...rulesOfTheLadder.map(({ row }) => row), ...RULES_OF_RUNGS];
