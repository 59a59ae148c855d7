/** The easier versions of an item of a ladder that this client may do with this kit, each with its own sets. */
import type { Exercise } from '../../model/exercise.js';
import type { LadderInput, Rung, RungDose, RungLoad } from '../../model/ladder.js';
import type { EasierItem, PlanSet } from '../../model/plan.js';
import type { Seconds } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { externalLoad } from '../capacity.js';
import { easierHold, easierReps, isCountedInReps, leastHold } from '../items/easier-dose.js';
import type { Versions } from '../rows/fit-rows.js';
import { SECONDS_A_METRE } from '../rules/seconds-a-metre.js';
import { SWING_CAP } from '../rules/swing-cap.js';
import type { Judged } from '../versions/judge-version.js';
import { loadPart } from './ladder-load.js';
import { amountOf } from './ladder-sets.js';
import { latestTest, loadsOf } from './start-ladder.js';

/**
 * Made from what is done for sure, and so never from a gate's own load. The least dose of its stage, for as many sets
 * under their keys. A way of the same exercise keeps the load; another exercise has the heaviest of its own that is no
 * heavier than the one held, in all hands and in any one of them, nor than it was tested with; else none is claimed.
 */
export function ladderEasier(
  context: BlockContext,
  { besideOf }: Versions,
  ladder: LadderInput,
  { judged, rung, sets }: { readonly judged: Judged; readonly rung: Rung; readonly sets: readonly PlanSet[] },
): readonly EasierItem[] {
  const { exercise } = judged;
  const { easier, ways } = besideOf(judged);
  const { dose: least } = ladder.rungs.find(({ stage }) => stage === rung.stage) ?? rung;
  return [
    ...ways.map(({ slug, causes, say }): EasierItem => {
      const own = setsLike(sets, least, rung.load);
      return { exercise: `${exercise.id}#${slug}`, way: exercise.facts.way, say, for: causes, sets: own };
    }),
    ...easier.map(({ link: { causes, say }, to }): EasierItem => {
      const { facts, id } = to.exercise;
      const theirs = setsLike(sets, doseFor(context, exercise, to.exercise, least), noHeavier(context, to, rung.load));
      return { exercise: id, way: facts.way, say, for: causes, sets: theirs };
    }),
  ];
}

/** In place of the item's own sets and under their keys. */
const setsLike = (sets: readonly PlanSet[], dose: RungDose, load: RungLoad | null): readonly PlanSet[] =>
  sets.map(({ key, round, side }) => ({
    key,
    kind: 'work',
    round,
    ...amountOf(dose),
    ...(side === undefined ? {} : { side }),
    ...loadPart(load),
  }));

/**
 * As the other exercise is counted: a hold by seconds, only what travels by metres, fast lifts within their own cap, and in reps
 * what is counted so, unless the row does as much on the clock. What the row's own dose says nothing of is as `easier-dose` says.
 */
function doseFor(context: BlockContext, own: Exercise, to: Exercise, dose: RungDose): RungDose {
  const { rules } = context;
  const { way, pattern, mostReps } = to.facts;
  const cap = way === 'swing' ? (mostReps ?? rules.valueOf(SWING_CAP)) : Number.POSITIVE_INFINITY;
  if (way === 'hold') return { kind: 'seconds', seconds: secondsHeld(context, own, to, dose) };
  if (dose.kind === 'main-next') return { kind: 'reps', reps: Math.min(dose.main, cap) };
  if (dose.kind === 'reps' || dose.kind === 'every') return { ...dose, reps: Math.min(dose.reps, cap) };
  const travels = way === 'carry' || pattern === 'carry' || pattern === 'travel';
  const goesOn = dose.kind === 'seconds' ? isCountedInReps(context, own) : dose.kind !== 'metres' || travels;
  if (!goesOn && isCountedInReps(context, to)) return { kind: 'reps', reps: Math.min(easierReps(context, to), cap) };
  if (dose.kind !== 'metres' || travels) return dose;
  return { kind: 'seconds', seconds: Math.ceil((dose.metres * rules.valueOf(SECONDS_A_METRE)) / 10) };
}

/** In place of another hold as long as that one, and no longer than the programme asks of it. */
function secondsHeld(context: BlockContext, own: Exercise, to: Exercise, dose: RungDose): Seconds {
  if (own.facts.way !== 'hold' || dose.kind !== 'seconds') return easierHold(context, to);
  return Math.min(dose.seconds, leastHold(context, to) ?? dose.seconds);
}

function noHeavier(context: BlockContext, judged: Judged, held: RungLoad | null): RungLoad | null {
  const loads = loadsOf(judged);
  const test = latestTest(context, judged.exercise);
  const tested = test === null ? Number.POSITIVE_INFINITY : (test.load?.grams ?? 0);
  if (judged.bands.length > 0) {
    const like = loads.find((load) => load !== null && held !== null && isBandAlike(load, held));
    return like ?? loads[0] ?? null;
  }
  if (held === null || 'band' in held) return null;
  return (
    loads.findLast(
      (load) =>
        load !== null &&
        'grams' in load &&
        load.grams <= tested &&
        externalLoad(load) <= externalLoad(held) &&
        heaviestPiece(load) <= heaviestPiece(held),
    ) ?? null
  );
}

const isBandAlike = (load: RungLoad, held: RungLoad): boolean =>
  'band' in load && 'band' in held && load.step === held.step && load.mode === held.mode;

const heaviestPiece = ({ pieces }: RungLoad): number => Math.max(0, ...pieces.map(({ grams }) => grams));
