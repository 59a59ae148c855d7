/** Lays out what never changes in a strand, and where its walk begins. */
import type { Grams } from '../../model/quantity.js';
import type { StrandInput, VersionInput } from '../../model/strand.js';
import {
  bodyPart,
  capacityOf,
  carriedCapacity,
  decidingEquation,
  externalLoad,
  gainedCapacity,
  isCounted,
} from '../capacity.js';
import type { Footing, Ground, Place, WeekOfWalk } from './situation.js';
import { type SortedRules, valuesOf } from './sorted-rules.js';

/** `null` where nothing is known to start from: no capacity, or no load at or below the one to start with. */
export function layGround(input: StrandInput, rules: SortedRules): Ground | null {
  const { capacity, start } = input;
  if (capacity === null || start === null) return null;
  const began = placeOf(input, start);
  const footings = input.versions.map((version) => footingOf(version, input.bodyMass));
  const counted = footings[start.version]?.counted;
  if (began === null || counted === undefined) return null;
  const equation = decidingEquation(input.equation, counted, capacity.reps);
  return {
    input,
    footings,
    equation,
    tested: capacity.reps,
    weak: capacity.weak || (rules.has('walk-weak-above') && capacity.reps > input.rules.weakAbove),
    habits: rules.habits,
    values: valuesOf(rules, input),
    weeks: weeksOf(input, footings, capacityOf(equation, capacity, counted), rules.has('walk-gain')),
    began,
  };
}

function footingOf(version: VersionInput, bodyMass: Grams | null): Footing {
  const counted = isCounted(version, bodyMass);
  const part = bodyPart(version.share, bodyMass);
  const external: number[] = [];
  const resisted: number[] = [];
  for (const load of version.loads) {
    const grams = externalLoad(load);
    external.push(grams);
    resisted.push(counted ? grams + part : 1);
  }
  return { external, resisted, counted };
}

function placeOf(input: StrandInput, start: NonNullable<StrandInput['start']>): Place | null {
  const loads = input.versions[start.version]?.loads ?? [];
  let load = -1;
  for (let index = 0; index < loads.length; index += 1) {
    if ((loads[index]?.grams ?? 0) <= start.load) load = index;
  }
  return load < 0 ? null : { version: start.version, load, tempo: start.tempo };
}

/** Capacity of the version it began with is gained once after each work week, with or without this row in it. */
function weeksOf(
  input: StrandInput,
  footings: readonly Footing[],
  tested: number,
  gains: boolean,
): ReadonlyMap<number, WeekOfWalk> {
  const weeks = new Map<number, WeekOfWalk>();
  let capacity = tested;
  let workWeeks = 0;
  for (const { week, easy } of input.weeks) {
    weeks.set(week, { capacities: capacitiesOf(input, footings, capacity), workWeeks });
    if (easy) continue;
    workWeeks += 1;
    if (gains) capacity = gainedCapacity(capacity, input.gain);
  }
  return weeks;
}

/** Carried link by link from the version it began with. */
function capacitiesOf(input: StrandInput, footings: readonly Footing[], capacity: number): readonly number[] {
  const { versions, start } = input;
  const capacities = versions.map(() => 0);
  const began = start?.version ?? 0;
  capacities[began] = capacity;
  const carry = (from: number, to: number, ratio: 'toHarder' | 'toEasier'): void => {
    const [a, b] = [versions[from], versions[to]];
    const [x, y] = [footings[from], footings[to]];
    if (a === undefined || b === undefined || x === undefined || y === undefined) return;
    const [source, goal] = [
      { share: a.share, counted: x.counted },
      { share: b.share, counted: y.counted },
    ];
    capacities[to] = carriedCapacity(capacities[from] ?? 0, source, goal, a[ratio]);
  };
  for (let to = began + 1; to < versions.length; to += 1) carry(to - 1, to, 'toHarder');
  for (let to = began - 1; to >= 0; to -= 1) carry(to + 1, to, 'toEasier');
  return capacities;
}
