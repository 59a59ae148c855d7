/** What a row comes to today, laid over the sets that were printed: by their own keys, and never more of them. */
import { externalLoad, repsToFailure, resistedLoad, slowedReps } from '../engine/capacity.js';
import { type SetPlace, workSets } from '../engine/items/plan-item-sets.js';
import { planLoad } from '../engine/items/plan-load.js';
import { ladderSets } from '../engine/ladder/ladder-sets.js';
import type { LadderStep } from '../engine/ladder/ladder-step.js';
import type { Rulebook } from '../engine/rulebook.js';
import { WARM_UP_LOAD } from '../engine/rules/warm-up-load.js';
import type { Ground } from '../engine/walk/situation.js';
import type { WalkStep } from '../engine/walk-step.js';
import { compareIds, type ExerciseId, readSetKey, type SetKey } from '../model/identity.js';
import type { MakeableLoad } from '../model/kit.js';
import type { LadderInput } from '../model/ladder.js';
import type { Item, OtherwiseSet, PlanSet } from '../model/plan.js';
import type { TempoStep } from '../model/programme.js';
import type { StrandInput } from '../model/strand.js';

/** Which bound kept it from what was earned. */
export type Bound = 'load' | 'version' | 'tempo' | 'rung';

export interface Laid {
  readonly exercise: ExerciseId;
  readonly tempo: TempoStep;
  /** By the printed keys, in their order; `null` where a set is left out. */
  readonly sets: readonly { readonly key: SetKey; readonly set: PlanSet | null }[];
  readonly bounds: readonly Bound[];
}

type Sure = Pick<WalkStep, 'option' | 'reps' | 'reserve' | 'sets'>;

/**
 * `null` where it says the same as what is printed. What must first be earned inside the rest is not begun on the phone:
 * once it is, the rest is planned again. So a gate is taken where it is open, and a trial only where it was printed.
 */
export function layWalk(
  item: Item,
  strand: StrandInput,
  steps: readonly WalkStep[],
  index: number,
  toFailure: (version: number, load: MakeableLoad, tempo: number) => number | null,
  rules: Rulebook,
): Laid | null {
  const step = steps[index];
  if (step === undefined || saysTheSame(item, strand, step)) return null;
  const gate = steps.slice(0, index + 1).findLast((one) => one.gate !== undefined)?.gate;
  const open = gate !== undefined && gate.needs.weeks.length === 0;
  const sure: Sure = step.otherwise === undefined || open ? step : step.otherwise;
  const { option, reps, bounds } = within(item, strand, sure);
  const version = strand.versions[option.version];
  const load = version?.loads.find(({ grams }) => grams === option.load);
  const tempo = strand.tempi[option.tempo]?.step ?? 'normal';
  if (version === undefined || load === undefined) return null;
  const left = toFailure(option.version, load, option.tempo);
  const reserve = left === null ? sure.reserve : left - 10 * reps;
  const of = (set: PlanSet): PlanSet => {
    const { key, kind, round, side, stopAt } = set;
    return {
      key,
      kind,
      round,
      ...amountOf(item, set, reps),
      ...(side === undefined ? {} : { side }),
      ...(load.grams === 0 ? {} : { load: planLoad(load) }),
      reserve,
      ...(stopAt === undefined ? {} : { stopAt }),
    };
  };
  const warm = warmUp(strand, option.version, load, rules);
  const longest = Math.max(...item.sets.flatMap(({ steps }) => steps ?? []), 0) || strand.bottom;
  let rounds = 0;
  let lastRound = '';
  const sets = item.sets.map((set) => {
    if (set.kind === 'test') return { key: set.key, set: load.grams < (set.load?.grams ?? 0) ? of(set) : set };
    if (set.kind === 'feeler') return { key: set.key, set: null };
    if (set.kind !== 'work' && set.kind !== 'trial') {
      if (warm === null) return { key: set.key, set: null };
      const few = Math.min(longest, reps);
      const { exercise: _, reserve: __, ...rest } = set;
      const fresh = toFailure(option.version, warm, 0);
      const after = fresh === null ? {} : { reserve: fresh - 10 * few };
      return { key: set.key, set: { ...rest, reps: few, load: planLoad(warm), ...after } };
    }
    const round = `${set.kind}/${set.round}`;
    if (round !== lastRound) rounds += 1;
    lastRound = round;
    return { key: set.key, set: rounds > sure.sets ? null : of(set) };
  });
  const laid = { exercise: version.exercise, tempo, sets, bounds };
  return isSame(item, laid) ? null : laid;
}

/** The doses that the walk comes to, set beside those that are printed: reserves predicted may differ. */
function saysTheSame(item: Item, strand: StrandInput, step: WalkStep): boolean {
  const first = item.sets.find(({ kind }) => kind === 'work' || kind === 'trial');
  const parts = first === undefined ? null : readSetKey(first.key);
  if (parts === null || strand.versions[step.option.version]?.exercise !== item.exercise) return false;
  if ((strand.tempi[step.option.tempo]?.step ?? 'normal') !== item.tempo) return false;
  if (item.sets.some(({ choose, kind }) => choose !== undefined || kind === 'feeler')) return false;
  const place: SetPlace = { block: parts.block, occurrence: parts.occurrence, row: parts.row, sides: [parts.side] };
  const walked = workSets(place, strand, step);
  const tested = item.sets.some(({ kind }) => kind === 'test');
  const printed = item.sets.filter(
    ({ kind, side = 'both' }) => (kind === 'work' || kind === 'trial') && side === parts.side,
  );
  if (!tested && walked.length !== printed.length) return false;
  return printed.every((set) => {
    const other = walked.find(({ key }) => key === set.key);
    return other !== undefined && doseIn(other) === doseIn(set);
  });
}

/** Steps and seconds follow from the reps. */
function doseIn({ kind, reps, load, exercise, gate, otherwise }: PlanSet): string {
  const of = (one: Pick<OtherwiseSet, 'exercise' | 'reps' | 'load' | 'tempo' | 'sets'>) =>
    [one.exercise, one.reps, one.load?.grams ?? 0, one.tempo, one.sets].join(' ');
  const needs = gate?.needs;
  return JSON.stringify([
    [kind, reps, load?.grams ?? 0, exercise],
    needs === undefined ? null : [needs.exercise, needs.reps, needs.load?.grams ?? 0, needs.weeks],
    (otherwise ?? []).map(of),
  ]);
}

const isSame = (item: Item, { exercise, tempo, sets }: Laid): boolean =>
  exercise === item.exercise &&
  tempo === item.tempo &&
  sets.every(({ key, set }) => {
    const was = item.sets.find((one) => one.key === key);
    return set !== null && was !== undefined && was.choose === undefined && doseIn(set) === doseIn(was);
  });

/** At most one load above what was printed for it, no harder version, and at most one tempo slower. */
function within(
  item: Item,
  strand: StrandInput,
  { option, reps }: Sure,
): { readonly option: Sure['option']; readonly reps: number; readonly bounds: readonly Bound[] } {
  const first = item.sets.find(({ kind, choose }) => kind === 'work' || choose !== undefined);
  const choices = (first?.choose ?? []).map((one) => ({ exercise: one.exercise, grams: one.load?.grams ?? 0 }));
  const printed = choices.length > 0 ? choices : [{ exercise: item.exercise, grams: first?.load?.grams ?? 0 }];
  const at = (id: string): number => strand.versions.findIndex(({ exercise }) => exercise === id);
  const hardest = Math.max(...printed.map(({ exercise }) => at(exercise)));
  const heaviest = Math.max(...printed.filter(({ exercise }) => at(exercise) === hardest).map(({ grams }) => grams));
  const slowest = strand.tempi.findIndex(({ step }) => step === item.tempo) + 1;
  const tempo = Math.min(option.tempo, Math.max(0, slowest));
  const slower = tempo < option.tempo ? (['tempo'] as const) : [];
  if (hardest >= 0 && option.version > hardest) {
    const was = first?.reps ?? strand.bottom;
    return { option: { version: hardest, load: heaviest, tempo: 0 }, reps: was, bounds: ['version', ...slower] };
  }
  if (option.version < hardest) return { option: { ...option, tempo }, reps, bounds: slower };
  const { loads } = strand.versions[option.version] ?? { loads: [] };
  const above = loads[loads.findIndex(({ grams }) => grams === heaviest) + 1];
  const most = above === undefined ? heaviest : above.grams;
  if (option.load <= most) return { option: { ...option, tempo }, reps, bounds: slower };
  return { option: { ...option, load: most, tempo }, reps, bounds: ['load', ...slower] };
}

/** Of timed work the seconds that the reps take; of steps the reps straight, where they are no longer the same. */
function amountOf(item: Item, set: PlanSet, reps: number): Pick<PlanSet, 'reps' | 'seconds' | 'steps'> {
  const like = item.sets.find(({ kind, seconds }) => kind === 'work' && seconds !== undefined) ?? set;
  if (like.seconds !== undefined && like.reps !== undefined && like.reps > 0) {
    return { reps, seconds: Math.floor((like.seconds * reps) / like.reps) };
  }
  return set.steps !== undefined && set.reps === reps ? { reps, steps: set.steps } : { reps };
}

/** As the planner chooses it: the heaviest load up to a part of the one worked with, else the lightest below it. */
function warmUp(strand: StrandInput, at: number, work: MakeableLoad, rules: Rulebook): MakeableLoad | null {
  const held = externalLoad(work);
  const share = rules.valueOf(WARM_UP_LOAD);
  const lighter = (strand.versions[at]?.loads ?? []).filter((load) => externalLoad(load) < held && load.grams > 0);
  return lighter.filter((one) => externalLoad(one) * 1000 <= held * share).at(-1) ?? lighter[0] ?? null;
}

/** Reps to failure with a load in that week, as the walk predicts them; `null` where nothing is predicted. */
export const failureIn =
  ({ equation, tested, weeks }: Ground, strand: StrandInput, week: number) =>
  (at: number, load: MakeableLoad, tempo: number): number | null => {
    const version = strand.versions[at];
    const k = weeks.get(week)?.capacities[at] ?? 0;
    if (version === undefined || k === 0) return null;
    const normal = repsToFailure(equation, k, tested, resistedLoad(version, load, strand.bodyMass));
    return slowedReps(normal, strand.tempi[tempo]?.factor ?? 1000);
  };

/** The same whatever order its names stand in: a plan may have been written down anew on the way. */
const lettersOf = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => compareIds(a, b)))
      : inner,
  );

/** `null` where it says the same as what is printed. Rungs beyond a gate wait until it is open. */
export function layLadder(item: Item, ladder: LadderInput, steps: readonly LadderStep[], index: number): Laid | null {
  const step = steps[index];
  const first = item.sets[0];
  const parts = first === undefined ? null : readSetKey(first.key);
  if (step === undefined || first === undefined || parts === null) return null;
  const sides = [...new Set(item.sets.map(({ side }) => side ?? ('both' as const)))];
  const place: SetPlace = { block: parts.block, occurrence: parts.occurrence, row: parts.row, sides };
  const whole = ladderSets(place, ladder, step, item.sides);
  const same = (sets: readonly PlanSet[]): boolean => lettersOf(sets) === lettersOf(item.sets);
  if (same(whole) && ladder.rungs[step.rung]?.exercise === item.exercise) return null;
  const gate = steps.slice(0, index + 1).findLast((one) => one.gate !== undefined)?.gate;
  const open = gate !== undefined && gate.needs.weeks.length === 0;
  const wanted = step.otherwise === undefined || open ? step.rung : step.otherwise.rung;
  const most = item.rung?.number ?? wanted;
  const rung = Math.min(wanted, most);
  const { gate: _, otherwise: __, ...plain } = step;
  const sets = ladderSets(place, ladder, { ...plain, rung }, item.sides);
  const exercise = ladder.rungs[rung]?.exercise;
  if (exercise === undefined || (same(sets) && exercise === item.exercise)) return null;
  return {
    exercise,
    tempo: 'normal',
    sets: item.sets.map(({ key }) => ({ key, set: sets.find((set) => set.key === key) ?? null })),
    bounds: rung < wanted ? ['rung'] : [],
  };
}
