/** What the client did: append-only events, merged by union of their ids. Types only; reading comes later. */
import type { BodyPart } from './exercise.js';
import type { BookletId, ExerciseId, RowId, SetKey, Side } from './identity.js';
import type { PlanLoad } from './plan.js';
import type { TempoStep } from './programme.js';
import type { Seconds } from './quantity.js';

export interface EventHead {
  /** UUID. */
  readonly id: string;
  /** Counts up on one device. */
  readonly seq: number;
  readonly edition: number;
  /** Local date and time with offset, RFC 3339. */
  readonly at: string;
}

/** Signs that go straight to the emergency page: no questions, and nothing is planned on until the coach has looked. */
export const ALARM_SIGNS = [
  'chest, jaw or arm pain',
  'fainting',
  'sudden severe headache',
  'weakness on one side',
  'new numbness, or loss of bladder or bowel control',
  'breathlessness out of proportion',
  'swollen painful calf',
] as const;
export type AlarmSign = (typeof ALARM_SIGNS)[number];
/**
 * Of these a doctor is asked the same day; they are an emergency only together with breathlessness or pain in the chest. NHS,
 * ‘Deep vein thrombosis’, under what to do (from memory).
 */
export const SAME_DAY_SIGNS: ReadonlySet<AlarmSign> = new Set<AlarmSign>(['swollen painful calf']);

export interface PainReport {
  /** Where, in the client's words or a part of the body. */
  readonly where: BodyPart | 'elsewhere';
  /** Whole, 0–10. */
  readonly degree: number;
  readonly side?: Side;
  /** Said the day after: it was worse in the morning. */
  readonly worseNextMorning?: boolean;
  readonly alarm?: AlarmSign;
}

export type LogEvent = EventHead &
  (
    | {
        readonly kind: 'opened';
        readonly occurrence: number;
        readonly today: 'as usual' | 'not my best' | 'something hurts' | 'short of time';
      }
    | {
        readonly kind: 'set';
        readonly key: SetKey;
        readonly exercise: ExerciseId;
        readonly tempo: TempoStep;
        readonly done: 'done' | 'easier' | 'left out' | 'extra';
        readonly reps?: number;
        readonly seconds?: Seconds;
        readonly metres?: number;
        readonly load?: PlanLoad;
        /** The plan's own figures, not said by anybody. */
        readonly asPlanned: boolean;
      }
    /** As said; never filled in beforehand. */
    | {
        readonly kind: 'reserve';
        readonly occurrence: number;
        readonly row: RowId;
        readonly side: Side | 'both';
        readonly reps: number;
      }
    | { readonly kind: 'pain'; readonly occurrence: number; readonly row?: RowId; readonly report: PainReport }
    | { readonly kind: 'closed'; readonly occurrence: number; readonly effort?: number; readonly minutes?: number }
    | { readonly kind: 'note'; readonly text: string }
    /** Takes back an earlier event. */
    | { readonly kind: 'void'; readonly event: string }
  );

export interface Log {
  readonly schema: 1;
  readonly bookletId: BookletId;
  readonly device: string;
  readonly events: readonly LogEvent[];
}
