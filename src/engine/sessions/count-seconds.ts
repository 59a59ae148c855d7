/** How long a session takes at its longest: reps at the top of the range, at the slowest tempo a row may reach. */
import type { Dose } from '../../model/dose.js';
import type { Exercise } from '../../model/exercise.js';
import type { Seconds } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { Rulebook } from '../rulebook.js';
import { BETWEEN_EXERCISES } from '../rules/between-exercises.js';
import { CHANGE_OF_BELL } from '../rules/change-of-bell.js';
import { COOL_DOWN_OLDER } from '../rules/cool-down-older.js';
import { DOWN_OR_UP } from '../rules/down-or-up.js';
import { MINUTES_CAP } from '../rules/minutes-cap.js';
import { PUT_DOWN } from '../rules/put-down.js';
import { RE_PLATING } from '../rules/re-plating.js';
import { WARM_UP } from '../rules/warm-up.js';
import { WARM_UP_OLDER } from '../rules/warm-up-older.js';
import { holdsInBlock } from '../versions/meet-caution.js';
import { secondsOfRep } from './seconds-of-rep.js';

/** How long the parts of a row take, in seconds. */
export interface RowTimes {
  /** A set at the top of the range, and at the bottom. */
  readonly top: Seconds;
  readonly bottom: Seconds;
  /** Another bell, or other plates. */
  readonly change: Seconds;
  /** Down to the floor and up again. */
  readonly floor: Seconds;
  readonly rest: Seconds;
}

/** A row in one session of the queue. */
export interface TimedRow {
  readonly fitted: FittedRow;
  readonly times: RowTimes;
  /** Sets of work; 0 where the row was cut. */
  readonly sets: number;
  readonly feeler: boolean;
  /** A lighter set goes before it. */
  readonly warmUp: boolean;
  /** A trial set may take the place of its first set. */
  readonly trial: boolean;
}

/** Minutes of warm-up and cool-down: longer from the age of `older-from`, or with a caution on holding the breath. */
export function minutesAround(context: BlockContext): { readonly warmUp: number; readonly coolDown: number } {
  const { standing, firstDay, lastDay, rules } = context;
  const pressure = standing.cautions.some(
    (caution) => caution.what === 'breath hold' && holdsInBlock(caution, firstDay, lastDay),
  );
  return isOlder(context) || pressure
    ? { warmUp: rules.valueOf(WARM_UP_OLDER), coolDown: rules.valueOf(COOL_DOWN_OLDER) }
    : { warmUp: rules.valueOf(WARM_UP), coolDown: 0 };
}

/** Whole minutes, rounded up: warm-up, every row with `sets`, cool-down. */
export function countMinutes(rows: readonly TimedRow[], context: BlockContext): number {
  const { rules } = context;
  const { warmUp, coolDown } = minutesAround(context);
  const seconds = rows.reduce((sum, row) => sum + secondsOfRow(row, rules), 60 * (warmUp + coolDown));
  return Math.ceil(seconds / rules.valueOf(MINUTES_CAP));
}

export function timeRow(fitted: FittedRow, rules: Rulebook): RowTimes {
  return {
    top: secondsOfSet(fitted, 'max', rules),
    bottom: secondsOfSet(fitted, 'min', rules),
    change: changeSeconds(fitted, rules),
    floor: needsFloor(fitted) ? 2 * rules.valueOf(DOWN_OR_UP) : 0,
    rest: fitted.row.restSeconds,
  };
}

/** A row's part of the session, with the way to the next exercise. */
function secondsOfRow({ fitted, times, sets, feeler, warmUp, trial }: TimedRow, rules: Rulebook): Seconds {
  if (sets === 0) return 0;
  const { top, bottom, change, floor, rest } = times;
  const extra = (feeler ? bottom + rest + change : 0) + (warmUp ? bottom + change : 0) + (trial ? 2 * change : 0);
  const last = rules.valueOf(BETWEEN_EXERCISES);
  if (fitted.block.kind === 'circuit') return sets * (top + rest + change + floor) + extra + last;
  return sets * top + (sets - 1) * rest + change + floor + extra + last;
}

function secondsOfSet(fitted: FittedRow, end: 'min' | 'max', rules: Rulebook): Seconds {
  const exercises = fitted.chain.judged.map((version) => version.exercise);
  const rep = Math.max(
    ...exercises.flatMap((exercise) => fitted.row.tempi.map((step) => secondsOfRep(exercise.facts.tempo, step, rules))),
  );
  const putDown = exercises.some((exercise) => exercise.facts.onTheFloor) ? rules.valueOf(PUT_DOWN) : 0;
  return workOf(fitted.dose, end, rep) * timesThrough(fitted) + putDown;
}

/** Seconds of work in one set of one side. */
function workOf(dose: Dose, end: 'min' | 'max', rep: Seconds): Seconds {
  switch (dose.kind) {
    case 'sets':
      return dose.reps[end] * rep;
    case 'timed':
      return dose.seconds[end];
    case 'distance':
      return dose.metres[end];
    case 'every':
      return dose.reps * rep;
    case 'main-next':
      return (dose.main + dose.next) * rep;
    case 'steps':
      return dose.reps.reduce((sum, reps) => sum + reps, 0) * rep;
    case 'rounds':
      return 60;
  }
}

/** One side after the other takes twice as long; turn about only where the reps are counted for each side. */
function timesThrough({ chain, dose }: FittedRow): 1 | 2 {
  const sides = chain.judged[chain.base]?.exercise.facts.sides ?? 'both';
  return sides === 'each' || (sides === 'alternate' && 'eachSide' in dose && dose.eachSide) ? 2 : 1;
}

function changeSeconds({ chain }: FittedRow, rules: Rulebook): Seconds {
  const loads = chain.versions.flatMap((version) => version.loads);
  if (loads.some((load) => load.pieces.length > 2)) return rules.valueOf(RE_PLATING);
  return loads.some((load) => load.pieces.length > 0) ? rules.valueOf(CHANGE_OF_BELL) : 0;
}

const needsFloor = ({ chain }: FittedRow): boolean => chain.judged.some(({ exercise }) => asksFloor(exercise));

const asksFloor = (exercise: Exercise): boolean =>
  exercise.facts.asks.some((ask) => ask.of === 'floor' || ask.of === 'lying on the back');
