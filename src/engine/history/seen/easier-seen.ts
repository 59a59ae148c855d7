/** A row whose exercise was seen to cost the balance, or the grip before anything else: an easier version for that. */
import type { Seen } from '../../../model/client.js';
import type { Cause, Exercise } from '../../../model/exercise.js';
import type { ExerciseId } from '../../../model/identity.js';
import type { Rule } from '../../../model/reason.js';
import type { BlockContext } from '../../block-context.js';
import { easierMissing } from '../../rows/find-easier.js';
import { type FittedRow, fitChoice, type Versions } from '../../rows/fit-rows.js';
import { SEEN_BALANCE } from '../../rules/seen-balance.js';
import { SEEN_GRIP } from '../../rules/seen-grip.js';
import { type Choice, choosingIn, isOpen } from '../../versions/choose-version.js';
import type { Judged } from '../../versions/judge-version.js';
import { inOrderOfRegress } from '../../versions/regress-order.js';
import { standingSeen } from './standing-seen.js';

interface Wanted {
  readonly rule: Rule;
  readonly cause: Cause;
}

const WANTED: Readonly<Partial<Record<Seen, Wanted>>> = {
  'loses balance': { rule: SEEN_BALANCE, cause: 'balance' },
  'grip goes first': { rule: SEEN_GRIP, cause: 'grip' },
};

/**
 * In the order in which a coach makes it easier: an easier way of its own that is for that cause, unless an easier version
 * for it was tested; else the nearest version reached by a link that is for it. It is of the same movement pattern, open
 * to the row, has an easier one itself, and nothing of the sort was seen of it. Where there is none the row is as it was,
 * and its recall says what is done instead. No row climbs back to what cost the balance or the grip while that stands.
 */
export function easierSeen(
  context: BlockContext,
  rows: readonly FittedRow[],
  versions: Versions,
): readonly FittedRow[] {
  const wanted = new Map<ExerciseId, Wanted>();
  for (const [id, { phrases }] of standingSeen(context)) {
    const [found] = phrases.flatMap(({ phrase }) => WANTED[phrase] ?? []);
    if (found !== undefined && context.rules.valueOf(found.rule) > 0) wanted.set(id, found);
  }
  if (wanted.size === 0) return rows;
  return rows.map((row) => cutAbove(easierFor(context, row, wanted, versions), wanted));
}

type WantedOf = ReadonlyMap<ExerciseId, Wanted>;

function easierFor(context: BlockContext, fitted: FittedRow, wanted: WantedOf, versions: Versions): FittedRow {
  const { target, choice, chain, session } = fitted;
  const own = chain.judged[chain.base];
  const found = own === undefined ? undefined : wanted.get(own.exercise.id);
  if (own === undefined || found === undefined || own.way !== null) return fitted;
  const placed = { session, block: fitted.block, blockIndex: fitted.blockIndex, row: fitted.written };
  for (const chosen of easierVersions(context, fitted, own, found.cause, versions)) {
    if (chosen.way === null && wanted.has(chosen.exercise.id)) continue;
    const eased: Choice = { ...choice, chosen, seen: { own, rule: found.rule } };
    const { value } = fitChoice(context, placed, { target, choice: eased }, versions);
    if (value === null || value.planned !== fitted.planned) continue;
    if (value.planned === 'ladder' || easierMissing(context, value, versions).length === 0) return value;
  }
  return fitted;
}

function easierVersions(
  context: BlockContext,
  { session, planned }: FittedRow,
  own: Judged,
  cause: Cause,
  versions: Versions,
): readonly Judged[] {
  const choosing = choosingIn(context, session.id, versions);
  const { pattern } = own.exercise.facts;
  const others = reachedFor(own.exercise, cause, versions)
    .filter(({ facts }) => facts.pattern === pattern)
    .map(versions.judge)
    .filter((judged) => isOpen(judged, choosing));
  // A ladder's rungs are not for a way of doing it, which would have to be tried first.
  const ways = planned === 'ladder' ? [] : inOrderOfRegress(versions.linksOf(own.exercise).easierWays);
  const answering = ways.filter(({ causes }) => causes.includes(cause)).map((way): Judged => ({ ...own, way }));
  return others.some(({ exercise }) => choosing.tested(exercise)) ? others : [...answering, ...others];
}

/** Along every easier link, nearest first; one of them on the way, at least, is for this cause. */
function reachedFor(exercise: Exercise, cause: Cause, { linksOf }: Versions): readonly Exercise[] {
  const reached = new Map<Exercise, boolean>([[exercise, false]]);
  const found: Exercise[] = [];
  let frontier: readonly Exercise[] = [exercise];
  while (frontier.length > 0) {
    const next = new Set<Exercise>();
    for (const at of frontier) {
      for (const { to, causes } of linksOf(at).easier) {
        const answers = reached.get(at) === true || causes.includes(cause);
        if (to === exercise || reached.get(to) === true || reached.get(to) === answers) continue;
        reached.set(to, answers);
        next.add(to);
        if (answers) found.push(to);
      }
    }
    frontier = [...next];
  }
  return found;
}

function cutAbove(fitted: FittedRow, wanted: WantedOf): FittedRow {
  const { judged, versions, base } = fitted.chain;
  const at = judged.findIndex(({ exercise }, index) => index > base && wanted.has(exercise.id));
  if (at < 0) return fitted;
  const below = versions.slice(0, at);
  const top = below.at(-1);
  const kept = top === undefined ? below : [...below.slice(0, -1), { ...top, toHarder: null }];
  return { ...fitted, chain: { judged: judged.slice(0, at), versions: kept, base } };
}
