/**
 * The rules of the ladder. Those of the walk of rungs stand in the order they are asked; taking one out of that list
 * leaves the others as they are: a guard no longer refuses, a habit is not kept, nothing is told.
 */
import type { Rule } from '../model/reason.js';
import type { RuleOfLadder } from './ladder/ladder-rule.js';
import { ladderCounted } from './rules/ladder-counted.js';
import { ladderEarned } from './rules/ladder-earned.js';
import { ladderEasy } from './rules/ladder-easy.js';
import { ladderEasyDown } from './rules/ladder-easy-down.js';
import { ladderGate } from './rules/ladder-gate.js';
import { ladderGateOnce } from './rules/ladder-gate-once.js';
import { ladderHeld } from './rules/ladder-held.js';
import { ladderNewStage } from './rules/ladder-new-stage.js';
import { ladderOneAtATime } from './rules/ladder-one-at-a-time.js';
import { ladderTop } from './rules/ladder-top.js';
import { ladderUp } from './rules/ladder-up.js';

export const rulesOfTheLadder: readonly RuleOfLadder[] = [
  ladderUp,
  ladderHeld,
  ladderNewStage,
  ladderGateOnce,
  ladderOneAtATime,
  ladderEarned,
  ladderGate,
  ladderCounted,
  ladderEasy,
  ladderEasyDown,
  ladderTop,
];

export const RULES_OF_THE_LADDER: readonly Rule[] = rulesOfTheLadder.map(({ row }) => row);
