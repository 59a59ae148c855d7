/** A row of which nothing is known: the set that finds the load, and what each answer to it leads to. */
import { exerciseId } from '../../model/identity.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { Choice, EasierItem } from '../../model/plan.js';
import { invariant } from '../../model/result.js';
import type { StrandInput, VersionInput } from '../../model/strand.js';
import { capacityOf, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { planLoad } from '../items/plan-load.js';
import { planSurely } from '../plan-strand.js';
import { type Share, underPercent } from './under-percent.js';

export interface Feeler {
  /** The lightest load there is. */
  readonly load: MakeableLoad;
  readonly reps: number;
  /** For each occurrence, what each answer leads to: 0, 1, 2, 3, 4, 5 to 9, 10 or more good reps left. */
  readonly choices: readonly (readonly Choice[])[];
}

/** Good reps left, as asked, from so many up to the next; from `ROUGH` on no more is known than that, so it is weak. */
const ANSWERS = [0, 1, 2, 3, 4, 5, 10];
const ROUGH = 5;
const OR_MORE = 99;

/**
 * The feeler set is done with the lightest load, for the bottom of the range. Each answer is a capacity, and the
 * walk is planned from it as from a test: beginning with the heaviest load up to `rise` loads above the one felt that
 * leaves the asked reserve at the bottom of the range. An answer from which nothing leaves the floor leads to `easier`.
 */
export function planFeeler(
  strand: StrandInput,
  base: number,
  rise: number,
  easier: EasierItem,
  /** With the easier version, of which nothing is known. */
  easierReps: number,
  share: Share | null,
): Feeler {
  const version = strand.versions[base];
  const load = version?.loads[0];
  invariant(version !== undefined && load !== undefined, 'an allowed version has a load');
  const walks = ANSWERS.map((left) => walkFrom(strand, version, base, load, left, rise, share));
  const choices = strand.occurrences.map((occurrence, index) =>
    ANSWERS.map((left, answer): Choice => {
      const step = walks[answer]?.[index];
      const range = { min: left, max: (ANSWERS[answer + 1] ?? OR_MORE + 1) - 1 };
      if (step === undefined) {
        const way = exerciseId(easier.exercise ?? version.exercise);
        return { left: range, exercise: way, reps: easierReps, reserve: occurrence.asked };
      }
      const at = strand.versions[step.option.version];
      const held = at?.loads.find(({ grams }) => grams === step.option.load);
      return {
        left: range,
        exercise: at?.exercise ?? version.exercise,
        reps: step.reps,
        ...(held === undefined || held.grams === 0 ? {} : { load: planLoad(held) }),
        reserve: step.reserve,
      };
    }),
  );
  return { load, reps: strand.bottom, choices };
}

function walkFrom(
  strand: StrandInput,
  version: VersionInput,
  base: number,
  felt: MakeableLoad,
  left: number,
  rise: number,
  share: Share | null,
) {
  const { bodyMass, bottom } = strand;
  const counted = isCounted(version, bodyMass);
  const resisted = resistedLoad(version, felt, bodyMass);
  const reps = 10 * (bottom + left);
  const capacity = { side: 'both', resisted, reps, weak: left >= ROUGH } as const;
  const k = capacityOf(strand.equation, capacity, counted);
  const needed = 10 * bottom + (strand.occurrences[0]?.asked ?? 0) - strand.rules.tolerance;
  const within = counted ? version.loads.slice(0, 1 + rise) : version.loads.slice(0, 1);
  const first = within.filter(
    (load) => repsToFailure(strand.equation, k, reps, resistedLoad(version, load, bodyMass)) >= needed,
  );
  const start = { version: base, load: (first.at(-1) ?? felt).grams, tempo: 0, earned: 0 } as const;
  // A line of the table has no room for a tempo, a trial or a gate: what holds without them is printed.
  const known = { ...strand, capacity, start, trials: false, tempi: strand.tempi.slice(0, 1) };
  return planSurely(share === null ? known : underPercent(known, share));
}
