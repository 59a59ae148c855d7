/** What a screen is made from: the client's plan, what is marked, and the moment. Nothing else decides what is shown. */
import type { ClientPlan } from '../../model/client-plan.js';
import type { IsoDate } from '../../model/day.js';
import type { EventHead, LogEvent } from '../../model/log.js';
import type { KeepFault, Moment, PhoneSettings } from '../../model/training.js';
import type { ReplannedItem } from '../replan.js';
import type { TrainingState } from './training-state.js';

export interface Told {
  readonly plan: ClientPlan;
  /** Rows still to come that are done otherwise than printed. */
  readonly replanned: readonly ReplannedItem[];
  /** All of this booklet, in any order. */
  readonly events: readonly LogEvent[];
  readonly now: Moment;
  /** The local day. */
  readonly today: IsoDate;
  readonly settings: PhoneSettings;
  readonly fault: KeepFault | null;
  /** `null` where the browser does not say. */
  readonly persisted: boolean | null;
  readonly standing: 'stands' | 'ended' | 'withdrawn';
  /** The edition this phone showed before; `null` on a first opening. */
  readonly seenEdition: number | null;
  /** When marks were last passed on; `null` for never. */
  readonly passedAt: Moment | null;
  /** The marks as a message. */
  readonly message: string;
}

type Without<Event> = Event extends unknown ? Omit<Event, keyof EventHead> : never;

/** An event before it is stamped with its id, its place in the log, its edition and its moment. */
export type Mark = Without<LogEvent>;

export type SetMark = Extract<Mark, { readonly kind: 'set' }>;

/** What an act comes to. */
export interface Stepped {
  readonly state: TrainingState;
  /** In order; they are kept together or not at all. */
  readonly marks: readonly Mark[];
}
