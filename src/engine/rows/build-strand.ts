/** One row and its sets as the walk reads it. */
import type { Day } from '../../model/day.js';
import type { Tenths } from '../../model/quantity.js';
import type { Occurrence, StrandInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { returnOf } from '../breaks/returns.js';
import { tempoFactor } from '../capacity/tempo-factor.js';
import { capacityOf, isCounted, repsToFailure, resistedLoad, slowedReps } from '../capacity.js';
import { askedReserve, type Floor, floorIn, gainOf } from '../effort/plan-effort.js';
import type { Recall } from '../history/recall.js';
import { heldForTests } from '../items/test-sets.js';
import type { PlannedSession } from '../sessions/plan-sets.js';
import type { Beginning } from './beginning.js';
import type { FittedRow, WalkFitted } from './fit-rows.js';
import { heldOf, recallOf, rowKey } from './from-marks.js';
import { isHurried } from './planned-by.js';
import { triedLoad } from './tried-load.js';
import { walkTempi } from './walk-tempi.js';
import { walkValues } from './walk-values.js';

export interface StrandParts {
  readonly fitted: WalkFitted;
  readonly beginning: Beginning;
  /** In order; a session in which the row was cut is not among its occurrences. */
  readonly sessions: readonly PlannedSession[];
  readonly floors: readonly Floor[];
  /** A version that the row goes through meets a caution. */
  readonly cautioned: boolean;
  /** The weeks in which the row's exercise is tested. */
  readonly testWeeks: readonly number[];
  /** What marks older than those at hand had opened. */
  readonly triedBefore?: StrandInput['tried'];
}

export function buildStrand(context: BlockContext, parts: StrandParts): StrandInput {
  const { fitted, beginning, sessions, floors, cautioned, testWeeks } = parts;
  const { row, session, reps, chain, dose } = fitted;
  const held = heldOf(context, fitted);
  const recall = recallOf(context, chain.judged[beginning.start?.version ?? chain.base]);
  const all = sessions.flatMap(({ queued, rows }): readonly Occurrence[] => {
    const sets = rows.find((timed) => timed.fitted === fitted)?.sets ?? 0;
    if (sets === 0) return [];
    const least = floorIn(queued.week, floors)?.reserve ?? 0;
    const floor = Math.max(least, floorAt(recall, queued.date));
    const asked = askedReserve(context, queued.curve, fitted.effort, floor, isHurried(fitted));
    const back = returnOf(context, queued.date)?.held ?? null;
    const hold = held !== null && queued.date <= held.until ? held : null;
    const occurrence = { week: queued.week, easy: queued.curve.easy, asked, floor, sets };
    const why = back?.why ?? hold?.why;
    if (why === undefined) return [occurrence];
    const maxReps = hold === null ? null : mostHeld(hold, recall, fitted, staysAt(context, parts, floor));
    return [{ ...occurrence, held: { maxReps, why } }];
  });
  const occurrences = heldForTests(all, testWeeks);
  const trials = allowsTrials(context, fitted) && !cautioned;
  const tried = trials ? triedLoad(context, fitted, beginning, parts.triedBefore) : null;
  const { moderate, steady } = context.standing;
  const keepsSteady = moderate || steady;
  const way = chain.judged[chain.base]?.exercise.facts.way;
  return {
    id: `${session.id}/${row.id}`,
    session: session.id,
    row: row.id,
    way: way === 'bodyweight' || way === 'combination' ? way : 'strength',
    equation: 'epley',
    bottom: reps.min,
    top: reps.max,
    bodyMass: context.client.bodyMass?.mass.grams ?? null,
    versions: beginning.versions,
    tempi: walkTempi(context, fitted).map((step) => ({ step, factor: tempoFactor(step, context.rules) })),
    trials,
    ...(keepsSteady || dose.kind === 'steps' ? { gates: false } : {}),
    gain: gainOf(context, cautioned).gain,
    capacity: beginning.capacity,
    start: beginning.start,
    ...(tried === null ? {} : { tried }),
    greatest: recall.last?.greatest ?? null,
    // What was done is known up to now: no gain is counted on in weeks that are over.
    weeks: context.programme.curve
      .map(({ easy }, index) => ({ week: index + 1, easy }))
      .filter(({ week }) => week >= context.next.week),
    occurrences,
    rules: walkValues(context.rules),
  };
}

/**
 * Whether the row may have trials, as far as its dose and the client's health go: a trial is another bell, for which
 * there is no time between two signals, and no room in a line of steps.
 */
export function allowsTrials({ standing }: BlockContext, { row, dose }: FittedRow): boolean {
  return row.trials && !standing.moderate && !standing.steady && dose.kind !== 'every' && dose.kind !== 'steps';
}

/**
 * No more than was done last in this row, nor than is said otherwise; of what was done the bottom of the range at least.
 * Only where the row stays at its load: to one that must fall anyway, fewer reps would leave a heavier load open.
 */
function mostHeld(
  hold: NonNullable<Recall['hold']>,
  recall: Recall,
  fitted: WalkFitted,
  stays: boolean,
): number | null {
  const last = recall.lastIn.get(rowKey(fitted))?.reps;
  const own = last === undefined || !stays ? null : Math.max(last, fitted.reps.min);
  const most = [hold.maxReps, own].filter((reps) => reps !== null);
  return most.length === 0 ? null : Math.max(1, Math.min(...most));
}

/** Whether the load it begins with leaves so much at the bottom of the range. */
function staysAt(context: BlockContext, { beginning, fitted }: StrandParts, floor: Tenths): boolean {
  const { capacity, start, versions } = beginning;
  const version = start === null ? undefined : versions[start.version];
  const load = version?.loads.findLast(({ grams }) => grams <= (start?.load ?? 0));
  if (capacity === null || start === null || version === undefined || load === undefined) return false;
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const k = capacityOf('epley', capacity, isCounted(version, bodyMass));
  const normal = repsToFailure('epley', k, capacity.reps, resistedLoad(version, load, bodyMass));
  const factor = tempoFactor(walkTempi(context, fitted)[start.tempo] ?? 'normal', context.rules);
  return slowedReps(normal, factor) >= 10 * fitted.reps.min + floor;
}

const floorAt = ({ floor }: Recall, day: Day): Tenths => (floor !== null && day <= floor.until ? floor.reserve : 0);
