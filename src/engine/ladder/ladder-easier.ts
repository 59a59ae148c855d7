/** The easier versions of an item of a ladder that this client may do with this kit, each with its own sets. */
import type { Facts } from '../../model/exercise.js';
import type { LadderInput, Rung, RungDose, RungLoad } from '../../model/ladder.js';
import type { EasierItem, PlanSet } from '../../model/plan.js';
import type { BlockContext } from '../block-context.js';
import { externalLoad } from '../capacity.js';
import type { Versions } from '../rows/fit-rows.js';
import { HOLD_MOST } from '../rules/hold-most.js';
import { SECONDS_A_METRE } from '../rules/seconds-a-metre.js';
import { SECONDS_A_REP } from '../rules/seconds-a-rep.js';
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
      const theirs = setsLike(sets, doseFor(facts, least, context), noHeavier(context, to, rung.load));
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

/** As the other exercise is counted: a hold by seconds, only what travels by metres, fast lifts within their own cap. */
function doseFor({ way, pattern, mostReps }: Facts, dose: RungDose, { rules }: BlockContext): RungDose {
  const cap = way === 'swing' ? (mostReps ?? rules.valueOf(SWING_CAP)) : Number.POSITIVE_INFINITY;
  if (dose.kind === 'main-next') return { kind: 'reps', reps: Math.min(dose.main, cap) };
  const travels = way === 'carry' || pattern === 'carry' || pattern === 'travel';
  if (dose.kind === 'metres' && !travels) {
    return { kind: 'seconds', seconds: Math.ceil((dose.metres * rules.valueOf(SECONDS_A_METRE)) / 10) };
  }
  if ((dose.kind === 'reps' || dose.kind === 'every') && way === 'hold') {
    return { kind: 'seconds', seconds: Math.min(dose.reps * rules.valueOf(SECONDS_A_REP), rules.valueOf(HOLD_MOST)) };
  }
  return dose.kind === 'reps' || dose.kind === 'every' ? { ...dose, reps: Math.min(dose.reps, cap) } : dose;
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
