/** A row whose lightest load is too heavy for whoever did it: an easier version, before the client is kept back. */
import type { Grams } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { capacityOf, externalLoad, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { floorIn, floorsOf, floorsOfRow } from '../effort/plan-effort.js';
import { BEGIN_LIGHTER } from '../rules/begin-lighter.js';
import { fewerReps } from '../rules/walk-fewer-reps.js';
import { choosingIn, openBelow } from '../versions/choose-version.js';
import { beginRow } from './begin-row.js';
import { caresAtStart } from './cares-met.js';
import { easierMissing } from './find-easier.js';
import { type FittedRow, fitChoice, type Versions, type WalkFitted } from './fit-rows.js';

/**
 * Every load there is is heavier than the one tested, and the lightest leaves less than the floor at the bottom of the
 * range; or marks say that even it leaves less than the floor of the fewest reps the walk may fall to. The nearest easier version along the links takes its place, of the same pattern and open to the row, walked, with
 * an easier one itself, and not too heavy in turn: known by a test or by what passes to it, else felt first with no more
 * in hand than the test had. Where none is, the row as it is, which keeps the client back. 0 of `begin-lighter` keeps it
 * back at once.
 */
export function beginLighter(context: BlockContext, fitted: FittedRow, versions: Versions): FittedRow {
  const { target, choice, chain, session } = fitted;
  const own = chain.judged[chain.base];
  if (fitted.planned === 'ladder' || own === undefined || own.way !== null) return fitted;
  if (context.rules.valueOf(BEGIN_LIGHTER) === 0 || !isTooHeavy(context, fitted, versions)) return fitted;
  const { tested } = beginRow(context, fitted, versions);
  const held = tested?.external ?? 0;
  const marked = tested?.test.marked === true;
  const placed = { session, block: fitted.block, blockIndex: fitted.blockIndex, row: fitted.written };
  for (const chosen of openBelow(own.exercise, choosingIn(context, session.id, versions))) {
    const { value } = fitChoice(
      context,
      placed,
      { target, choice: { ...choice, chosen, tooHeavy: own, marked } },
      versions,
    );
    if (value === null || value.planned === 'ladder' || isTooHeavy(context, value, versions)) continue;
    if (isFeltAbove(held, context, value, versions)) continue;
    if (easierMissing(context, value, versions).length === 0) return value;
  }
  return fitted;
}

/** Found by a feeler set that begins with more than was ever held. */
function isFeltAbove(held: Grams, context: BlockContext, fitted: WalkFitted, versions: Versions): boolean {
  const { how, versions: chain } = beginRow(context, fitted, versions);
  const lightest = chain[fitted.chain.base]?.loads[0];
  return how === 'feeler' && lightest !== undefined && externalLoad(lightest) > held;
}

function isTooHeavy(context: BlockContext, fitted: WalkFitted, versions: Versions): boolean {
  const { how, tested, versions: chain } = beginRow(context, fitted, versions);
  const version = chain[fitted.chain.base];
  const lightest = version?.loads[0];
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  if (tested === null || version === undefined || lightest === undefined) return false;
  const counted = isCounted(version, bodyMass);
  const marked = tested.test.marked === true;
  if (how === 'feeler' ? !counted : !(how === 'tested' && marked)) return false;
  const floors = floorsOfRow(context, floorsOf(context), caresAtStart(fitted).length > 0, fitted.dose);
  const k = capacityOf('epley', tested.capacity, counted);
  const toFailure = repsToFailure('epley', k, tested.capacity.reps, resistedLoad(version, lightest, bodyMass));
  // A coach who took a test and wrote the row is asked; marks come back without anybody to ask.
  const fewest = how === 'tested' ? Math.max(1, fitted.reps.min - fewerReps.row.value) : fitted.reps.min;
  const weeks = how === 'tested' ? context.days.filter(({ week }) => week >= context.next.week) : [{ week: 1 }];
  const floor = Math.max(0, ...weeks.map(({ week }) => floorIn(week, floors)?.reserve ?? 0));
  return toFailure < 10 * fewest + floor;
}
