/** The rules of when sessions are and how long they take, in order of id. */
import type { Rule } from '../model/reason.js';
import { BETWEEN_EXERCISES } from './rules/between-exercises.js';
import { CHANGE_OF_BELL } from './rules/change-of-bell.js';
import { COOL_DOWN_OLDER } from './rules/cool-down-older.js';
import { DOWN_OR_UP } from './rules/down-or-up.js';
import { EASY_WEEK_SETS } from './rules/easy-week-sets.js';
import { MINUTES_CAP } from './rules/minutes-cap.js';
import { PAUSE_SECONDS } from './rules/pause-seconds.js';
import { PUT_DOWN } from './rules/put-down.js';
import { RE_PLATING } from './rules/re-plating.js';
import { SECONDS_A_REP } from './rules/seconds-a-rep.js';
import { SLOW_LOWERING_SECONDS } from './rules/slow-lowering-seconds.js';
import { START_MOVED } from './rules/start-moved.js';
import { WARM_UP } from './rules/warm-up.js';
import { WARM_UP_OLDER } from './rules/warm-up-older.js';

export const RULES_OF_SESSIONS: readonly Rule[] = [
  BETWEEN_EXERCISES,
  CHANGE_OF_BELL,
  COOL_DOWN_OLDER,
  DOWN_OR_UP,
  EASY_WEEK_SETS,
  MINUTES_CAP,
  PAUSE_SECONDS,
  PUT_DOWN,
  RE_PLATING,
  SECONDS_A_REP,
  SLOW_LOWERING_SECONDS,
  START_MOVED,
  WARM_UP_OLDER,
  WARM_UP,
];
