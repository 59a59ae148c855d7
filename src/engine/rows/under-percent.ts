/** A row asked for as a part of one maximum: the loads that stay under it. The reps are the walk's. */
import type { StrandInput } from '../../model/strand.js';
import { isCounted, resistedLoad } from '../capacity.js';
import { ALL } from '../plan-strand.js';
import { layGround } from '../walk/ground.js';

export interface Share {
  readonly percent: number;
  /** Capacity over this is one rep with nothing left: 310. */
  readonly maximum: number;
}

/**
 * Every version with the loads whose R is at most `⌊percent × K / (100 × maximum)⌋`, K as it is before the block, so
 * that nothing gained in it raises the bound. Where nothing is known to start from, the strand as it is.
 */
export function underPercent(strand: StrandInput, { percent, maximum }: Share): StrandInput {
  const ground = layGround(strand, ALL);
  const capacities = ground?.weeks.get(strand.weeks[0]?.week ?? 1)?.capacities;
  if (capacities === undefined) return strand;
  const versions = strand.versions.map((version, index) => {
    const most = Math.floor((percent * (capacities[index] ?? 0)) / (100 * maximum));
    const loads = version.loads.filter((load) => resistedLoad(version, load, strand.bodyMass) <= most);
    return isCounted(version, strand.bodyMass) ? { ...version, loads } : version;
  });
  return { ...strand, versions };
}
