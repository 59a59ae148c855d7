/** Each strand walked again by the oracle, and the printed sets held to it; gates, trials, feeler sets; K from tests. */
import { z } from 'zod';
import { itemsByStrand, type StrandItems } from './audit-calendar.js';
import { external, findLoad, isWeak, loadsSayNothing, repsToFailure } from './capacity.js';
import { findPassedOver } from './options.js';
import type { PlanItem, PlanJson, PlanSet, PlanStrand } from './plan-json.js';
import type { Option } from './strand-json.js';
import { type Step, startOf, type Walk, walkStrand } from './walk.js';

const isWork = (set: PlanSet): boolean => set.kind === 'work';

export function auditWalks(plan: PlanJson): string[] {
  return itemsByStrand(plan).flatMap((one) => {
    const found = startOf(one.strand) === undefined ? feelerFindings(one) : walkFindings(plan, one);
    return found.map((text) => `${one.strand.id}: ${text}`);
  });
}

function walkFindings(plan: PlanJson, one: StrandItems): string[] {
  const { strand, items } = one;
  const walk: Walk = walkStrand(strand);
  if (walk.kind === 'impossible') return [`nothing can be done in week ${walk.week}, yet it is planned`];
  const found: string[] = [];
  walk.steps.forEach((step, index) => {
    const placed = items[index];
    if (placed === undefined) return;
    for (const text of stepFindings(plan, one, step, placed.item)) found.push(`${placed.item.id}: ${text}`);
  });
  const seen = walk.steps.map((step) => ({ ...step, gated: step.gate !== undefined }));
  found.push(...findPassedOver(strand, seen));
  const gated = items.filter(({ item }) => item.sets.some((set) => set.gate !== undefined));
  if (gated.length > 1) found.push(`${gated.length} gates`);
  const trialWeeks = items.flatMap(({ item, week }) => (item.sets.some((set) => set.kind === 'trial') ? [week] : []));
  if (new Set(trialWeeks).size !== trialWeeks.length) found.push('two trials in a week');
  return found;
}

/** Where loads say nothing about each other, only the same external load can be spoken of. */
function canBeDerived(strand: PlanStrand, from: Option, to: Option): boolean {
  const [held, next] = [findLoad(strand, from), findLoad(strand, to)];
  if (held === undefined || next === undefined) return false;
  return !loadsSayNothing(strand, to.version) || external(held) === external(next);
}

/** No rest stands between rising and falling reps: they are walked by all of them together. */
const togetherOf = ({ reps, steps }: PlanSet): number | undefined =>
  steps?.reduce((sum, step) => sum + step, 0) ?? reps;

/** Above a wide gap the stronger side keeps the bell it was tested with, for its first sets. */
const isOwnBell = (set: PlanSet, item: PlanItem, { capacity }: PlanStrand): boolean =>
  isWork(set) &&
  set.side !== undefined &&
  set.side !== capacity?.side &&
  item.reasons.some(({ rule }) => rule === 'side-gap-own-bell') &&
  set.load?.grams !== item.sets.find((other) => isWork(other) && other.side === capacity?.side)?.load?.grams;

/** So many sets as the rule says, no heavier than that side was tested with, and the floor still left. */
function ownBellFindings(plan: PlanJson, item: PlanItem, own: readonly PlanSet[], strand: PlanStrand): string[] {
  const most = plan.rules.find(({ id }) => id === 'side-gap-own-bell')?.value ?? 0;
  const floor = Math.max(...strand.occurrences.map((one) => one.floor));
  const tests = plan.inputs.capacities.filter((one) =>
    strand.versions.some(({ exercise }) => exercise === one.exercise),
  );
  const found = own.length > most ? [`${own.length} sets with a bell of its own`] : [];
  for (const set of own) {
    const tested = tests.find((one) => one.side === set.side && one.exercise === item.exercise);
    if (tested === undefined || (set.load?.grams ?? 0) > tested.test.grams)
      found.push(`the ${set.side} with ${set.load?.label}, which it was not tested with`);
    if ((set.reserve ?? 0) < floor) found.push(`the ${set.side} leaves ${set.reserve} of ${floor}`);
  }
  return found;
}

interface Said {
  readonly exercise: string;
  readonly grams: number;
  readonly reps: number | undefined;
  readonly reserve: number | undefined;
}

function stepFindings(plan: PlanJson, { strand }: StrandItems, step: Step, item: PlanItem): string[] {
  const found: string[] = [];
  const nameOf = (option: Option) => strand.versions[option.version]?.exercise ?? '?';
  const tempoOf = (option: Option) => strand.tempi[option.tempo]?.step;
  const expect = (what: string, said: Said, option: Option, reps: number, reserve: number) => {
    const must: Said = { exercise: nameOf(option), grams: option.load, reps, reserve };
    if (JSON.stringify(said) !== JSON.stringify(must))
      found.push(`${what} is ${JSON.stringify(said)}, walked again ${JSON.stringify(must)}`);
  };
  const sayOf = (set: PlanSet, exercise: string): Said => ({
    exercise,
    grams: set.load?.grams ?? 0,
    reps: togetherOf(set),
    reserve: set.reserve,
  });
  if (item.tempo !== tempoOf(step.option)) found.push(`tempo ${item.tempo}, walked again ${tempoOf(step.option)}`);
  if (item.relaxed.length > 0 !== step.relaxed)
    found.push(`relaxed ${item.relaxed.join(', ')}: ${step.relaxed} walked`);
  const work = item.sets.filter(isWork);
  const own = item.sets.filter((set) => isOwnBell(set, item, strand));
  found.push(...ownBellFindings(plan, item, own, strand));
  for (const set of work.filter((one) => !own.includes(one)))
    expect('a set', sayOf(set, item.exercise), step.option, step.reps, step.reserve);
  const trials = item.sets.filter((set) => set.kind === 'trial');
  if (trials.length > 0 !== (step.trial !== undefined))
    found.push(`${trials.length} trial sets, walked ${step.trial?.reps}`);
  for (const set of trials) {
    const { trial } = step;
    if (trial !== undefined)
      expect('the trial', sayOf(set, nameOf(trial.option)), trial.option, trial.reps, trial.reserve);
    if (item.sets.find((other) => other.kind === 'work' || other.kind === 'trial')?.kind !== 'trial')
      found.push('the trial is not the first set');
  }
  if (work.some((set) => set.gate !== undefined) !== (step.gate !== undefined))
    found.push('a gate too many or too few');
  for (const set of work) {
    const needs = set.gate?.needs;
    if (needs === undefined) continue;
    if (set.otherwise === undefined || set.otherwise.length === 0) found.push('a gate without an otherwise');
    const must = step.gate?.needs;
    const same =
      must !== undefined &&
      needs.reps === must.reps &&
      (needs.load?.grams ?? 0) === must.option.load &&
      needs.exercise === nameOf(must.option);
    if (!same) found.push(`the gate needs ${needs.reps} of ${needs.exercise}, walked again ${must?.reps}`);
    if (needs.weeks.some((week) => week > step.week)) found.push('the gate needs something yet to come');
  }
  const others = work.flatMap((set) => set.otherwise ?? []);
  if (others.length > 0 !== (step.otherwise !== undefined)) found.push('an otherwise too many or too few');
  for (const other of others) {
    const must = step.otherwise;
    if (must === undefined) continue;
    const said: Said = {
      exercise: other.exercise,
      grams: other.load?.grams ?? 0,
      reps: other.reps,
      reserve: other.reserve,
    };
    expect('otherwise', said, must.option, must.reps, must.reserve);
    if (other.sets !== must.sets) found.push(`otherwise ${other.sets} sets, walked again ${must.sets}`);
    if (other.tempo !== tempoOf(must.option)) found.push('otherwise at another tempo');
  }
  for (const option of item.allowed) {
    const version = strand.versions.findIndex((one) => one.exercise === option.exercise);
    const tempo = strand.tempi.findIndex((one) => one.step === option.tempo);
    const to: Option = { version, load: option.grams, tempo };
    const predicted = canBeDerived(strand, step.option, to) ? repsToFailure(strand, to, step.week) : undefined;
    if (predicted !== undefined && predicted !== option.predicted)
      found.push(`${option.exercise} ${option.grams} g predicts ${predicted}, not ${option.predicted}`);
    if (predicted === undefined && option.refusedBy === undefined)
      found.push(`${option.exercise} ${option.grams} g stands open, and nothing can be said of it`);
  }
  const { capacity } = item;
  if (capacity === null) found.push('no capacity where there is a walk');
  else if (capacity.side !== strand.capacity?.side) found.push('the capacity of another side');
  return found;
}

/** Where nothing is known: a feeler set whose answers leave no gap, and no load claimed on the work sets. */
function feelerFindings({ strand, items }: StrandItems): string[] {
  const found: string[] = [];
  const feelers = items.flatMap(({ item }) => item.sets.filter((set) => set.kind === 'feeler'));
  if (items.length > 0 && feelers.length === 0) found.push('nothing is known, and there is no feeler set');
  for (const { item } of items) {
    for (const set of item.sets.filter(isWork)) {
      const loaded = strand.versions.some((version) => version.loads.some((load) => load.grams > 0));
      if (set.load !== undefined && loaded) found.push(`${item.id}: a load is claimed where nothing is known`);
    }
  }
  const tables = items.flatMap(({ item }) =>
    item.sets.flatMap((set) => (set.choose === undefined ? [] : [set.choose])),
  );
  if (feelers.length > 0 && feelers.every((feeler) => feeler.choose === undefined))
    found.push('a feeler set with nothing to choose from');
  for (const table of tables) {
    const answers = [...table].sort((a, b) => a.left.min - b.left.min);
    let from = 0;
    for (const { left } of answers) {
      if (left.min !== from || left.max < left.min) found.push(`a feeler set that does not answer ${from} left`);
      from = left.max + 1;
    }
    if (from <= 99) found.push(`a feeler set that does not answer ${from} left`);
  }
  return found;
}

const ruleInForce = z.looseObject({
  value: z.number(),
  overridden: z.looseObject({ value: z.number() }).optional(),
});

/** Tenths of a rep of a test, its reserve with it; of a slower tempo the fewest at normal tempo that go with them. */
export function tenthsOf(plan: PlanJson, { reps, reserve, tempo }: PlanJson['inputs']['capacities'][number]['test']) {
  const rule = plan.rules.find(({ id }) => id === `tempo-${tempo?.replaceAll(' ', '-')}`);
  const read = rule === undefined ? undefined : ruleInForce.parse(rule);
  return Math.floor(((10 * reps + reserve) * 1000) / (read?.overridden?.value ?? read?.value ?? 1000));
}

/** K by Epley in whole numbers: R₀ × (300 + 10 n₀), R₀ = load + ⌊share × body mass⌋. */
export function auditCapacities(plan: PlanJson): string[] {
  const found: string[] = [];
  const { capacities, shares, bodyMass, strands } = plan.inputs;
  for (const { exercise, side, k, test, weak } of capacities) {
    const name = `capacity of ${exercise}, ${side}`;
    const share = shares.find((one) => one.exercise === exercise)?.share ?? 0;
    const n0 = tenthsOf(plan, test);
    const body = bodyMass === null ? 0n : (BigInt(share) * BigInt(bodyMass)) / 1000n;
    const bare = share > 0 && bodyMass === null;
    /** A test with a pair says what one hand held. */
    const hands = [1n, 2n];
    const possible = hands.map((count) => {
      const whole = count * BigInt(test.grams) + body;
      return (bare || whole === 0n ? 1n : whole) * BigInt(300 + n0);
    });
    if (!possible.includes(BigInt(k))) found.push(`${name}: ${k}, by Epley ${possible.join(' or ')}`);
    if ((n0 > 120 || test.reserve > 50) && !weak) found.push(`${name}: ${n0 / 10} reps is a weak estimate`);
  }
  for (const strand of strands) {
    const { capacity, start } = strand;
    if (capacity === null || start === null) continue;
    const k = capacity.resisted * (300 + capacity.reps);
    const tested = strand.versions[start.version]?.exercise;
    const known = capacities.filter((one) => one.exercise === tested);
    if (known.length > 0 && !known.some((one) => one.k === k)) found.push(`${strand.id}: K ${k} is not that of a test`);
    const least = Math.min(...known.map((one) => one.k));
    if (known.length > 0 && k > least) found.push(`${strand.id}: K ${k}, though a side has ${least}`);
    if (known.some((one) => one.k === k && one.weak) && !isWeak(strand)) found.push(`${strand.id}: weak, and not said`);
  }
  return found;
}
