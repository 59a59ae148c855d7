/** What stands beside one version for this client, whatever the week: what is easier and what is harder than it. */
import type { EasierItem } from '../../model/plan.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { VersionInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { isCounted } from '../capacity.js';
import { carries, versionOf } from './chain-versions.js';
import { waysBeside } from './choose-version.js';
import type { Judge, Judged } from './judge-version.js';
import type { EasierWay, Link, LinksOf } from './linked-versions.js';

/** An easier exercise that this client may do. */
export interface EasierVersion {
  readonly link: Link;
  readonly to: Judged;
  readonly version: VersionInput;
  readonly counted: boolean;
  /** Whether capacity passes to it. */
  readonly carried: boolean;
}

export interface Beside {
  /** Easier ways of its own, in the order a coach makes it easier. */
  readonly ways: readonly EasierWay[];
  /** In the order of their links. */
  readonly easier: readonly EasierVersion[];
  /** Why other easier exercises may not be done. */
  readonly refused: readonly Refusal[];
  /** Harder versions this client may do, for the coach to see what lies ahead: no sets are claimed. */
  readonly harder: readonly EasierItem[];
}

export type BesideOf = (judged: Judged) => Beside;

/** Lists it once for each version. */
export function besideFor(context: BlockContext, judge: Judge, linksOf: LinksOf): BesideOf {
  const known = new Map<Judged, Beside>();
  return (judged) => {
    const before = known.get(judged);
    if (before !== undefined) return before;
    const beside = listBeside(context, judged, judge, linksOf);
    known.set(judged, beside);
    return beside;
  };
}

function listBeside({ client }: BlockContext, judged: Judged, judge: Judge, linksOf: LinksOf): Beside {
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  const links = linksOf(judged.exercise);
  return {
    ways: waysBeside(judged, links.easierWays),
    easier: links.easier.flatMap((link): readonly EasierVersion[] => {
      const to = judge(link.to);
      if (!to.allowed) return [];
      const version = versionOf(to);
      const carried = carries(judged, to, link, bodyMass);
      return [{ link, to, version, counted: isCounted(version, bodyMass), carried }];
    }),
    refused: links.easier.flatMap((link) => judge(link.to).refusals),
    harder: links.harder
      .filter((link) => judge(link.to).allowed && judge(link.to).care.length === 0)
      .map((link) => ({ exercise: link.to.id, way: link.to.facts.way, say: link.say, for: link.causes, sets: [] })),
  };
}
