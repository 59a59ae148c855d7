/**
 * What was done: issued plans and the marks that came back, put together session by session. `session` makes it, the
 * engine and the review read it. Nothing here is guessed: a mark that says nothing of a figure leaves it out.
 */
import type { Day } from './day.js';
import type { Sides, Way } from './exercise.js';
import type { ExerciseId, RowId, SessionId, SetKey, SetKind, Side } from './identity.js';
import type { LogEvent, PainReport } from './log.js';
import type { Item, Plan, PlanLoad, PlanSession, PlanSet } from './plan.js';
import type { TempoStep } from './programme.js';
import type { Tenths } from './quantity.js';

/** One set as it was done. */
export interface DoneSet {
  readonly key: SetKey;
  readonly kind: SetKind;
  readonly side: Side | 'both';
  readonly exercise: ExerciseId;
  readonly tempo: TempoStep;
  readonly done: 'done' | 'easier' | 'left out' | 'extra';
  /** One of them; none where the set was left out. */
  readonly reps?: number;
  readonly seconds?: number;
  readonly metres?: number;
  /** Absent for the body alone. */
  readonly load?: PlanLoad;
  /** The plan's own figures, ticked and not said by anybody. */
  readonly asPlanned: boolean;
  /** What the edition asked of it; absent for an extra set. */
  readonly planned?: PlanSet;
}

/** One row of one session, with whatever was marked of it. */
export interface DoneRow {
  readonly row: RowId;
  /** As planned: what was done stands with each set. */
  readonly exercise: ExerciseId;
  readonly way: Way;
  readonly sides: Sides;
  readonly tempo: TempoStep;
  readonly asked: Item['asked'];
  readonly inCircuit: boolean;
  /** Of a ladder: the rung it was planned at, from 1. */
  readonly rung?: number;
  /** In the order of the plan, extra ones last; empty where nothing of the row was marked. */
  readonly sets: readonly DoneSet[];
  /** As said after the last set, never filled in; of each side at most once, the latest word. */
  readonly reserve: readonly { readonly side: Side | 'both'; readonly reserve: Tenths }[];
  readonly pain: readonly PainReport[];
}

/** One session of which something was marked. */
export interface DoneSession {
  /** 1-based. */
  readonly block: number;
  /** 1-based place in the block's queue. */
  readonly occurrence: number;
  readonly session: SessionId;
  readonly name: string;
  /** 1-based. */
  readonly week: number;
  readonly easy: boolean;
  /** The edition its first mark was made in. */
  readonly edition: number;
  readonly planned: Day;
  /** The local day of its first set, or of its first mark where there is no set. */
  readonly day: Day;
  readonly today: Extract<LogEvent, { readonly kind: 'opened' }>['today'] | null;
  /** The client said that it was over. */
  readonly closed: boolean;
  /** 0–10 for the whole session, as said. */
  readonly effort: number | null;
  /** Minutes it took, as said. */
  readonly minutes: number | null;
  readonly minutesPlanned: number;
  /** Every row of the plan, in its order. */
  readonly rows: readonly DoneRow[];
  /** Said of the session as a whole. */
  readonly pain: readonly PainReport[];
}

/** A planned session of a block, done or not. */
export interface QueuedPlan {
  readonly edition: number;
  readonly week: number;
  readonly session: PlanSession;
}

/** One block as its editions left it: what was planned last of each session, and its latest plan whole. */
export interface PlannedBlock {
  /** 1-based. */
  readonly block: number;
  /** Latest edition. */
  readonly edition: number;
  readonly plan: Plan;
  /** In order of occurrence: of a session done, as it stood in the edition it was done in; else as planned last. */
  readonly queue: readonly QueuedPlan[];
}

export interface History {
  /** In order. */
  readonly blocks: readonly PlannedBlock[];
  /** In order of day, then of block and occurrence. */
  readonly sessions: readonly DoneSession[];
  readonly notes: readonly { readonly day: Day; readonly text: string }[];
  /** The day of the latest mark of any sort; `null` where nothing came back. */
  readonly lastMark: Day | null;
}

export const NO_HISTORY: History = { blocks: [], sessions: [], notes: [], lastMark: null };
