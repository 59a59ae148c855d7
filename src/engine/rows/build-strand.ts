/** One row and its sets as the walk reads it. */
import type { TempoStep } from '../../model/programme.js';
import type { PerMille } from '../../model/quantity.js';
import type { Occurrence, StrandInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { returnOf } from '../breaks/returns.js';
import { askedReserve, type Floor, floorIn, gainOf } from '../effort/plan-effort.js';
import { heldForTests } from '../items/test-sets.js';
import type { Rulebook } from '../rulebook.js';
import { CLOCK_ONE_TEMPO } from '../rules/clock-one-tempo.js';
import { TEMPO_SLOW_LOWERING } from '../rules/tempo-slow-lowering.js';
import { TEMPO_SLOW_WITH_A_PAUSE } from '../rules/tempo-slow-with-a-pause.js';
import type { PlannedSession } from '../sessions/plan-sets.js';
import type { Beginning } from './beginning.js';
import type { FittedRow, WalkFitted } from './fit-rows.js';
import { isHurried } from './planned-by.js';
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
}

export function buildStrand(context: BlockContext, parts: StrandParts): StrandInput {
  const { fitted, beginning, sessions, floors, cautioned, testWeeks } = parts;
  const { row, session, reps, chain, dose } = fitted;
  const all = sessions.flatMap(({ queued, rows }): readonly Occurrence[] => {
    const sets = rows.find((timed) => timed.fitted === fitted)?.sets ?? 0;
    if (sets === 0) return [];
    const floor = floorIn(queued.week, floors)?.reserve ?? 0;
    const asked = askedReserve(context, queued.curve, fitted.effort, floor, isHurried(fitted));
    const held = returnOf(context, queued.date)?.held ?? null;
    const occurrence = { week: queued.week, easy: queued.curve.easy, asked, floor, sets };
    return [held === null ? occurrence : { ...occurrence, held: { maxReps: null, why: held.why } }];
  });
  const occurrences = heldForTests(all, testWeeks);
  const { moderate, steady } = context.standing;
  const keepsSteady = moderate || steady;
  const oneTempo = context.rules.valueOf(CLOCK_ONE_TEMPO);
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
    tempi: row.tempi
      .slice(0, dose.kind === 'sets' ? row.tempi.length : oneTempo)
      .map((step) => ({ step, factor: factorOf(step, context.rules) })),
    trials: allowsTrials(context, fitted) && !cautioned,
    ...(keepsSteady || dose.kind === 'steps' ? { gates: false } : {}),
    gain: gainOf(context, cautioned).gain,
    capacity: beginning.capacity,
    start: beginning.start,
    greatest: null,
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

function factorOf(step: TempoStep, rules: Rulebook): PerMille {
  switch (step) {
    case 'normal':
      return 1000;
    case 'slow lowering':
      return rules.valueOf(TEMPO_SLOW_LOWERING);
    case 'slow with a pause':
      return rules.valueOf(TEMPO_SLOW_WITH_A_PAUSE);
  }
}
