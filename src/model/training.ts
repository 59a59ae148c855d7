/**
 * What a client's phone shows while training, before a word of it is chosen: one screen at a time, and what can be done
 * on it. Screens are data made from the client's plan, the marks and the moment; an act becomes marks, another screen, or both.
 */
import type { ClientEasier, ClientItem, ClientSet } from './client-plan.js';
import type { IsoDate } from './day.js';
import type { BodyPart } from './exercise.js';
import type { ExerciseId, RowId, SessionId, SetKey, Side } from './identity.js';
import type { AlarmSign, LogEvent, PainReport } from './log.js';
import type { Group, OtherwiseSet, PlanLoad } from './plan.js';
import type { Seconds } from './quantity.js';
import type { Reason } from './reason.js';

export type Today = Extract<LogEvent, { readonly kind: 'opened' }>['today'];

/** Milliseconds since 1970. */
export type Moment = number;

export interface SessionPlace {
  readonly occurrence: number;
  readonly session: SessionId;
  readonly name: string;
  readonly week: number;
  readonly date: IsoDate;
  readonly easyWeek: boolean;
  /** Planned length. */
  readonly minutes: number;
  /** The sessions of the block, and how many of them are closed. */
  readonly done: number;
  readonly of: number;
}

/** Why marks cannot be kept, or may not last. */
export type KeepFault =
  /** The browser offers no storage, or refuses it. */
  | 'no storage'
  /** There is no room left: nothing more is taken until there is. */
  | 'full'
  /** Another window with a newer edition or program holds it. */
  | 'held elsewhere';

export type Notice =
  | { readonly kind: 'first opening' }
  | { readonly kind: 'draft' }
  | { readonly kind: 'cannot keep'; readonly fault: KeepFault }
  /** An edition this phone has not shown before; what it changes stands on its cover. */
  | { readonly kind: 'new edition'; readonly edition: number }
  /** A session was missed: days since the last mark. `long`: so many that the coach is to be asked how to go on. */
  | { readonly kind: 'away'; readonly days: number; readonly long: boolean }
  /** Begun and not closed; `minutes` since anything was done in it; `set` is the one in hand when it was left, if any. */
  | {
      readonly kind: 'interrupted';
      readonly place: SessionPlace;
      readonly minutes: number;
      readonly set: SetInHand | null;
    }
  /** Closed sessions that were not passed on. */
  | { readonly kind: 'not sent'; readonly sessions: number }
  | { readonly kind: 'ended' }
  | { readonly kind: 'withdrawn' }
  /** It was said before the session to hurt too much for it: another day, or asked anew. */
  | { readonly kind: 'hurt' }
  /** A sign of alarm was said: no session is offered until the coach's next edition. */
  | { readonly kind: 'alarm'; readonly signs: readonly AlarmSign[] };

/** A set whose work has begun and that is not marked yet. */
export interface SetInHand {
  readonly key: SetKey;
  readonly began: Moment;
  /** Set k of n of its exercise. */
  readonly number: number;
  readonly of: number;
}

export interface HomeScreen {
  readonly kind: 'home';
  readonly notices: readonly Notice[];
  /** What would be done next; `null` where nothing may or can be. */
  readonly next: SessionPlace | null;
}

export interface TodayScreen {
  readonly kind: 'today';
  readonly place: SessionPlace;
  /** Said of a session as a whole, and not asked of since: it is told, so that it is decided anew. */
  readonly sore?: PainReport & { readonly date: IsoDate };
  /** Printed, and not done today since it was planned again, or since it hurt: nobody is to look for it. */
  readonly leftOut: readonly {
    readonly exercise: ExerciseId;
    readonly because: readonly Reason[];
    /** So much, on that day, that it waits for the coach; `in`: another, and this one asks as much of the same place. */
    readonly hurt?: { readonly degree: number; readonly date: IsoDate; readonly in?: ExerciseId };
  }[];
}

/** In place of how today is: nothing of it is left. Nobody warms up for nothing. */
export interface LetBeScreen {
  readonly kind: 'let be';
  readonly place: SessionPlace;
  readonly leftOut: TodayScreen['leftOut'];
  readonly next: SessionPlace | null;
}

/** Of what hurt on the last day of training, once, before how today is: what was too much shows the next morning. */
export interface MorningScreen {
  readonly kind: 'morning';
  readonly place: SessionPlace;
  /** As it was said that day. */
  readonly where: PainReport['where'];
  readonly side?: Side;
  readonly degree: number;
  readonly date: IsoDate;
  /** What follows where it was worse; what waits for the coach does so in any case. */
  readonly advice: 'easier' | 'leave' | 'waits';
}

/** After *not my best* or *short of time*: less is fine. */
export interface LessScreen {
  readonly kind: 'less';
  readonly place: SessionPlace;
  readonly because: 'not my best' | 'short of time';
  /** The short version as far as it is left, `null` where that is none or no shorter; its minutes are known of all of it alone. */
  readonly short: { readonly minutes: number | null; readonly exercises: number } | null;
  /** Is an easier way open for every exercise of it? */
  readonly easierThroughout: boolean;
}

/** A warm-up or cool-down: lines are in the booklet's own leaf; here its sets, where they are sets at all. */
export interface AroundScreen {
  readonly kind: 'warm-up' | 'cool-down';
  readonly place: SessionPlace;
  readonly minutes: number | null;
  readonly items: readonly ClientItem[];
  /** Of the work: its lines may still lead to it. */
  readonly leftOut: TodayScreen['leftOut'];
}

export type TallyState = 'to do' | 'done' | 'easier' | 'left out' | 'extra';

export interface TallyRow {
  /** Absent where both sides are done together. */
  readonly side?: Side;
  readonly marks: readonly { readonly key: SetKey; readonly state: TallyState }[];
}

/** What was done of it, or would be: the figures of one set in the version and with the load that count today. */
export interface Figures {
  readonly exercise: string;
  readonly set: ClientSet;
  /** Set where an easier way is chosen today. */
  readonly easier?: ClientEasier;
}

export type Clock =
  | { readonly kind: 'none' }
  /**
   * A hold or timed work: not begun, then running from a moment for so long. `began` lies ahead while one gets into place: that
   * time is no part of the work.
   */
  | { readonly kind: 'timed'; readonly seconds: Seconds; readonly began: Moment | null }
  /** A set at every signal. `began` is the first signal; round k begins at began + k × every. */
  | {
      readonly kind: 'every';
      readonly everySeconds: Seconds;
      readonly rounds: number;
      readonly began: Moment | null;
    }
  /** So long work, so long to change over. */
  | {
      readonly kind: 'work and pause';
      readonly workSeconds: Seconds;
      readonly pauseSeconds: Seconds;
      readonly began: Moment | null;
    };

export interface Rest {
  readonly began: Moment;
  readonly over: Moment;
}

/** The set marked last in a session, which can be rubbed out or told otherwise. */
export interface LastMarked {
  readonly key: SetKey;
  /** Set k of its kind and side. */
  readonly number: number;
  readonly row: RowId;
}

/** A step up that must be earned: what must have been done, whether marks show it, and what is done otherwise. */
export interface GateAsked {
  readonly earned: boolean;
  readonly otherwise: readonly OtherwiseSet[];
}

export interface SetScreen {
  readonly kind: 'set';
  readonly place: SessionPlace;
  readonly row: RowId;
  readonly item: ClientItem;
  readonly group: Pick<Group, 'kind' | 'rounds' | 'everySeconds' | 'workSeconds' | 'pauseSeconds'>;
  /** Exercise k of n of the session's work. */
  readonly turn: { readonly number: number; readonly of: number };
  /** Set k of n of its kind and side. */
  readonly number: number;
  readonly of: number;
  /** Of a circuit. */
  readonly round?: { readonly number: number; readonly of: number };
  readonly key: SetKey;
  readonly figures: Figures;
  /** Printed otherwise, and why today is not as printed. */
  readonly paper?: { readonly set: ClientSet; readonly because: readonly Reason[] };
  readonly gate?: GateAsked;
  readonly tally: readonly TallyRow[];
  readonly clock: Clock;
  /** Runs until it is over or the next set is begun; the set shown is then the next one. */
  readonly rest: Rest | null;
  /** Seconds by which one tap makes it longer. */
  readonly restLonger: Seconds;
  readonly last: LastMarked | null;
  /** The same set of this exercise the last time it was done. */
  readonly lastTime: Figures | null;
  /** Easier ways open today, in the booklet's order. */
  readonly easier: readonly ClientEasier[];
}

/** What was otherwise in a set that is marked: reps, load, left out. */
export interface DifferentScreen {
  readonly kind: 'different';
  readonly place: SessionPlace;
  readonly key: SetKey;
  readonly number: number;
  readonly figures: Figures;
  /** One's own kit alone, lightest first; empty where nothing is held. */
  readonly loads: readonly PlanLoad[];
  readonly counts: 'reps' | 'seconds' | 'metres';
  /** What is marked of it now. */
  readonly marked: { readonly amount: number; readonly load?: PlanLoad };
}

export interface EasierScreen {
  readonly kind: 'easier';
  readonly place: SessionPlace;
  readonly row: RowId;
  /** As planned. */
  readonly exercise: string;
  readonly options: readonly ClientEasier[];
  readonly chosen: ClientEasier | null;
}

/** After an exercise's last set: how many more good ones; a feeler set's answer decides the load. */
export interface ReserveScreen {
  readonly kind: 'reserve';
  readonly place: SessionPlace;
  readonly row: RowId;
  readonly exercise: string;
  readonly side?: Side;
  readonly feeler: boolean;
  readonly last: LastMarked | null;
}

/** The emergency list first; then where and how much; then what follows from it. */
export interface PainScreen {
  readonly kind: 'pain';
  readonly place: SessionPlace | null;
  readonly row: RowId | null;
  /** What is done in that row today; `null` with it. */
  readonly exercise: string | null;
  readonly step:
    | { readonly at: 'signs' }
    | { readonly at: 'emergency'; readonly sign: AlarmSign }
    | { readonly at: 'where' }
    /** Asked only of what there are two of. */
    | { readonly at: 'side'; readonly where: PainReport['where'] }
    | { readonly at: 'degree'; readonly where: PainReport['where']; readonly side?: Side }
    | {
        readonly at: 'advice';
        readonly where: PainReport['where'];
        readonly side?: Side;
        readonly degree: number;
        readonly advice: 'gently' | 'easier' | 'leave';
        /** Is an easier way open for that exercise; said of no exercise, for all of the session? */
        readonly easier: boolean;
        /** Nothing of that exercise was left to do. */
        readonly over: boolean;
        /** Is anything left to be stopped? */
        readonly stops: boolean;
      };
}

/** Effort of the whole session, 0 to 10, once, at its end. */
export interface EffortScreen {
  readonly kind: 'effort';
  readonly place: SessionPlace;
  /** Sets of work not marked: they are left out once it is closed. */
  readonly open: number;
  readonly last: LastMarked | null;
}

export interface FinishedScreen {
  readonly kind: 'finished';
  readonly place: SessionPlace;
  /** The whole of it, or its short version. */
  readonly whole: boolean;
  readonly next: SessionPlace | null;
}

/** Marks as a message; `sessions` of them are closed and were not passed on before. */
export interface SendScreen {
  readonly kind: 'send';
  readonly sessions: number;
  readonly text: string;
  readonly passed: boolean;
}

export interface PhoneSettings {
  readonly leftHand: boolean;
  readonly sound: boolean;
  readonly vibration: boolean;
  readonly tempo: boolean;
  readonly awake: boolean;
  /** As the booklet gives them, or in the other unit, as a display alone. */
  readonly units: 'as printed' | 'kg' | 'lb';
}

export interface PhoneScreen {
  readonly kind: 'this phone';
  readonly settings: PhoneSettings;
  readonly marks: number;
  readonly persisted: boolean | null;
  readonly fault: KeepFault | null;
}

export type Screen =
  | HomeScreen
  | MorningScreen
  | TodayScreen
  | LetBeScreen
  | LessScreen
  | AroundScreen
  | SetScreen
  | DifferentScreen
  | EasierScreen
  | ReserveScreen
  | PainScreen
  | EffortScreen
  | FinishedScreen
  | SendScreen
  | PhoneScreen;

/** What a hand can do. Each is one tap, and says all it needs. */
export type Act =
  | { readonly act: 'home' }
  | { readonly act: 'open'; readonly occurrence: number }
  /** Was it worse the next morning? `null`: nobody knows any more. */
  | { readonly act: 'morning'; readonly worse: boolean | null }
  | { readonly act: 'today'; readonly today: Today }
  /** A session of which nothing is left: it is over, and the next one comes. */
  | { readonly act: 'let be' }
  /** How much of it. */
  | { readonly act: 'go'; readonly how: 'as planned' | 'short' | 'easier throughout' }
  /** A warm-up or cool-down is done, or passed by. */
  | { readonly act: 'around'; readonly done: boolean }
  /** Begins timed work, a clock of signals, or the next set after a rest. */
  | { readonly act: 'begin' }
  /** Takes the start of timed work back: it was too early, or was broken off. */
  | { readonly act: 'start again' }
  | { readonly act: 'mark'; readonly key: SetKey }
  | { readonly act: 'different'; readonly key: SetKey }
  | { readonly act: 'say'; readonly key: SetKey; readonly amount: number; readonly load?: PlanLoad }
  | { readonly act: 'leave out'; readonly key: SetKey }
  /** An exercise as a whole: its sets still open. */
  | { readonly act: 'leave exercise'; readonly row: RowId }
  | { readonly act: 'one more'; readonly row: RowId }
  | { readonly act: 'rub out'; readonly key: SetKey }
  | { readonly act: 'longer rest'; readonly seconds: Seconds }
  | { readonly act: 'easier' }
  | { readonly act: 'choose easier'; readonly easier: ClientEasier | null }
  /** `null`: not said. */
  | { readonly act: 'reserve'; readonly reps: number | null }
  | { readonly act: 'something hurts' }
  | { readonly act: 'sign'; readonly sign: AlarmSign | null }
  | { readonly act: 'where'; readonly where: BodyPart | 'elsewhere' }
  | { readonly act: 'side'; readonly side: Side | 'both' }
  | { readonly act: 'degree'; readonly degree: number }
  | { readonly act: 'heed'; readonly take: 'gently' | 'easier' | 'leave' | 'stop' }
  /** Ends the session where it stands. */
  | { readonly act: 'stop here' }
  | { readonly act: 'effort'; readonly effort: number | null }
  | { readonly act: 'send' }
  | { readonly act: 'passed' }
  | { readonly act: 'this phone' }
  | { readonly act: 'set'; readonly settings: PhoneSettings }
  | { readonly act: 'back' };
