/** The versions one strand may move between, easiest first. Moving between them is the walk's. */
import type { Sides } from '../../model/exercise.js';
import type { Grams } from '../../model/quantity.js';
import type { VersionInput } from '../../model/strand.js';
import { isCounted } from '../capacity.js';
import { isWalked } from '../rows/planned-by.js';
import type { Judge, Judged } from './judge-version.js';
import type { Link, LinksOf } from './linked-versions.js';

export interface Chain {
  /** Easiest first, as the walk reads them. */
  readonly versions: readonly VersionInput[];
  /** The same versions as judged. */
  readonly judged: readonly Judged[];
  /** Index of the version the row begins with. */
  readonly base: number;
}

/** Further than this no block goes in either direction. */
const MOST_EACH_WAY = 3;

/**
 * From the base down and up, one link at a time: allowed, of the same movement pattern, trained on the same sides,
 * and with a way to carry capacity over: both resist a known load with known shares of the body, or the link states
 * a ratio. Up, never to a version that meets a caution: nobody is led into what wants care; from an easier
 * way of the base, nowhere. Of several links: one that is for `load`, then the authors' order.
 */
export function chainVersions(base: Judged, bodyMass: Grams | null, judge: Judge, linksOf: LinksOf): Chain {
  const taken = new Set<string>([base.exercise.id]);
  const grow = (direction: 'easier' | 'harder'): readonly Step[] => {
    const steps: Step[] = [];
    let at = base;
    while (steps.length < MOST_EACH_WAY) {
      const links = linksOf(at.exercise)[direction].filter((link) => !taken.has(link.to.id));
      const open = links.filter((link) => {
        return leadsOn(at, link, judge, bodyMass) && (direction === 'easier' || judge(link.to).care.length === 0);
      });
      const link = open.find(({ causes }) => causes.includes('load')) ?? open[0];
      if (link === undefined) break;
      taken.add(link.to.id);
      const back = linksOf(link.to)[direction === 'easier' ? 'harder' : 'easier'];
      const returning = back.find(({ to }) => to.id === at.exercise.id)?.ratio ?? null;
      at = judge(link.to);
      steps.push({ judged: at, there: link.ratio, back: returning });
    }
    return steps;
  };
  const down = grow('easier');
  const up = base.way === null ? grow('harder') : [];
  const judged = [...down.map((step) => step.judged).reverse(), base, ...up.map((step) => step.judged)];
  const at = down.length;
  const versions = judged.map((version, index): VersionInput => {
    const below = at - index;
    const above = index - at;
    const toHarder = index >= at ? (up[above]?.there ?? null) : (down[below - 1]?.back ?? null);
    const toEasier = index <= at ? (down[below]?.there ?? null) : (up[above - 1]?.back ?? null);
    return { ...versionOf(version), toHarder, toEasier };
  });
  return { versions, judged, base: at };
}

interface Step {
  readonly judged: Judged;
  readonly there: number | null;
  readonly back: number | null;
}

/** One version as the walk reads it, without its neighbours. */
export function versionOf(judged: Judged): VersionInput {
  const { facts, id } = judged.exercise;
  const share = facts.bodyShare?.share ?? null;
  return {
    exercise: id,
    mode: facts.holds,
    share,
    toHarder: null,
    toEasier: null,
    loads: resistingLoads(judged, share),
    signedOffTo: judged.signedOffTo,
  };
}

/**
 * With nothing of the body lifted, empty hands are no load where there is another. Where part of it is, they are one even
 * if nobody knows what the body weighs: nothing is hung on who was never seen with it.
 */
function resistingLoads(judged: Judged, share: number | null): Judged['loads'] {
  if (judged.loads.length < 2 || (share ?? 0) > 0) return judged.loads;
  return judged.loads.filter((load) => load.grams > 0);
}

function leadsOn(from: Judged, link: Link, judge: Judge, bodyMass: Grams | null): boolean {
  const to = judge(link.to);
  const { pattern, sides } = from.exercise.facts;
  if (!to.allowed || to.exercise.facts.pattern !== pattern) return false;
  return (
    isWalked(from.exercise.facts) === isWalked(to.exercise.facts) &&
    sameSides(to.exercise.facts.sides, sides) &&
    carries(from, to, link, bodyMass)
  );
}

const sameSides = (a: Sides, b: Sides): boolean => a === b;

/**
 * Whether capacity passes along this link: by known shares, or by the link's ratio. Never to or from a combination: what
 * is known of it is its weakest part's.
 */
export function carries(from: Judged, to: Judged, link: Link, bodyMass: Grams | null): boolean {
  if (from.exercise.facts.parts.length + to.exercise.facts.parts.length > 0) return false;
  const [a, b] = [versionOf(from), versionOf(to)];
  const [x, y] = [isCounted(a, bodyMass), isCounted(b, bodyMass)];
  if (x !== y) return false;
  return link.ratio !== null || (x && a.share !== null && b.share !== null && sameSides(sidesOf(from), sidesOf(to)));
}

const sidesOf = (judged: Judged): Sides => judged.exercise.facts.sides;
