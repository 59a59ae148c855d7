/**
 * Which version of a row's exercise this client does: the exercise itself where it is allowed; else an easier way of
 * its own, or the easier version, that answers what stands in the way. Nothing is chosen silently: what was refused is
 * kept.
 */
import type { Day } from '../../model/day.js';
import type { Cause, Exercise } from '../../model/exercise.js';
import { BODY_PARTS, QUALITIES } from '../../model/exercise.js';
import { compareIds, type SessionId } from '../../model/identity.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Rule } from '../../model/reason.js';
import { type BlockContext, names } from '../block-context.js';
import { SIGN_OFF_LAPSES } from '../rules/sign-off-lapses.js';
import { WAY_UNLOCKS } from '../rules/way-unlocks.js';
import type { Judge, Judged } from './judge-version.js';
import type { EasierWay, Link, LinksOf } from './linked-versions.js';
import { CAUSES_OF, inOrderOfRegress } from './regress-order.js';

export interface Choice {
  /** What was asked for, as judged. */
  readonly own: Judged;
  /** `null` where nothing is allowed. */
  readonly chosen: Judged | null;
  /** The causes looked for, empty where the exercise itself was allowed. */
  readonly causes: readonly Cause[];
  /** Whether a link on the way is for one of these causes. */
  readonly byCause: boolean;
  readonly steps: number;
  /** Every version looked at and refused, in the order looked at. */
  readonly refused: readonly Refusal[];
  /** Allowed, but never tested, where an easier version that was goes before it. */
  readonly untested?: Judged;
  /** Allowed, but its lightest load is too heavy by its test, where an easier version goes before it. */
  readonly tooHeavy?: Judged;
  /** With `tooHeavy`: marks say so, and no test of the coach. */
  readonly marked?: boolean;
  /** Allowed, but seen to cost the balance or the grip, where an easier version goes before it; and the rule that says so. */
  readonly seen?: { readonly own: Judged; readonly rule: Rule };
}

interface Candidate {
  readonly judged: Judged;
  readonly byCause: boolean;
  readonly samePattern: boolean;
  readonly steps: number;
  /** Place in the search, which follows the authors' order of links. */
  readonly found: number;
}

/** What bears on a choice besides the exercise. */
export interface Choosing {
  readonly judge: Judge;
  readonly linksOf: LinksOf;
  /** The days on which the row is done, in order, and how many days a sign-off holds between two of them. */
  readonly days: readonly Day[];
  readonly holds: number;
  /** Easier ways of the exercise itself may answer, by `way-unlocks`. */
  readonly ways: boolean;
  /** Whether the coach has a test of it on file. */
  readonly tested: (exercise: Exercise) => boolean;
}

export function choosingIn(
  context: BlockContext,
  session: SessionId,
  versions: Pick<Choosing, 'judge' | 'linksOf'>,
): Choosing {
  return {
    ...versions,
    days: context.days.filter((each) => each.session === session).map(({ day }) => day),
    holds: context.rules.valueOf(SIGN_OFF_LAPSES),
    ways: context.rules.valueOf(WAY_UNLOCKS) > 0,
    tested: (exercise) =>
      context.client.tests.some((test) => test.date <= context.today && names(context, test.exercise, exercise)),
  };
}

/**
 * An exercise is open to a row where it is allowed, and also where only a sign-off would lapse later in the block and
 * the row itself keeps it in use: begun in time, and never left for longer than it holds.
 *
 * Refused for nothing but asking *much* of what wants *care*, it is done in an easier way of its own that is for every
 * one of those causes, before another exercise takes its place: never where a caution says avoid, and not before an
 * easier version for that cause which the coach has tested: what was seen goes before what was only written. The way
 * needs another easier version beside it that this client may do.
 *
 * The easier versions are searched along every link, nearest first. Of those allowed: one reached by a link that is
 * for what refused the exercise, before others; one of the same movement pattern, before others; the fewest steps;
 * then the order the authors wrote.
 */
export function chooseVersion(exercise: Exercise, choosing: Choosing): Choice {
  const { judge, linksOf } = choosing;
  const own = judge(exercise);
  const itself = { own, causes: [], byCause: false, steps: 0, refused: [] } as const;
  if (isOpen(own, choosing)) return { ...itself, chosen: own };
  const causes = causesOf(own.refusals);
  const way = wayThatAnswers(own, causes, choosing);
  if (way !== null) {
    const chosen: Judged = { ...own, way, allowed: true, refusals: [], care: [...own.care, ...own.refusedBy] };
    return { own, chosen, causes, byCause: true, steps: 0, refused: own.refusals };
  }
  const refused: Refusal[] = [...own.refusals];
  const candidates: Candidate[] = [];
  const seen = new Map<string, boolean>([[exercise.id, false]]);
  let frontier: readonly { readonly at: Exercise; readonly byCause: boolean }[] = [{ at: exercise, byCause: false }];
  for (let steps = 1; frontier.length > 0; steps += 1) {
    const next: { readonly at: Exercise; readonly byCause: boolean }[] = [];
    for (const { at, byCause: before } of frontier) {
      for (const link of linksOf(at).easier) {
        const byCause = before || answers(link, causes);
        const known = seen.get(link.to.id);
        // Looked at again only when this way there answers the cause and the way before did not.
        if (known === true || (known === false && !byCause)) continue;
        seen.set(link.to.id, byCause);
        next.push({ at: link.to, byCause });
        const judged = judge(link.to);
        if (!isOpen(judged, choosing)) {
          if (known === undefined) refused.push(...judged.refusals);
          continue;
        }
        const samePattern = link.to.facts.pattern === exercise.facts.pattern;
        candidates.push({ judged, byCause, samePattern, steps, found: candidates.length });
      }
    }
    frontier = next;
  }
  const best = [...candidates].sort(compareCandidates)[0];
  if (best === undefined) return { own, chosen: null, causes, byCause: false, steps: 0, refused };
  return { own, chosen: best.judged, causes, byCause: best.byCause, steps: best.steps, refused };
}

export function isOpen(judged: Judged, { days, holds }: Pick<Choosing, 'days' | 'holds'>): boolean {
  if (judged.allowed) return true;
  const [first] = days;
  if (judged.lapses === null || first === undefined || first > judged.lapses) return false;
  return days.every((day, index) => day - (days[index - 1] ?? day) <= holds);
}

/** Those of `openBelow` that were tested. */
export const testedBelow = (exercise: Exercise, choosing: Choosing): readonly Judged[] =>
  openBelow(exercise, choosing).filter((judged) => choosing.tested(judged.exercise));

/** The easier versions open to the row and of the same movement pattern: nearest first. */
export function openBelow(exercise: Exercise, choosing: Choosing): readonly Judged[] {
  const { judge, linksOf } = choosing;
  const seen = new Set([exercise]);
  // Grows as it is gone through: the search along every easier link, nearest first.
  for (const at of seen) for (const { to } of linksOf(at).easier) seen.add(to);
  return [...seen]
    .filter((one) => one !== exercise && one.facts.pattern === exercise.facts.pattern)
    .map(judge)
    .filter((judged) => isOpen(judged, choosing));
}

function wayThatAnswers(own: Judged, causes: readonly Cause[], choosing: Choosing): EasierWay | null {
  const { judge, linksOf, ways, tested } = choosing;
  if (!ways || own.refusals.length === 0) return null;
  const ofItself = own.refusals.every(({ cause, exercise }) => cause === 'take-care' && exercise === own.exercise.id);
  if (!ofItself) return null;
  const links = linksOf(own.exercise);
  if (links.easier.some((link) => answers(link, causes) && judge(link.to).allowed && tested(link.to))) return null;
  const answering = inOrderOfRegress(waysThatAnswer(links.easierWays, own));
  const [way] = answering;
  if (way === undefined) return null;
  const besides = answering.length > 1 || links.easier.some(({ to }) => judge(to).allowed);
  return besides ? way : null;
}

/**
 * The easier ways of an exercise to offer beside it, in the order a coach makes it easier. Of one that is itself done in
 * an easier way, only the others that are for all of what it asks much of.
 */
export function waysBeside(judged: Judged, ways: readonly EasierWay[]): readonly EasierWay[] {
  return inOrderOfRegress(waysThatAnswer(ways, judged)).filter(({ slug }) => slug !== judged.way?.slug);
}

function waysThatAnswer(ways: readonly EasierWay[], { refusedBy }: Judged): readonly EasierWay[] {
  return ways.filter(({ causes }) =>
    refusedBy.every(({ caution }) => causesOfDemand(caution.what).some((cause) => causes.includes(cause))),
  );
}

const answers = (link: Link, causes: readonly Cause[]): boolean => link.causes.some((cause) => causes.includes(cause));

function compareCandidates(a: Candidate, b: Candidate): number {
  return (
    Number(b.byCause) - Number(a.byCause) ||
    Number(b.samePattern) - Number(a.samePattern) ||
    a.steps - b.steps ||
    a.found - b.found ||
    compareIds(a.judged.exercise.id, b.judged.exercise.id)
  );
}

/** What an easier version must be for, to answer these refusals. */
function causesOf(refusals: readonly Refusal[]): readonly Cause[] {
  const causes = refusals.flatMap(({ cause, detail }): readonly Cause[] => {
    switch (cause) {
      case 'avoid':
      case 'take-care':
      case 'moderate':
      case 'pain':
        return causesOfDemand(detail);
      case 'thing':
      case 'load':
        return ['kit'];
      case 'sign-off-load':
        return ['load'];
      default:
        return [];
    }
  });
  return [...new Set(causes)];
}

function causesOfDemand(demand: string): readonly Cause[] {
  const part = BODY_PARTS.find((name) => name === demand);
  if (part !== undefined) return [part];
  const quality = QUALITIES.find((name) => name === demand);
  return quality === undefined ? [] : CAUSES_OF[quality];
}
