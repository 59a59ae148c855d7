/** Every rule the planner reads outside the walk, in order of id. The walk's own are listed beside it. */
import type { Rule } from '../model/reason.js';
import { ADULT_FROM } from './rules/adult-from.js';
import { BETWEEN_EXERCISES } from './rules/between-exercises.js';
import { CAUTION_IN_BLOCK } from './rules/caution-in-block.js';
import { CEILING_ARMS } from './rules/ceiling-arms.js';
import { CEILING_LOAD } from './rules/ceiling-load.js';
import { CHANGE_OF_BELL } from './rules/change-of-bell.js';
import { CIRCUIT_RESERVE } from './rules/circuit-reserve.js';
import { CLEARANCE_HOLDS } from './rules/clearance-holds.js';
import { COOL_DOWN_OLDER } from './rules/cool-down-older.js';
import { DOWN_OR_UP } from './rules/down-or-up.js';
import { EASIER_IN_KIT } from './rules/easier-in-kit.js';
import { EASY_WEEK_SETS } from './rules/easy-week-sets.js';
import { FEELER_RISE } from './rules/feeler-rise.js';
import { FIRST_WEEKS } from './rules/first-weeks.js';
import { FLOOR_ALONE } from './rules/floor-alone.js';
import { FLOOR_FIRST_WEEKS } from './rules/floor-first-weeks.js';
import { FLOOR_NOVICE } from './rules/floor-novice.js';
import { FLOOR_OLDER } from './rules/floor-older.js';
import { GAIN_CAUTIONED } from './rules/gain-cautioned.js';
import { GAIN_NOVICE } from './rules/gain-novice.js';
import { GAIN_TRAINED } from './rules/gain-trained.js';
import { MINUTES_CAP } from './rules/minutes-cap.js';
import { NEW_MOVEMENT_LIGHTER } from './rules/new-movement-lighter.js';
import { OLDER_FROM } from './rules/older-from.js';
import { ONE_SIDE_TESTED } from './rules/one-side-tested.js';
import { PAUSE_SECONDS } from './rules/pause-seconds.js';
import { PUT_DOWN } from './rules/put-down.js';
import { RE_PLATING } from './rules/re-plating.js';
import { RPE_TO_RESERVE } from './rules/rpe-to-reserve.js';
import { SCREENING_HOLDS } from './rules/screening-holds.js';
import { SECONDS_A_REP } from './rules/seconds-a-rep.js';
import { SIDE_GAP_TOLD } from './rules/side-gap-told.js';
import { SIDE_GAP_WHY } from './rules/side-gap-why.js';
import { SIGN_OFF_LAPSES } from './rules/sign-off-lapses.js';
import { SLOW_LOWERING_SECONDS } from './rules/slow-lowering-seconds.js';
import { START_MOVED } from './rules/start-moved.js';
import { TEMPO_SLOW_LOWERING } from './rules/tempo-slow-lowering.js';
import { TEMPO_SLOW_WITH_A_PAUSE } from './rules/tempo-slow-with-a-pause.js';
import { VERSION_CHOSEN } from './rules/version-chosen.js';
import { WARM_UP } from './rules/warm-up.js';
import { WARM_UP_LOAD } from './rules/warm-up-load.js';
import { WARM_UP_OLDER } from './rules/warm-up-older.js';
import { WEAK_RESERVE } from './rules/weak-reserve.js';
import { WEAKER_SIDE } from './rules/weaker-side.js';

export const RULES_OF_THE_BLOCK: readonly Rule[] = [
  ADULT_FROM,
  BETWEEN_EXERCISES,
  CAUTION_IN_BLOCK,
  CEILING_ARMS,
  CEILING_LOAD,
  CHANGE_OF_BELL,
  CIRCUIT_RESERVE,
  CLEARANCE_HOLDS,
  COOL_DOWN_OLDER,
  DOWN_OR_UP,
  EASIER_IN_KIT,
  EASY_WEEK_SETS,
  FEELER_RISE,
  FIRST_WEEKS,
  FLOOR_ALONE,
  FLOOR_FIRST_WEEKS,
  FLOOR_NOVICE,
  FLOOR_OLDER,
  GAIN_CAUTIONED,
  GAIN_NOVICE,
  GAIN_TRAINED,
  MINUTES_CAP,
  NEW_MOVEMENT_LIGHTER,
  OLDER_FROM,
  ONE_SIDE_TESTED,
  PAUSE_SECONDS,
  PUT_DOWN,
  RE_PLATING,
  RPE_TO_RESERVE,
  SCREENING_HOLDS,
  SECONDS_A_REP,
  SIDE_GAP_TOLD,
  SIDE_GAP_WHY,
  SIGN_OFF_LAPSES,
  SLOW_LOWERING_SECONDS,
  START_MOVED,
  TEMPO_SLOW_LOWERING,
  TEMPO_SLOW_WITH_A_PAUSE,
  VERSION_CHOSEN,
  WARM_UP,
  WARM_UP_LOAD,
  WARM_UP_OLDER,
  WEAK_RESERVE,
  WEAKER_SIDE,
];
