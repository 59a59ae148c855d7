/** The rules of when sessions are, how long they take and how a phone leads through them, in order of id. */
import type { Rule } from '../model/reason.js';
import { AWAY_SAID } from './rules/away-said.js';
import { BETWEEN_EXERCISES } from './rules/between-exercises.js';
import { CHANGE_OF_BELL } from './rules/change-of-bell.js';
import { CIRCUIT_APART } from './rules/circuit-apart.js';
import { CIRCUIT_BELLS } from './rules/circuit-bells.js';
import { COOL_DOWN_OLDER } from './rules/cool-down-older.js';
import { DOWN_OR_UP } from './rules/down-or-up.js';
import { EASY_SET } from './rules/easy-set.js';
import { EASY_WEEK_SETS } from './rules/easy-week-sets.js';
import { FAST_FIRST } from './rules/fast-first.js';
import { FLOOR_LAST } from './rules/floor-last.js';
import { INTO_PLACE } from './rules/into-place.js';
import { MINUTES_CAP } from './rules/minutes-cap.js';
import { PARTNER_APART } from './rules/partner-apart.js';
import { PAUSE_SECONDS } from './rules/pause-seconds.js';
import { PUT_DOWN } from './rules/put-down.js';
import { QUEUE_SLIDES } from './rules/queue-slides.js';
import { RE_PLATING } from './rules/re-plating.js';
import { REST_LONGER } from './rules/rest-longer.js';
import { SECONDS_A_METRE } from './rules/seconds-a-metre.js';
import { SECONDS_A_REP } from './rules/seconds-a-rep.js';
import { SECONDS_A_ROUND } from './rules/seconds-a-round.js';
import { SECONDS_A_SWING } from './rules/seconds-a-swing.js';
import { SESSIONS_LOST } from './rules/sessions-lost.js';
import { SHORT_MINUTES } from './rules/short-minutes.js';
import { SHORT_WARM_UP } from './rules/short-warm-up.js';
import { SLOW_LOWERING_SECONDS } from './rules/slow-lowering-seconds.js';
import { START_MOVED } from './rules/start-moved.js';
import { WARM_UP } from './rules/warm-up.js';
import { WARM_UP_MOST } from './rules/warm-up-most.js';
import { WARM_UP_OLDER } from './rules/warm-up-older.js';
import { WARM_UP_OLDER_MOST } from './rules/warm-up-older-most.js';
import { WARM_UP_ROUNDS } from './rules/warm-up-rounds.js';
import { WARM_UP_STANDING } from './rules/warm-up-standing.js';

export const RULES_OF_SESSIONS: readonly Rule[] = [
  AWAY_SAID,
  BETWEEN_EXERCISES,
  CHANGE_OF_BELL,
  CIRCUIT_APART,
  CIRCUIT_BELLS,
  COOL_DOWN_OLDER,
  DOWN_OR_UP,
  EASY_SET,
  EASY_WEEK_SETS,
  FAST_FIRST,
  FLOOR_LAST,
  INTO_PLACE,
  MINUTES_CAP,
  PARTNER_APART,
  PAUSE_SECONDS,
  PUT_DOWN,
  QUEUE_SLIDES,
  RE_PLATING,
  REST_LONGER,
  SECONDS_A_METRE,
  SECONDS_A_REP,
  SECONDS_A_ROUND,
  SECONDS_A_SWING,
  SESSIONS_LOST,
  SHORT_MINUTES,
  SHORT_WARM_UP,
  SLOW_LOWERING_SECONDS,
  START_MOVED,
  WARM_UP,
  WARM_UP_MOST,
  WARM_UP_OLDER,
  WARM_UP_OLDER_MOST,
  WARM_UP_ROUNDS,
  WARM_UP_STANDING,
];
