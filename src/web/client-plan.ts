/**
 * The part of the plan that travels with a client's booklet. A list of what may go, not of what may not:
 * a field added to the plan stays private until it is named here.
 * It leaves out every input (tests, cautions, body mass, screening), what was considered and refused, findings and
 * every reason: the client's own sentences stand in the booklet, and a reason's figures can tell a body mass.
 */
import type { IsoDate } from '../model/day.js';
import type { Sides, Way } from '../model/exercise.js';
import type { ExerciseId, RowId, SessionId, SetKey, SetKind, Side } from '../model/identity.js';
import type { LoadMode } from '../model/kit.js';
import type { EasierItem, Group, Item, Plan, PlanLoad, PlanSet, Talk } from '../model/plan.js';
import type { TempoStep } from '../model/programme.js';
import type { Seconds, Tenths } from '../model/quantity.js';

export interface ClientLoad {
  /** 0 of a band, which goes by its step. */
  readonly grams: number;
  readonly mode: LoadMode;
  readonly label: string;
  /** Of a band: 1-based, the easiest to stretch first. */
  readonly step?: number;
}

export interface ClientSet {
  readonly key: SetKey;
  readonly kind: SetKind;
  readonly round: number;
  readonly reps?: number;
  readonly seconds?: Seconds;
  readonly metres?: number;
  readonly side?: Side;
  readonly load?: ClientLoad;
  /** Rising or falling reps, once through. */
  readonly steps?: readonly number[];
  /** Straight after it, without a rest. */
  readonly next?: { readonly reps: number; readonly load: ClientLoad };
  readonly deadStop?: true;
  /** Of a test: the reserve at which it stops. */
  readonly stopAt?: Tenths;
  readonly optional?: true;
}

export interface ClientEasier {
  readonly exercise?: string;
  readonly say: string;
  /** One set of it; it is done for as many sets as the exercise it stands in for. */
  readonly set: ClientSet | null;
}

export interface ClientItem {
  readonly row: RowId;
  readonly exercise: ExerciseId;
  /** The one way of it this client may do, as it is called. */
  readonly done?: string;
  readonly way: Way;
  readonly sides: Sides;
  readonly tempo: TempoStep;
  readonly restSeconds: Seconds;
  /** The reserve asked for, as the booklet says it. */
  readonly reserve: Tenths | null;
  readonly talk?: Talk;
  readonly sets: readonly ClientSet[];
  readonly easier: readonly ClientEasier[];
}

export interface ClientGroup {
  readonly kind: Group['kind'];
  readonly name: string;
  readonly rounds: number;
  readonly everySeconds?: Seconds;
  readonly workSeconds?: Seconds;
  readonly pauseSeconds?: Seconds;
  readonly items: readonly ClientItem[];
}

export interface ClientPlan {
  readonly schema: 1;
  readonly edition: number;
  readonly starts: IsoDate;
  /** The last day sessions are planned for; why is the coach's own. */
  readonly last?: IsoDate;
  readonly weeks: readonly {
    readonly number: number;
    readonly begins: IsoDate;
    readonly easy: boolean;
    readonly sessions: readonly {
      readonly id: SessionId;
      readonly name: string;
      readonly date: IsoDate;
      readonly occurrence: number;
      readonly minutes: number;
      readonly groups: readonly ClientGroup[];
      /** What counts as the session done on a bad day. */
      readonly short?: { readonly minutes: number; readonly sets: readonly SetKey[] };
    }[];
  }[];
}

const loadOf = (load: PlanLoad): ClientLoad => ({
  grams: load.grams ?? 0,
  mode: load.mode,
  label: load.label,
  ...(load.step === undefined ? {} : { step: load.step }),
});

function setOf(set: PlanSet): ClientSet {
  const { then: next } = set;
  return {
    key: set.key,
    kind: set.kind,
    round: set.round,
    ...(set.reps === undefined ? {} : { reps: set.reps }),
    ...(set.seconds === undefined ? {} : { seconds: set.seconds }),
    ...(set.metres === undefined ? {} : { metres: set.metres }),
    ...(set.side === undefined ? {} : { side: set.side }),
    ...(set.load === undefined ? {} : { load: loadOf(set.load) }),
    ...(set.steps === undefined ? {} : { steps: set.steps }),
    ...(next === undefined ? {} : { next: { reps: next.reps, load: loadOf(next.load) } }),
    ...(set.deadStop === true ? { deadStop: true as const } : {}),
    ...(set.stopAt === undefined ? {} : { stopAt: set.stopAt.reserve }),
    ...(set.optional === true ? { optional: true as const } : {}),
  };
}

const easierOf = (easier: EasierItem): ClientEasier => ({
  ...(easier.exercise === undefined ? {} : { exercise: easier.exercise }),
  say: easier.say,
  set: easier.sets.map(setOf)[0] ?? null,
});

const itemOf = (item: Item): ClientItem => ({
  row: item.row,
  exercise: item.exercise,
  ...(item.done === undefined ? {} : { done: item.done.say }),
  way: item.way,
  sides: item.sides,
  tempo: item.tempo,
  restSeconds: item.restSeconds,
  reserve: item.asked.reserve,
  ...(item.talk === undefined ? {} : { talk: item.talk }),
  sets: item.sets.map(setOf),
  easier: item.easier.map(easierOf),
});

/** What warms up and cools down is easy as it is: its easier ways stand on its pages. */
const isAround = ({ kind }: Group): boolean => kind === 'warm-up' || kind === 'cool-down';

const groupOf = (group: Group): ClientGroup => ({
  kind: group.kind,
  name: group.name,
  rounds: group.rounds,
  ...(group.everySeconds === undefined ? {} : { everySeconds: group.everySeconds }),
  ...(group.workSeconds === undefined ? {} : { workSeconds: group.workSeconds }),
  ...(group.pauseSeconds === undefined ? {} : { pauseSeconds: group.pauseSeconds }),
  items: group.items.map((item) => (isAround(group) ? { ...itemOf(item), easier: [] } : itemOf(item))),
});

/** What of a plan its client may hold. */
export const clientPlanOf = (plan: Plan): ClientPlan => ({
  schema: 1,
  edition: plan.edition,
  starts: plan.starts,
  ...(plan.stops === undefined ? {} : { last: plan.stops.after }),
  weeks: plan.weeks.map((week) => ({
    number: week.number,
    begins: week.begins,
    easy: week.deload,
    sessions: week.sessions.map((session) => ({
      id: session.id,
      name: session.name,
      date: session.date,
      occurrence: session.occurrence,
      minutes: session.minutes,
      groups: session.groups.map(groupOf),
      ...(session.short.sets.length === 0 ? {} : { short: session.short }),
    })),
  })),
});
