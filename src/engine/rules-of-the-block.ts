/** Every rule the planner reads outside the walk: its own, and those of each room. The walk's are listed beside it. */
import type { Rule } from '../model/reason.js';
import { BEGIN_LIGHTER } from './rules/begin-lighter.js';
import { BEGIN_TESTED } from './rules/begin-tested.js';
import { CIRCUIT_RESERVE } from './rules/circuit-reserve.js';
import { CLOCK_ONE_TEMPO } from './rules/clock-one-tempo.js';
import { DOSE_OF_VERSION } from './rules/dose-of-version.js';
import { EASIER_HOLD } from './rules/easier-hold.js';
import { EASIER_REPS } from './rules/easier-reps.js';
import { EFFORT_OF_VERSION } from './rules/effort-of-version.js';
import { FEELER_RISE } from './rules/feeler-rise.js';
import { FIRST_WEEKS } from './rules/first-weeks.js';
import { FLOOR_ALONE } from './rules/floor-alone.js';
import { FLOOR_CAUTIONED } from './rules/floor-cautioned.js';
import { FLOOR_FIRST_WEEKS } from './rules/floor-first-weeks.js';
import { FLOOR_NOVICE } from './rules/floor-novice.js';
import { FLOOR_OLDER } from './rules/floor-older.js';
import { FLOOR_SIGNAL } from './rules/floor-signal.js';
import { GAIN_CAUTIONED } from './rules/gain-cautioned.js';
import { GAIN_NOVICE } from './rules/gain-novice.js';
import { GAIN_TRAINED } from './rules/gain-trained.js';
import { LIGHTER_BELL } from './rules/lighter-bell.js';
import { MAIN_BELL } from './rules/main-bell.js';
import { NEW_MOVEMENT_LIGHTER } from './rules/new-movement-lighter.js';
import { NEXT_UP_BELL } from './rules/next-up-bell.js';
import { ONE_SIDE_TESTED } from './rules/one-side-tested.js';
import { OWN_DOSE } from './rules/own-dose.js';
import { PERCENT_OF_MAXIMUM } from './rules/percent-of-maximum.js';
import { PLATES_A_SIDE } from './rules/plates-a-side.js';
import { REFUGE_ONCE } from './rules/refuge-once.js';
import { RPE_TO_RESERVE } from './rules/rpe-to-reserve.js';
import { SIDE_GAP_OWN_BELL } from './rules/side-gap-own-bell.js';
import { SIDE_GAP_TOLD } from './rules/side-gap-told.js';
import { SIDE_GAP_WHY } from './rules/side-gap-why.js';
import { SIGNAL_WORK } from './rules/signal-work.js';
import { TEMPO_SLOW_LOWERING } from './rules/tempo-slow-lowering.js';
import { TEMPO_SLOW_WITH_A_PAUSE } from './rules/tempo-slow-with-a-pause.js';
import { UNEQUAL_AT_MOST } from './rules/unequal-at-most.js';
import { UNEQUAL_HANDS } from './rules/unequal-hands.js';
import { UNEQUAL_NEAR } from './rules/unequal-near.js';
import { WARM_UP_LOAD } from './rules/warm-up-load.js';
import { WEAK_RESERVE } from './rules/weak-reserve.js';
import { WEAKER_SIDE } from './rules/weaker-side.js';
import { WEAKEST_PART } from './rules/weakest-part.js';
import { RULES_OF_HISTORY } from './rules-of-history.js';
import { RULES_OF_REVIEW } from './rules-of-review.js';
import { RULES_OF_SCREENING } from './rules-of-screening.js';
import { RULES_OF_SESSIONS } from './rules-of-sessions.js';
import { RULES_OF_THE_AUDIT } from './rules-of-the-audit.js';
import { RULES_OF_THE_LADDER } from './rules-of-the-ladder.js';
import { RULES_OF_VERSIONS } from './rules-of-versions.js';

/** Of rows and their effort. */
export const RULES_OF_ROWS: readonly Rule[] = [
  BEGIN_LIGHTER,
  BEGIN_TESTED,
  CIRCUIT_RESERVE,
  CLOCK_ONE_TEMPO,
  DOSE_OF_VERSION,
  EASIER_HOLD,
  EASIER_REPS,
  EFFORT_OF_VERSION,
  FEELER_RISE,
  FIRST_WEEKS,
  FLOOR_ALONE,
  FLOOR_CAUTIONED,
  FLOOR_FIRST_WEEKS,
  FLOOR_NOVICE,
  FLOOR_OLDER,
  FLOOR_SIGNAL,
  GAIN_CAUTIONED,
  GAIN_NOVICE,
  GAIN_TRAINED,
  LIGHTER_BELL,
  MAIN_BELL,
  NEW_MOVEMENT_LIGHTER,
  NEXT_UP_BELL,
  ONE_SIDE_TESTED,
  PERCENT_OF_MAXIMUM,
  PLATES_A_SIDE,
  OWN_DOSE,
  REFUGE_ONCE,
  RPE_TO_RESERVE,
  SIDE_GAP_OWN_BELL,
  SIDE_GAP_TOLD,
  SIDE_GAP_WHY,
  SIGNAL_WORK,
  TEMPO_SLOW_LOWERING,
  TEMPO_SLOW_WITH_A_PAUSE,
  UNEQUAL_AT_MOST,
  UNEQUAL_HANDS,
  UNEQUAL_NEAR,
  WARM_UP_LOAD,
  WEAK_RESERVE,
  WEAKER_SIDE,
  WEAKEST_PART,
];

export const RULES_OF_THE_BLOCK: readonly Rule[] = [
  ...RULES_OF_ROWS,
  ...RULES_OF_HISTORY,
  ...RULES_OF_REVIEW,
  ...RULES_OF_SCREENING,
  ...RULES_OF_SESSIONS,
  ...RULES_OF_THE_AUDIT,
  ...RULES_OF_THE_LADDER,
  ...RULES_OF_VERSIONS,
];
