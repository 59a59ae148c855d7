/**
 * Which version of a row's exercise this client does: the exercise itself where it is allowed, else the easier
 * version that answers what stands in the way. Nothing is chosen silently: what was refused is kept.
 */
import type { Cause, Exercise } from '../../model/exercise.js';
import { BODY_PARTS } from '../../model/exercise.js';
import { compareIds } from '../../model/identity.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Judge, Judged } from './judge-version.js';
import type { Link, LinksOf } from './linked-versions.js';

export interface Choice {
  /** `null` where nothing is allowed. */
  readonly chosen: Judged | null;
  /** The causes looked for, empty where the exercise itself was allowed. */
  readonly causes: readonly Cause[];
  /** Whether a link on the way is for one of these causes. */
  readonly byCause: boolean;
  readonly steps: number;
  /** Every version looked at and refused, in the order looked at. */
  readonly refused: readonly Refusal[];
}

interface Candidate {
  readonly judged: Judged;
  readonly byCause: boolean;
  readonly samePattern: boolean;
  readonly steps: number;
  /** Place in the search, which follows the authors' order of links. */
  readonly found: number;
}

/**
 * The easier versions are searched along every link, nearest first. Of those allowed: one reached by a link that is
 * for what refused the exercise, before others; one of the same movement pattern, before others; the fewest steps;
 * then the order the authors wrote.
 */
export function chooseVersion(exercise: Exercise, judge: Judge, linksOf: LinksOf): Choice {
  const own = judge(exercise);
  if (own.allowed) return { chosen: own, causes: [], byCause: false, steps: 0, refused: [] };
  const causes = causesOf(own.refusals);
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
        if (!judged.allowed) {
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
  if (best === undefined) return { chosen: null, causes, byCause: false, steps: 0, refused };
  return { chosen: best.judged, causes, byCause: best.byCause, steps: best.steps, refused };
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
  if (demand === 'balance' || demand === 'speed' || demand === 'floor') return [demand];
  if (demand === 'impact') return ['speed'];
  if (demand === 'deep bend' || demand === 'reach') return ['range'];
  if (demand === 'spinal load' || demand === 'loaded bend' || demand === 'loaded twist' || demand === 'grip') {
    return ['load'];
  }
  return [];
}
