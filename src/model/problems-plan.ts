/** Codes of problems found while planning for a client. Codes are permanent: never rename, never reuse. */
import type { ScreeningQuestion } from './client.js';
import type { Dose, Effort } from './dose.js';
import type { Way } from './exercise.js';
import type { Seconds } from './quantity.js';

/** Why one version of a movement may not be planned, and so what would unlock it. */
export type RefusalCause =
  /** A caution says avoid; `detail` is what is to be avoided. */
  | 'avoid'
  /** A caution says take care and the exercise asks much of it; `detail` is what. */
  | 'take-care'
  /** A thing is not in the kit; `detail` is the thing. */
  | 'thing'
  /** No load it can be done with can be made from the kit; `detail` says what it is done with. */
  | 'load'
  /** The height of the ceiling is not stated; `detail` is what is needed in millimetres. */
  | 'ceiling-unknown'
  | 'ceiling-low'
  /** The clear floor is not stated; `detail` is what is needed, `long × wide` in millimetres. */
  | 'floor-unknown'
  | 'floor-small'
  /** Not signed off; `detail` is empty. */
  | 'sign-off-missing'
  /** Signed off too long ago; `detail` is the date last seen. */
  | 'sign-off-lapsed'
  /** Signed off without saying up to which load, or below the lightest there is; `detail` is that load or empty. */
  | 'sign-off-load'
  /** Only a moderate plan is open, and this is fast; `detail` is `speed`. */
  | 'moderate'
  /** A part of the combination is not in the library; `detail` is its id. */
  | 'part'
  /** Pain was said in it that the coach has not cleared; `detail` is where. */
  | 'pain';

export interface Refusal {
  readonly exercise: string;
  readonly cause: RefusalCause;
  readonly detail: string;
}

/** Something a coach could settle so that a version of a movement may be planned; several may be needed together. */
export type Unlock =
  /** A thing to be had at home. */
  | { readonly kind: 'thing'; readonly exercise: string; readonly thing: string }
  /** Something to load it with. */
  | { readonly kind: 'load'; readonly exercise: string; readonly load: string }
  /** Clear height in millimetres; `known` where it is stated and too low. */
  | { readonly kind: 'ceiling'; readonly exercise: string; readonly least: number; readonly known: boolean }
  /** Clear floor, `long × wide` in millimetres. */
  | { readonly kind: 'floor'; readonly exercise: string; readonly least: string; readonly known: boolean }
  /** To be seen and passed; `beyond` is how far it was passed, `seen` the last day, each empty where not said. */
  | { readonly kind: 'sign-off'; readonly exercise: string; readonly beyond: string; readonly seen: string }
  /** The end of a caution, for its author to say; `until` and `review` are empty where no date is set. */
  | {
      readonly kind: 'caution';
      readonly exercise: string;
      readonly what: string;
      readonly degree: 'avoid' | 'take care';
      readonly side: 'left' | 'right' | 'both';
      readonly by: string;
      readonly until: string;
      readonly review: string;
    }
  /** A test, or what its relative can be lifted with against it. */
  | { readonly kind: 'test'; readonly exercise: string }
  /** Clearance for vigorous effort. */
  | { readonly kind: 'clearance'; readonly exercise: string }
  /** What no clearance opens: `from` is the day after the weeks of a birth, empty elsewhere. */
  | { readonly kind: 'past'; readonly exercise: string; readonly because: ModerateCause; readonly from: string }
  /** The part of a combination, in the library. */
  | { readonly kind: 'part'; readonly exercise: string; readonly part: string }
  /** The coach’s word that pain in it was looked at. */
  | { readonly kind: 'cleared'; readonly exercise: string };

/** Why only a moderate plan is right. */
export type ModerateCause =
  | 'known disease'
  | 'clearance'
  | 'blood pressure'
  | 'pregnancy'
  | 'birth'
  | 'vertebral fracture';

interface PressureOver {
  readonly systolic: number;
  readonly diastolic: number;
  /** The limits: upper figure, and lower. */
  readonly over: number;
  readonly under: number;
  readonly date: string;
}

export interface PlanProblems {
  /** Signs that ask for help before any training, marked and not cleared by the coach since. */
  readonly 'alarm-reported': { readonly signs: readonly string[]; readonly date: string };
  /** A fact in a client's file that no rule reads yet. */
  readonly 'not-handled': { readonly fact: string; readonly why: string };

  /** The youngest the birth year allows is below the least age. */
  readonly 'under-age': { readonly youngest: number; readonly least: number };
  readonly 'screening-missing': Readonly<Record<string, never>>;
  /** Questions answered `unknown`. */
  readonly 'screening-unclear': { readonly questions: readonly ScreeningQuestion[] };
  /** Asked too long before the block begins. */
  readonly 'screening-out-of-date': { readonly date: string; readonly mostDays: number };
  /** A fact of the client's file is dated after the day of planning. */
  readonly 'date-in-future': {
    readonly what:
      | 'test'
      | 'sign-off'
      | 'screening'
      | 'clearance'
      | 'observation'
      | 'body mass'
      | 'blood pressure'
      | 'birth'
      | 'check after the birth';
    readonly date: string;
    readonly today: string;
  };
  /** The last day of the block's last week is before the day of planning. */
  readonly 'block-ended': { readonly ends: string };
  readonly symptoms: Readonly<Record<string, never>>;
  /** Known disease without clearance. */
  readonly 'clearance-needed': { readonly regularExercise: string };
  /** The clearance ended before the block begins: an error; inside it: a warning, and sessions stop there. */
  readonly 'clearance-lapses': { readonly until: string; readonly blockEnds: string };
  /** The plan made is a moderate one, and why. */
  readonly 'moderate-only': { readonly because: readonly ModerateCause[] };
  /** At rest, above the figures with which nothing is planned (mmHg). */
  readonly 'pressure-too-high': PressureOver;
  /** At rest, above the figures with which a licensed person is asked first (mmHg). */
  readonly 'pressure-ask-first': PressureOver;
  /** Conditions with which nothing is planned in pregnancy. */
  readonly 'pregnancy-refused': { readonly conditions: readonly string[] };
  /** Conditions with which a licensed person is asked first; a clearance counts from the day the pregnancy began, or a high reading in it. */
  readonly 'pregnancy-ask-first': { readonly conditions: readonly string[]; readonly began: string };
  /** The child is due before the first training day. */
  readonly 'due-date-passed': { readonly due: string; readonly begins: string };
  /** The day due is further away than a pregnancy is long. */
  readonly 'due-date-unlikely': { readonly due: string; readonly today: string; readonly mostDays: number };
  /** Nobody licensed has looked since the birth. */
  readonly 'birth-not-checked': { readonly date: string };

  /**
   * Sessions of a block were done, and something it rests on was changed without beginning the next block: `was` and
   * `now` are an id, a date, weekdays from Monday as 1, a number of weeks, or sessions in their order.
   */
  readonly 'block-begun': {
    readonly what: 'programme' | 'starts' | 'days' | 'weeks' | 'sessions';
    readonly was: string;
    readonly now: string;
    readonly block: number;
    /** Sessions of it that were done. */
    readonly done: number;
  };

  readonly 'programme-not-found': { readonly programme: string };
  readonly 'exercise-not-found': { readonly exercise: string; readonly row: string };
  readonly 'no-weeks': { readonly programme: string };
  readonly 'no-training-days': Readonly<Record<string, never>>;
  /** The client's days differ from the programme's sessions, and the programme states no rotation for them. */
  readonly 'rotation-not-stated': { readonly days: number; readonly sessions: number };
  /** A rotation names a session the programme does not have. */
  readonly 'rotation-unknown-session': { readonly days: number; readonly session: string };
  /** RPE outside 7 to 10 says too little about reps in reserve. */
  readonly 'effort-not-readable': { readonly row: string; readonly rpe: number };
  /** A row's exercise is of a way of working that is not done by such a dose. */
  readonly 'dose-for-way': {
    readonly row: string;
    readonly exercise: string;
    readonly way: Way;
    readonly dose: Dose['kind'];
    /** The kinds it is done by. */
    readonly takes: readonly Dose['kind'][];
  };
  /** The reps of a signal leave less rest than work before the next. */
  readonly 'signal-too-short': {
    readonly row: string;
    readonly exercise: string;
    readonly reps: number;
    readonly everySeconds: Seconds;
    /** The most that fit; 0 where not even one does. */
    readonly fits: number;
  };
  /** A part of a maximum that cannot be kept to: no load is counted, or the lightest is above it. */
  readonly 'percent-not-kept': {
    readonly row: string;
    readonly exercise: string;
    readonly percent: number;
    readonly why: 'not counted' | 'too heavy';
  };
  /** Effort by the talk test where reps in reserve are counted, or the other way round. */
  readonly 'effort-for-way': {
    readonly row: string;
    readonly exercise: string;
    readonly way: Way;
    readonly effort: Effort['kind'];
  };
  /** More different loads than the planner will list. */
  readonly 'kit-too-varied': { readonly most: number };
  /** No version of the row's exercise may be planned. */
  readonly 'no-version-allowed': {
    readonly session: string;
    readonly row: string;
    readonly exercise: string;
    readonly refused: readonly Refusal[];
    /** What would open each version refused, in the same order. */
    readonly unlocks?: readonly Unlock[];
  };
  /** Nothing in the library fills this pattern for this client. */
  readonly 'pattern-not-filled': {
    readonly session: string;
    readonly row: string;
    readonly pattern: string;
    readonly refused: readonly Refusal[];
    readonly unlocks?: readonly Unlock[];
  };
  /** A planned exercise has no easier version this client may do. */
  readonly 'no-easier-version': {
    readonly session: string;
    readonly row: string;
    readonly exercise: string;
    readonly refused: readonly Refusal[];
    /** What would open each version refused, in the same order. */
    readonly unlocks?: readonly Unlock[];
  };
  /** No load, reps and version leave the floor of reserve. */
  readonly 'nothing-leaves-the-floor': {
    readonly session: string;
    readonly row: string;
    readonly week: number;
    readonly floor: number;
  };
  /** The session is too long with everything cut that may be. */
  readonly 'session-too-long': {
    readonly session: string;
    readonly week: number;
    readonly minutes: number;
    readonly cap: number;
    /** Rows the programme says are never cut. */
    readonly neverCut: readonly string[];
  };
  /** The client is asked for a film of an exercise that the block does not have. */
  readonly 'film-not-planned': { readonly exercise: string };
  /** The coach's own value for a rule the engine does not have. */
  readonly 'rule-not-found': { readonly rule: string };
  readonly 'rule-out-of-range': {
    readonly rule: string;
    readonly value: number;
    readonly least: number;
    readonly most: number;
  };
}
