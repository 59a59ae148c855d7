/** Where what an exercise asks meets what a client must avoid or take care with. */
import type { Caution } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import { type Ask, type Exercise, liftsFromTheFloor } from '../../model/exercise.js';
import type { Side } from '../../model/identity.js';

export interface Meeting {
  readonly caution: Caution;
  readonly ask: Ask;
  /** The body's side whose sets meet it; `both` where every set does. */
  readonly onSets: Side | 'both';
  /** Whether the version is refused, or kept without counting on any gain. */
  readonly outcome: 'refused' | 'no gain';
}

/** Holds on some day of the block. One that begins or ends inside the block counts for all of it. */
export const holdsInBlock = (caution: Caution, firstDay: Day, lastDay: Day): boolean =>
  caution.from <= lastDay && (caution.until === undefined || caution.until >= firstDay);

/**
 * Every meeting of these cautions with this exercise.
 *
 * *What*: the caution and the ask name the same joint or quality. A room that must be high enough for the arms asks
 * `overhead` even where the author did not say so; a load that begins on the floor asks `lifting from the floor`.
 *
 * *Phase*: an ask or a caution without phases holds throughout. A caution with phases is narrower only where the
 * exercise itself names one of them, in its asks or its cues; a phase the exercise does not know meets everything,
 * since a caution is never dropped for want of a word.
 *
 * *Side*: straight sets train both sides of the body, so a caution on one side is met by every exercise that asks it
 * of either; on one-sided work `onSets` says in which sets.
 *
 * *Degree*: `avoid` refuses whatever asks it. `take care` refuses what asks `much` of it; what asks `some` stays,
 * and no gain is counted on in the rows that do it.
 */
export function meetCautions(exercise: Exercise, cautions: readonly Caution[]): readonly Meeting[] {
  const bare = keepsHandsEmpty(exercise, cautions);
  const asks = allAsks(exercise).filter(({ of }) => !bare || of !== LIFTING);
  return cautions.flatMap((caution) =>
    asks.flatMap((ask): readonly Meeting[] => {
      if (ask.of !== caution.what || !samePhase(ask, caution, () => phasesOf(exercise, asks))) return [];
      const outcome = caution.degree === 'avoid' || ask.degree === 'much' ? 'refused' : 'no gain';
      return [{ caution, ask, onSets: setsMet(exercise, ask, caution), outcome }];
    }),
  );
}

const LIFTING = 'lifting from the floor';

/** To be avoided: then what may be done with nothing in the hands is done so, and nothing is lifted. */
export const keepsHandsEmpty = (exercise: Exercise, cautions: readonly Caution[]): boolean =>
  exercise.facts.kit.unloaded &&
  liftsFromTheFloor(exercise) &&
  cautions.some(({ what, degree }) => what === LIFTING && degree === 'avoid');

function allAsks(exercise: Exercise): readonly Ask[] {
  const { asks, room } = exercise.facts;
  const asked = (of: Ask['of']): boolean => asks.some((ask) => ask.of === of);
  const whole = (of: Ask['of'], degree: Ask['degree']): Ask => ({ of, degree, side: 'both', phases: [] });
  const high = room.ceiling !== 'any' && !asked('overhead');
  return [
    ...asks,
    ...(high ? [whole('overhead', room.ceiling === 'load overhead' ? 'much' : 'some')] : []),
    ...(liftsFromTheFloor(exercise) && !asked(LIFTING) ? [whole(LIFTING, 'some')] : []),
  ];
}

function phasesOf(exercise: Exercise, asks: readonly Ask[]): ReadonlySet<string> {
  const named = [...asks.flatMap((ask) => ask.phases), ...exercise.words.cues.map((cue) => cue.phase)];
  return new Set(named.map((phase) => phase.toLowerCase()).filter((phase) => phase !== ''));
}

function samePhase(ask: Ask, caution: Caution, phases: () => ReadonlySet<string>): boolean {
  if (ask.phases.length === 0 || caution.phases.length === 0) return true;
  const meant = caution.phases.map((phase) => phase.toLowerCase());
  const known = phases();
  if (meant.some((phase) => !known.has(phase))) return true;
  return ask.phases.some((phase) => meant.includes(phase.toLowerCase()));
}

function setsMet(exercise: Exercise, ask: Ask, caution: Caution): Side | 'both' {
  if (exercise.facts.sides !== 'each' || ask.side === 'both' || caution.side === 'both') return 'both';
  const other: Side = caution.side === 'left' ? 'right' : 'left';
  return ask.side === 'working' ? caution.side : other;
}
