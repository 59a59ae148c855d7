/** Whether the room is high and wide enough; what is not stated counts as not there. */
import type { Exercise } from '../../model/exercise.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { BlockContext } from '../block-context.js';
import { CEILING_ARMS } from '../rules/ceiling-arms.js';
import { CEILING_LOAD } from '../rules/ceiling-load.js';

export type Refuse = (cause: Refusal['cause'], detail: string) => Refusal;

export function roomRefusals(exercise: Exercise, context: BlockContext, refuse: Refuse): readonly Refusal[] {
  const { ceiling, floorMillimetres: floor } = exercise.facts.room;
  const room = context.client.room;
  const refusals: Refusal[] = [];
  if (ceiling !== 'any') {
    const needed = context.rules.valueOf(ceiling === 'load overhead' ? CEILING_LOAD : CEILING_ARMS);
    if (room.ceilingMillimetres === undefined) refusals.push(refuse('ceiling-unknown', String(needed)));
    else if (room.ceilingMillimetres < needed) refusals.push(refuse('ceiling-low', String(needed)));
  }
  if (floor !== undefined) {
    const detail = `${floor.long} × ${floor.wide}`;
    const clear = room.floorMillimetres;
    if (clear === undefined) refusals.push(refuse('floor-unknown', detail));
    else if (!fits(floor, clear)) refusals.push(refuse('floor-small', detail));
  }
  return refusals;
}

interface Floor {
  readonly long: number;
  readonly wide: number;
}

const fits = (needed: Floor, clear: Floor): boolean =>
  Math.max(needed.long, needed.wide) <= Math.max(clear.long, clear.wide) &&
  Math.min(needed.long, needed.wide) <= Math.min(clear.long, clear.wide);
