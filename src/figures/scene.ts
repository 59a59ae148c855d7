/** What stands about the figure: how high each thing is to be stood or lain on, and where it stands. */
import type { Pose, PoseKit, Surface } from '../model/pose.js';

type Standing = Extract<PoseKit, { kind: 'wall' | 'chair' | 'bench' | 'box' | 'step' | 'blocks' | 'mat' }>;

/** Centimetres: a kitchen chair's seat and so on; common practice, no source. */
const HEIGHTS: Readonly<Record<Standing['kind'], number>> = {
  wall: 210,
  chair: 45,
  bench: 42,
  box: 45,
  step: 20,
  blocks: 8,
  mat: 0,
};

const WALL_AHEAD = 50;

export interface Stood {
  readonly kind: Standing['kind'];
  /** Of its upper side. */
  readonly high: number;
  /** Its middle (a wall's face), from where the feet first stand; unsaid, it stands under what bears on it. */
  readonly ahead?: number;
  readonly turned: boolean;
}

export const stoodIn = (pose: Pose): readonly Stood[] =>
  pose.kit.flatMap((item): readonly Stood[] => (isStanding(item) ? [stoodOf(item)] : []));

const isStanding = (item: PoseKit): item is Standing =>
  item.kind !== 'bell' && item.kind !== 'dumbbell' && item.kind !== 'bar' && item.kind !== 'band';

function stoodOf(item: Standing): Stood {
  const ahead = item.ahead ?? (item.kind === 'wall' ? WALL_AHEAD : undefined);
  return {
    kind: item.kind,
    high: item.high ?? HEIGHTS[item.kind],
    turned: item.turned === true,
    ...(ahead === undefined ? {} : { ahead }),
  };
}

/** Height of a surface; the wall is no floor. */
export function heightOf(pose: Pose, surface: Surface): number {
  if (surface === 'floor' || surface === 'wall') return 0;
  return stoodIn(pose).find(({ kind }) => kind === surface)?.high ?? HEIGHTS[surface];
}

/** Where something stands, ahead of where the feet first stand. */
export const aheadOf = (pose: Pose, surface: Surface): number | undefined =>
  surface === 'floor'
    ? undefined
    : (stoodIn(pose).find(({ kind }) => kind === surface)?.ahead ?? (surface === 'wall' ? WALL_AHEAD : undefined));
