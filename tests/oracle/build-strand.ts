/** Makes strands from what a coach would jot down, for check values and generated tests alike. No decisions here. */
import type { LoadJson, OccurrenceJson, RulesJson, StrandJson, VersionJson } from './strand-json.js';

export const RULES: RulesJson = { tolerance: 2, smallStep: 100, trialMargin: 30, volume: 1100, weakAbove: 120 };

export const TEMPI = [
  { step: 'normal', factor: 1000 },
  { step: 'slow lowering', factor: 800 },
  { step: 'slow with a pause', factor: 700 },
] as const;

/** One bell held in one place: what is held is what it weighs. */
export const bell = (grams: number): LoadJson => ({
  grams,
  mode: 'total',
  pieces: grams === 0 ? [] : [{ id: `bell-${grams}`, grams }],
  label: grams === 0 ? 'no load' : `${grams / 1000} kg`,
});

/** Two equal bells: printed a hand, resisted together. */
export const pair = (grams: number): LoadJson => ({
  grams,
  mode: 'per-hand',
  pieces: [1, 2].map((n) => ({ id: `bell-${grams}-${n}`, grams })),
  label: `2 × ${grams / 1000} kg`,
});

/** A bar in even steps, with plates from a well-stocked rack. */
export function bar(from: number, to: number, by: number): readonly LoadJson[] {
  const loads: LoadJson[] = [];
  for (let grams = from; grams <= to; grams += by) {
    const pieces = [
      { id: 'bar', grams: from },
      ...(grams > from ? [{ id: `plates-${grams - from}`, grams: grams - from }] : []),
    ];
    loads.push({ grams, mode: 'total', pieces, label: `${grams / 1000} kg` });
  }
  return loads;
}

export const bells = (...kilograms: readonly number[]): readonly LoadJson[] => kilograms.map((kg) => bell(kg * 1000));

export const version = (
  exercise: string,
  loads: readonly LoadJson[],
  more: Partial<VersionJson> = {},
): VersionJson => ({
  exercise,
  mode: loads[0]?.mode ?? 'total',
  share: 0,
  toHarder: null,
  toEasier: null,
  signedOffTo: null,
  loads,
  ...more,
});

export interface Jotting {
  readonly versions: readonly VersionJson[];
  /** `[load in grams, reps, reserve in reps]`, in the version the walk starts in. */
  readonly tested: readonly [number, number, number];
  readonly range: readonly [number, number];
  /** Asked reserve in reps of the work weeks; an easy week asking 4 follows. */
  readonly curve: readonly number[];
  /** Sets of each work week (one number for all) and of the easy week. */
  readonly sets: readonly [readonly number[] | number, number];
  readonly floor?: number;
  readonly gain?: number;
  readonly bodyMass?: number;
  readonly tempi?: boolean;
  readonly earned?: 0 | 1 | 2;
  readonly weak?: boolean;
  readonly more?: Partial<StrandJson>;
}

/** Resisted load of the test, for a version whose share is known or nil. */
function resistedAt(jotting: Jotting): number {
  const from = jotting.versions[jotting.more?.start?.version ?? 0];
  const load = from?.loads.find((one) => one.grams === jotting.tested[0]);
  const held = (load?.pieces ?? []).reduce((sum, piece) => sum + piece.grams, 0);
  const share = from?.share ?? 0;
  if (share > 0 && jotting.bodyMass === undefined) return 1;
  return Math.max(1, held + Math.floor((share * (jotting.bodyMass ?? 0)) / 1000));
}

export function buildStrand(jotting: Jotting): StrandJson {
  const floor = 10 * (jotting.floor ?? 2);
  const easyWeek = jotting.curve.length + 1;
  const [work, easy] = jotting.sets;
  const occurrences: OccurrenceJson[] = [...jotting.curve, 4].map((reserve, index) => {
    const week = index + 1;
    const ofWeek = typeof work === 'number' ? work : (work[index] ?? 1);
    return {
      week,
      easy: week === easyWeek,
      asked: Math.max(floor, 10 * reserve),
      floor,
      sets: week === easyWeek ? easy : ofWeek,
    };
  });
  const [load, reps, left] = jotting.tested;
  return {
    id: 'a/row',
    session: 'a',
    row: 'row',
    way: 'strength',
    equation: 'epley',
    bottom: jotting.range[0],
    top: jotting.range[1],
    bodyMass: jotting.bodyMass ?? null,
    versions: jotting.versions,
    tempi: TEMPI.slice(0, jotting.tempi ? 3 : 1),
    trials: true,
    gain: jotting.gain ?? 0,
    capacity: {
      side: 'both',
      resisted: resistedAt(jotting),
      reps: 10 * (reps + left),
      weak: jotting.weak ?? 10 * (reps + left) > RULES.weakAbove,
    },
    start: { version: 0, load, tempo: 0, earned: jotting.earned ?? 0 },
    greatest: null,
    weeks: occurrences.map(({ week, easy: isEasy }) => ({ week, easy: isEasy })),
    occurrences,
    rules: RULES,
    ...jotting.more,
  };
}
