/** One row in one session as the plan shows it. */
import type { AllowedOption, Item, PlanSet } from '../../model/plan.js';
import type { TempoStep } from '../../model/programme.js';
import type { Confidence } from '../../model/quantity.js';
import { invariant } from '../../model/result.js';
import type { StrandInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { externalLoad, repsToFailure, resistedLoad } from '../capacity.js';
import type { Versions } from '../rows/fit-rows.js';
import { ownBellIn, withOwnBell } from '../rows/own-bell.js';
import type { WalkedRow } from '../rows/walked-row.js';
import { TEMPO_SLOW_LOWERING } from '../rules/tempo-slow-lowering.js';
import { WARM_UP_LOAD } from '../rules/warm-up-load.js';
import type { Judged } from '../versions/judge-version.js';
import type { WalkStep } from '../walk-step.js';
import { doneOnly } from './care-reasons.js';
import { reasonsOfLoad } from './explain-load.js';
import { reasonsOfRow } from './explain-row.js';
import { type Planned, planEasier } from './plan-easier.js';
import { feelerSets, loadAt, type SetPlace, sidesInOrder, warmUpSets, workSets } from './plan-item-sets.js';
import { amountIn } from './set-amount.js';
import { hasNoFeeler, testReasons, withTestSet } from './test-sets.js';

/**
 * The item of a row's `index`th occurrence. `warmUp`: a lighter set goes before it, where there is a lighter load. What
 * is the same in all of them is found once.
 */
export type ItemsOfRow = (index: number, warmUp: boolean) => Item;

/** `tested` are the places in the queue of the sessions in which the row is tested. */
export function itemsOfWalk(
  context: BlockContext,
  walked: WalkedRow,
  tested: readonly number[],
  versions: Versions,
): ItemsOfRow {
  const { fitted, strand, plan, sessions, beginning } = walked;
  const reasonsIn = reasonsOfRow(context, walked);
  return (index, warmUp) => {
    const occurrence = strand.occurrences[index];
    const session = sessions[index];
    invariant(occurrence !== undefined && session !== undefined, 'an item stands in a session');
    const step = plan.kind === 'walked' ? plan.steps[index] : undefined;
    const judged = judgedAt(walked, step?.option.version ?? fitted.chain.base);
    const { facts } = judged.exercise;
    const tempo = strand.tempi[step?.option.tempo ?? 0]?.step ?? 'normal';
    const place: SetPlace = {
      block: context.client.blocksBefore + 1,
      occurrence: session.queued.occurrence,
      row: fitted.row.id,
      sides: sidesInOrder(facts.sides, beginning.capacity?.side ?? 'both'),
      amount: amountHere(context, fitted, judged, tempo),
    };
    const own = step === undefined ? null : ownBellIn(context, walked, step);
    const work =
      step === undefined ? unknownSets(walked, index, place) : withOwnBell(workSets(place, strand, step), own);
    const testedNow = tested.includes(session.queued.occurrence) && hasNoFeeler(work);
    const main = testedNow ? withTestSet(context, work, place, { top: strand.top, floor: occurrence.floor }) : work;
    const before = step === undefined || !warmUp ? [] : warmUpOf(context, walked, step, place);
    const planned = plannedOf(context, walked, index, main);
    return {
      id: `${strand.id}/${occurrence.week}`,
      row: fitted.row.id,
      exercise: judged.exercise.id,
      ...doneOnly(judged),
      way: facts.way,
      sides: facts.sides,
      tempo,
      restSeconds: fitted.row.restSeconds,
      asked: { min: strand.bottom, max: strand.top, unit: 'reps', reserve: occurrence.asked, sets: occurrence.sets },
      capacity: capacityOf(walked, index),
      allowed: step === undefined ? [] : allowedOf(walked, step),
      relaxed: step?.relaxed ?? [],
      sets: [...before, ...main],
      easier: planEasier(planned, versions.besideOf(planned.judged)),
      harder: versions.besideOf(judged).harder,
      reasons: [...(step?.reasons ?? []), ...reasonsIn(index), ...reasonsOfLoad(main, own), ...testReasons(main)],
    };
  };
}

function judgedAt({ fitted }: WalkedRow, version: number): Judged {
  const judged = fitted.chain.judged[version];
  invariant(judged !== undefined, 'the walk stays among the versions of its strand');
  return judged;
}

/** How much so many reps are, of the item's own exercise or of another version of the row. */
function amountHere(
  context: BlockContext,
  { dose, chain }: WalkedRow['fitted'],
  own: Judged,
  tempo: TempoStep,
): NonNullable<SetPlace['amount']> {
  const amountOf = amountIn(context, dose, own.exercise);
  return (reps, exercise) => {
    const of = exercise === undefined ? own : chain.judged.find((one) => one.exercise.id === exercise);
    return amountOf(reps, (of ?? own).exercise, tempo);
  };
}

function unknownSets({ strand, plan }: WalkedRow, index: number, place: SetPlace): readonly PlanSet[] {
  invariant(plan.kind === 'feeler', 'only a row without a walk has a feeler set');
  const { sets, asked } = strand.occurrences[index] ?? { sets: 1, asked: 0 };
  const choose = plan.feeler.choices[index] ?? [];
  return feelerSets(place, sets, asked, choose, index === 0 ? plan.feeler : null);
}

/**
 * The heaviest load up to a part of the one worked with whether a gate opened or not, else the lightest; none where
 * that is the one.
 */
function warmUpOf(context: BlockContext, walked: WalkedRow, step: WalkStep, place: SetPlace): readonly PlanSet[] {
  const { strand, fitted } = walked;
  const { option, reps: most } = surelyDone(strand, step);
  const version = strand.versions[option.version];
  const loads = version?.loads ?? [];
  const held = externalLoad(loadAt(strand, option));
  const share = context.rules.valueOf(WARM_UP_LOAD);
  const lighter = loads.filter((load) => externalLoad(load) < held && load.grams > 0);
  const load = lighter.filter((one) => externalLoad(one) * 1000 <= held * share).at(-1) ?? lighter[0];
  if (load === undefined) return [];
  const longest = fitted.dose.kind === 'steps' ? Math.max(...fitted.dose.reps) : strand.bottom;
  const reps = Math.min(longest, most);
  const toFailure = predictedIn(walked, step.week, option.version, load);
  const sets = warmUpSets(place, { reps, load, reserve: toFailure === null ? null : toFailure - 10 * reps });
  if (version === undefined || option.version === step.option.version) return sets;
  return sets.map((set) => ({ ...set, exercise: version.exercise }));
}

function kIn({ plan }: WalkedRow, week: number, version: number): number {
  return plan.kind === 'walked' ? (plan.ground.weeks.get(week)?.capacities[version] ?? 0) : 0;
}

function predictedIn(walked: WalkedRow, week: number, at: number, load: Parameters<typeof resistedLoad>[1]) {
  const { strand, plan } = walked;
  const version = strand.versions[at];
  const k = kIn(walked, week, at);
  if (plan.kind !== 'walked' || version === undefined || k === 0) return null;
  return repsToFailure(plan.ground.equation, k, plan.ground.tested, resistedLoad(version, load, strand.bodyMass));
}

/** What the easier versions are made from. */
function plannedOf(context: BlockContext, walked: WalkedRow, index: number, sets: readonly PlanSet[]): Planned {
  const { fitted, strand, plan } = walked;
  const step = plan.kind === 'walked' ? plan.steps[index] : undefined;
  const occurrence = strand.occurrences[index];
  const sure = step === undefined ? undefined : surelyDone(strand, step);
  const at = sure?.option.version ?? fitted.chain.base;
  const judged = judgedAt(walked, at);
  const version = strand.versions[at];
  invariant(version !== undefined && occurrence !== undefined, 'an item has a version');
  const worked = sets.filter((set) => set.kind === 'work' || set.kind === 'trial' || set.kind === 'test');
  return {
    judged,
    version,
    k: kIn(walked, occurrence.week, at),
    equation: plan.kind === 'walked' ? plan.ground.equation : strand.equation,
    tested: plan.kind === 'walked' ? plan.ground.tested : 0,
    bodyMass: strand.bodyMass,
    slow: context.rules.valueOf(TEMPO_SLOW_LOWERING),
    load: sure === undefined ? null : loadAt(strand, sure.option),
    reps: sure?.reps ?? strand.bottom,
    reserve: sure?.reserve ?? null,
    bottom: strand.bottom,
    asked: occurrence.asked,
    floor: occurrence.floor,
    sets: worked,
    amount: amountIn(context, fitted.dose, judged.exercise),
  };
}

/**
 * What is done whether the gate opened or not: from a gate on, what its `otherwise` says. One who has not passed it
 * reads the easier versions too, and they have one dose. Where a later week has fallen below the otherwise, that week's
 * own version and load, with no more reps than either.
 */
function surelyDone(strand: StrandInput, step: WalkStep): Pick<WalkStep, 'option' | 'reps' | 'reserve'> {
  const { otherwise } = step;
  if (otherwise === undefined) return step;
  const [a, b] = [step.option, otherwise.option];
  const fell =
    a.version < b.version ||
    (a.version === b.version && externalLoad(loadAt(strand, a)) < externalLoad(loadAt(strand, b)));
  if (!fell) return otherwise;
  const reps = Math.min(step.reps, otherwise.reps);
  return { option: a, reps, reserve: step.reserve + 10 * (step.reps - reps) };
}

/** One rep's worth of resisted load this week, by the equation that decides; `null` where nothing is known. */
function capacityOf(walked: WalkedRow, index: number): Item['capacity'] {
  const { plan, strand, beginning } = walked;
  const step = plan.kind === 'walked' ? plan.steps[index] : undefined;
  if (plan.kind !== 'walked' || step === undefined || beginning.capacity === null) return null;
  const k = kIn(walked, step.week, step.option.version);
  const grams = plan.ground.equation === 'epley' ? Math.floor(k / 300) : k;
  return { equation: strand.equation, grams, side: beginning.capacity.side, confidence: confidenceOf(walked) };
}

function confidenceOf({ plan, beginning }: WalkedRow): Confidence {
  if (plan.kind === 'walked' && plan.ground.weak && beginning.how === 'tested') return 'weak';
  return beginning.how === 'tested' ? 'measured' : 'estimated';
}

function allowedOf({ strand }: WalkedRow, step: WalkStep): readonly AllowedOption[] {
  return step.considered.map(({ option, predicted, refusedBy }): AllowedOption => {
    const exercise = strand.versions[option.version]?.exercise;
    invariant(exercise !== undefined, 'the walk stays among the versions of its strand');
    const tempo = strand.tempi[option.tempo]?.step ?? 'normal';
    const open = { exercise, tempo, grams: option.load, predicted };
    return refusedBy === undefined ? open : { ...open, refusedBy };
  });
}
