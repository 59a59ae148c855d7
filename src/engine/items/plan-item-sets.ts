/** The sets of one item, one by one: warm-up, feeler, trial and work, rounds × sides, weaker side first. */
import type { Sides } from '../../model/exercise.js';
import { type ExerciseId, type RowId, type SetKind, type Side, setKey } from '../../model/identity.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { Choice, GateNeeds, OtherwiseSet, PlanSet } from '../../model/plan.js';
import type { Tenths } from '../../model/quantity.js';
import { invariant } from '../../model/result.js';
import type { StrandInput } from '../../model/strand.js';
import type { Option, WalkStep } from '../walk-step.js';
import { planLoad } from './plan-load.js';
import type { SetAmount } from './set-amount.js';

export interface SetPlace {
  readonly block: number;
  readonly occurrence: number;
  readonly row: RowId;
  /** In the order they are done; `both` where a set is not of one side. */
  readonly sides: readonly (Side | 'both')[];
  /** How much so many reps of an exercise are, as the row's dose is written; plain reps where it says nothing. */
  readonly amount?: (reps: number, exercise?: ExerciseId) => SetAmount;
}

/** Weaker side first; one set for both where they work together or turn about. */
export function sidesInOrder(sides: Sides, weaker: Side | 'both'): readonly (Side | 'both')[] {
  if (sides !== 'each') return ['both'];
  return weaker === 'right' ? ['right', 'left'] : ['left', 'right'];
}

interface Dose {
  readonly reps: number;
  /** Where it is not the item's own. */
  readonly exercise?: ExerciseId;
  readonly load: MakeableLoad | null;
  /** `null` where nothing is predicted. */
  readonly reserve: Tenths | null;
}

function listSets(place: SetPlace, kind: SetKind, rounds: number, dose: Dose): readonly PlanSet[] {
  const { block, occurrence, row } = place;
  const much = amountOf(place, kind, dose);
  const held = dose.load === null ? {} : loadPart(dose.load);
  const left = dose.reserve === null ? {} : { reserve: dose.reserve };
  const sets: PlanSet[] = [];
  for (let round = 1; round <= rounds; round += 1) {
    for (const side of place.sides) {
      const key = setKey({ block, occurrence, row, side, kind, ordinal: round });
      sets.push(
        side === 'both'
          ? { key, kind, round, ...much, ...held, ...left }
          : { key, kind, round, ...much, side, ...held, ...left },
      );
    }
  }
  return sets;
}

/** Steps are for work alone: a set that only warms up, or finds the load, is done straight through. */
function amountOf({ amount }: SetPlace, kind: SetKind, { reps, exercise }: Dose): SetAmount {
  const whole = amount?.(reps, exercise) ?? { reps };
  if (kind === 'work' || kind === 'trial') return whole;
  return { reps, ...(whole.seconds === undefined ? {} : { seconds: whole.seconds }) };
}

export const warmUpSets = (place: SetPlace, dose: Dose): readonly PlanSet[] => listSets(place, 'warm-up', 1, dose);

/** Of an item whose load is known. The first work set carries the gate and what to do otherwise. */
export function workSets(place: SetPlace, strand: StrandInput, step: WalkStep): readonly PlanSet[] {
  const { trial, gate, otherwise } = step;
  const trialSets =
    trial === undefined
      ? []
      : listSets(place, 'trial', 1, {
          reps: trial.reps,
          load: loadAt(strand, trial.option),
          reserve: trial.reserve,
          exercise: exerciseAt(strand, trial.option),
        }).map((set) =>
          // A trial of a harder version is no set of the item's own exercise, and says so.
          trial.option.version === step.option.version ? set : { ...set, exercise: exerciseAt(strand, trial.option) },
        );
  const work = listSets(place, 'work', step.sets - (trial === undefined ? 0 : 1), {
    reps: step.reps,
    load: loadAt(strand, step.option),
    reserve: step.reserve,
  });
  return [
    ...trialSets,
    ...work.map((set, index) => {
      if (index > 0 || (gate === undefined && otherwise === undefined)) return set;
      return {
        ...set,
        ...(gate === undefined ? {} : { gate: { needs: needsOf(strand, gate.needs) } }),
        ...(otherwise === undefined ? {} : { otherwise: [otherwiseOf(strand, otherwise)] }),
      };
    }),
  ];
}

/**
 * Of an item whose load is not known: a feeler set in the first session, and work without a load. The table of
 * choices stands on the first set of the item; a work set has the fewest reps any line of it has.
 */
export function feelerSets(
  place: SetPlace,
  rounds: number,
  asked: Tenths,
  choose: readonly Choice[],
  feeler: { readonly load: MakeableLoad; readonly reps: number } | null,
): readonly PlanSet[] {
  const reps = Math.min(...choose.map((choice) => choice.reps));
  const work = listSets(place, 'work', rounds, { reps, load: null, reserve: asked });
  const felt = feeler === null ? [] : listSets(place, 'feeler', 1, { ...feeler, reserve: null });
  return [...felt, ...work].map((set, index) => (index === 0 ? { ...set, choose } : set));
}

export function loadAt(strand: StrandInput, { version, load }: Option): MakeableLoad {
  const made = strand.versions[version]?.loads.find(({ grams }) => grams === load);
  invariant(made !== undefined, 'the walk stays among the loads of its strand');
  return made;
}

function exerciseAt(strand: StrandInput, { version }: Option) {
  const exercise = strand.versions[version]?.exercise;
  invariant(exercise !== undefined, 'the walk stays among the versions of its strand');
  return exercise;
}

const loadPart = (load: MakeableLoad) => (load.grams === 0 ? {} : { load: planLoad(load) });

function needsOf(strand: StrandInput, needs: NonNullable<WalkStep['gate']>['needs']): GateNeeds {
  const { option, reps, reserve, weeks } = needs;
  return { exercise: exerciseAt(strand, option), ...loadPart(loadAt(strand, option)), reps, reserve, weeks };
}

function otherwiseOf(strand: StrandInput, other: NonNullable<WalkStep['otherwise']>): OtherwiseSet {
  const { option, reps, reserve, sets } = other;
  return {
    exercise: exerciseAt(strand, option),
    reps,
    ...loadPart(loadAt(strand, option)),
    tempo: strand.tempi[option.tempo]?.step ?? 'normal',
    reserve,
    sets,
  };
}
