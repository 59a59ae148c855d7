/** How long the parts of one row take, whatever its dose and way of working. When they come stands with the clock. */
import type { Exercise } from '../../model/exercise.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { BandLoad } from '../../model/ladder.js';
import type { TempoStep } from '../../model/programme.js';
import type { Seconds } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { sumOfSteps } from '../rows/planned-by.js';
import type { Rulebook } from '../rulebook.js';
import { CHANGE_OF_BELL } from '../rules/change-of-bell.js';
import { PUT_DOWN } from '../rules/put-down.js';
import { RE_PLATING } from '../rules/re-plating.js';
import { SECONDS_A_METRE } from '../rules/seconds-a-metre.js';
import { SECONDS_A_ROUND } from '../rules/seconds-a-round.js';
import { SECONDS_A_SWING } from '../rules/seconds-a-swing.js';
import { needsFloor } from './order-rows.js';
import { secondsOfRep } from './seconds-of-rep.js';

/** How long the parts of a row take, in seconds. */
export interface RowTimes {
  /** A set at its longest, both sides. */
  readonly top: Seconds;
  /** A feeler set, or a lighter one: the bottom of the range. */
  readonly bottom: Seconds;
  /** Another bell, or other plates; 0 where nothing is in hand. */
  readonly change: Seconds;
  /** The pieces of its one load, where it has only one: a row before it with the same needs no change. */
  readonly only: string | null;
  /** Done down on the floor. */
  readonly floor: boolean;
  readonly rest: Seconds;
  /** One rep at its longest; of a dose that does not count reps, 0. */
  readonly rep: Seconds;
}

/** At the slowest tempo and in the slowest version that the row may reach. */
export function timeRow(fitted: FittedRow, context: BlockContext): RowTimes {
  const { rules } = context;
  const { dose, row } = fitted;
  const exercises = fitted.chain.judged.map((version) => version.exercise);
  const tenths = Math.max(...exercises.map((exercise) => tenthsOfRep(exercise, row.tempi, context)));
  const loads = loadsOf(fitted);
  const change = changeSeconds(loads, rules);
  const putDown = exercises.some((exercise) => exercise.facts.onTheFloor) ? rules.valueOf(PUT_DOWN) : 0;
  const setOf = (end: 'min' | 'max'): Seconds => {
    const work = workOf(fitted, end, tenths, rules) * timesThrough(fitted);
    const downs = dose.kind === 'steps' ? dose.reps.length : 1;
    return work + downs * putDown + (dose.kind === 'main-next' ? change : 0);
  };
  const every = dose.kind === 'every' ? dose.everySeconds : null;
  return {
    top: every ?? setOf('max'),
    bottom: setOf('min'),
    change,
    only: dose.kind === 'main-next' ? null : onlyLoad(loads),
    floor: needsFloor(fitted),
    rest: every === null ? row.restSeconds : 0,
    rep: Math.ceil(tenths / 10) * timesThrough(fitted),
  };
}

/** Tenths of a second: swing work at its own pace, a combination part by part, else by the tempo. */
export function tenthsOfRep(exercise: Exercise, tempi: readonly TempoStep[], context: BlockContext): number {
  const { rules, exercises } = context;
  if (exercise.facts.way === 'swing') return rules.valueOf(SECONDS_A_SWING);
  const own = Math.max(...tempi.map((step) => secondsOfRep(exercise.facts.tempo, step, rules)));
  const parts = exercise.facts.parts.flatMap((id) => exercises.get(id) ?? []);
  // A part that is a combination itself counts by its tempo: pages may name each other round and round.
  const inParts = parts.reduce((sum, part) => sum + secondsOfRep(part.facts.tempo, 'normal', rules), 0);
  return 10 * Math.max(own, inParts);
}

const reps = (count: number, tenths: number): Seconds => Math.ceil((count * tenths) / 10);

/** Seconds of work in one set of one side; a second begun counts whole. */
function workOf(fitted: FittedRow, end: 'min' | 'max', tenths: number, rules: Rulebook): Seconds {
  const { dose } = fitted;
  switch (dose.kind) {
    case 'sets':
      return reps(dose.reps[end], tenths);
    case 'timed':
      // A walked row counts reps in the time there is, and may do them more slowly than it was measured by.
      return Math.max(dose.seconds[end], fitted.planned === 'walk' ? reps(fitted.reps[end], tenths) : 0);
    case 'distance':
      return reps(dose.metres[end], rules.valueOf(SECONDS_A_METRE));
    case 'every':
      return reps(dose.reps, tenths);
    case 'main-next':
      return reps(dose.main + dose.next, tenths);
    case 'steps':
      return reps(sumOfSteps(dose.reps), tenths);
    case 'rounds':
      return rules.valueOf(SECONDS_A_ROUND);
  }
}

/** One side after the other takes twice as long; turn about only where the dose is counted for each side. */
function timesThrough({ chain, dose }: FittedRow): 1 | 2 {
  const sides = chain.judged[chain.base]?.exercise.facts.sides ?? 'both';
  return sides === 'each' || (sides === 'alternate' && 'eachSide' in dose && dose.eachSide) ? 2 : 1;
}

type Held = Pick<MakeableLoad | BandLoad, 'pieces'>;

const loadsOf = ({ chain }: FittedRow): readonly Held[] => [
  ...chain.versions.flatMap(({ loads }) => loads),
  ...chain.judged.flatMap(({ bands }) => bands),
];

function changeSeconds(loads: readonly Held[], rules: Rulebook): Seconds {
  if (loads.some((load) => load.pieces.length > 2)) return rules.valueOf(RE_PLATING);
  return loads.some((load) => load.pieces.length > 0) ? rules.valueOf(CHANGE_OF_BELL) : 0;
}

function onlyLoad([first, ...others]: readonly Held[]): string | null {
  const nameOf = ({ pieces }: Held): string => pieces.map(({ id }) => id).join(' ');
  const name = first === undefined ? null : nameOf(first);
  return others.every((load) => nameOf(load) === name) ? name : null;
}
