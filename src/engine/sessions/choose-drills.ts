/** Which exercises warm a session up or cool it down: bare hands, a chair, a wall or a mat, and allowed for this client. */
import type { Exercise, Pattern, Way } from '../../model/exercise.js';
import { compareIds } from '../../model/identity.js';
import type { ThingKind } from '../../model/kit.js';
import type { EasierItem } from '../../model/plan.js';
import type { SessionTemplate } from '../../model/programme.js';
import type { BlockContext } from '../block-context.js';
import type { FittedRow, Versions } from '../rows/fit-rows.js';
import type { Judged } from '../versions/judge-version.js';
import { asksFloor } from './order-rows.js';

/** What is in every room, or as good as. */
const AT_HAND: readonly ThingKind[] = ['chair', 'wall', 'mat'];
/** What an exercise that no page says rehearses anything may be, to be its pattern's own rehearsal. */
const PLAIN_WAYS: readonly Way[] = ['strength', 'bodyweight', 'mobility', 'hold'];
const NEVER: readonly Way[] = ['swing', 'carry'];

export type DrillKind = 'warm-up' | 'cool-down';

/** The row its sets are kept under: a name that no row of the session bears. */
export const rowOfDrill = (kind: DrillKind, exercise: Exercise): string => `${kind}-${exercise.id}`;

/** Everything in the library that may stand in a warm-up or cool-down of this client, by id. */
export function listDrills(context: BlockContext, versions: Versions): readonly Judged[] {
  return [...new Set(context.exercises.values())]
    .filter(({ facts }) => facts.kit.load.length === 0 || facts.kit.unloaded)
    .filter(({ facts }) => !NEVER.includes(facts.way) && facts.asks.every((ask) => ask.of !== 'speed'))
    .map(versions.judge)
    .filter((judged) => judged.allowed && judged.loads.some(({ pieces }) => pieces.length === 0))
    .filter((judged) => easierDrills(judged, versions).length > 0)
    .sort((a, b) => compareIds(a.exercise.id, b.exercise.id));
}

/** Those with the things this session has at hand, and no row of it by the same name. */
export function openDrills(
  drills: readonly Judged[],
  kind: DrillKind,
  session: SessionTemplate,
  rows: readonly FittedRow[],
): readonly Judged[] {
  const used = rows.flatMap(({ chain }) => chain.judged.flatMap(({ exercise }) => exercise.facts.kit.things));
  const taken = new Set<string>(session.blocks.flatMap((block) => block.rows.map(({ id }) => id)));
  return drills.filter(
    ({ exercise }) =>
      exercise.facts.kit.things.every((thing) => AT_HAND.includes(thing) || used.includes(thing)) &&
      !taken.has(rowOfDrill(kind, exercise)),
  );
}

/** An easier exercise or way that takes the same dose. */
export type EasierDrill = Pick<EasierItem, 'exercise' | 'way' | 'say' | 'for'>;

/** Easier exercises and ways to which the same dose may be given: with bare hands too. */
export function easierDrills({ exercise }: Judged, { judge, linksOf }: Versions): readonly EasierDrill[] {
  const { easier, easierWays } = linksOf(exercise);
  const bare = easier.filter((link) => {
    const to = judge(link.to);
    return (
      to.allowed &&
      to.loads.some(({ pieces }) => pieces.length === 0) &&
      to.exercise.facts.sides === exercise.facts.sides
    );
  });
  return [
    ...bare.map(({ to, say, causes }) => ({ exercise: to.id, way: to.facts.way, say, for: causes })),
    ...easierWays.map(({ slug, say, causes }) => {
      return { exercise: `${exercise.id}#${slug}`, way: exercise.facts.way, say, for: causes };
    }),
  ];
}

export const patternOf = ({ chain, target }: FittedRow): Pattern =>
  chain.judged[chain.base]?.exercise.facts.pattern ?? target.facts.pattern;

/**
 * For each of today's patterns in the order it comes, unless one chosen already rehearses it: of the exercises that
 * rehearse it, the one that rehearses most of today's patterns; else the easiest plain exercise of the pattern itself.
 * Ties go by id. Those on the floor come last; `standing` leaves them out.
 */
export function chooseWarmUp(
  all: readonly Judged[],
  session: SessionTemplate,
  rows: readonly FittedRow[],
  versions: Versions,
  standing: boolean,
): readonly Judged[] {
  const drills = standing ? all.filter(({ exercise }) => !goesDown(exercise)) : all;
  const patterns = [...new Set(rows.map(patternOf))];
  const open = openDrills(drills, 'warm-up', session, rows);
  const count = ({ exercise }: Judged): number =>
    patterns.filter((one) => exercise.facts.rehearses.includes(one)).length;
  const chosen: Judged[] = [];
  for (const pattern of patterns) {
    if (chosen.some(({ exercise }) => exercise.facts.rehearses.includes(pattern))) continue;
    const left = open.filter((judged) => !chosen.includes(judged));
    const [best] = left
      .filter(({ exercise }) => exercise.facts.rehearses.includes(pattern))
      .sort((a, b) => count(b) - count(a));
    const found = best ?? easiestOf(pattern, left, versions);
    if (found !== undefined) chosen.push(found);
  }
  return floorLast(chosen, ({ exercise }) => exercise);
}

export const goesDown = (exercise: Exercise): boolean =>
  asksFloor(exercise) || exercise.facts.asks.some(({ of }) => of === 'head down');

/** Marching and the like, in place of a pattern that nothing else rehearses. */
const isEasyConditioning = ({ exercise: { facts } }: Judged): boolean =>
  facts.way === 'conditioning' && facts.asks.every(({ of }) => of !== 'impact');

/** The first of a pattern to which no other of them is an easier version; what only raises the breath last. */
function easiestOf(pattern: Pattern, open: readonly Judged[], { linksOf }: Versions): Judged | undefined {
  const own = open.filter(({ exercise: { facts } }) => facts.pattern === pattern);
  const counted = own.filter(({ exercise: { facts } }) => PLAIN_WAYS.includes(facts.way));
  const plain = counted.length > 0 ? counted : own.filter(isEasyConditioning);
  const easier = ({ exercise }: Judged): boolean =>
    linksOf(exercise).easier.some(({ to }) => plain.some((other) => other.exercise === to));
  return plain.find((judged) => !easier(judged)) ?? plain[0];
}

/** What may cool down: first what is of today's patterns or rehearses them, then by id. */
export function chooseCoolDown(
  drills: readonly Judged[],
  session: SessionTemplate,
  rows: readonly FittedRow[],
): readonly Judged[] {
  const patterns = rows.map(patternOf);
  const near = ({ exercise: { facts } }: Judged): number =>
    Number([facts.pattern, ...facts.rehearses].some((pattern) => patterns.includes(pattern)));
  return openDrills(drills, 'cool-down', session, rows)
    .filter(({ exercise }) => exercise.facts.cools)
    .sort((a, b) => near(b) - near(a));
}

export const floorLast = <Drill>(drills: readonly Drill[], exerciseOf: (of: Drill) => Exercise): readonly Drill[] => [
  ...drills.filter((drill) => !asksFloor(exerciseOf(drill))),
  ...drills.filter((drill) => asksFloor(exerciseOf(drill))),
];
