/** Why any row, walked or on a ladder, is other or gentler than the programme says: cautions it meets, breaks before it. */
import type { Day } from '../../model/day.js';
import type { Item } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { returnReasons } from '../breaks/break-findings.js';
import { returnOf } from '../breaks/returns.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { cautionReasons } from '../versions/caution-reasons.js';
import type { Judged } from '../versions/judge-version.js';

/** The easier way of its own in which alone an exercise is done, where one is. */
export const doneOnly = ({ exercise, way }: Judged): Pick<Item, 'done'> =>
  way === null ? {} : { done: { way: `${exercise.id}#${way.slug}`, say: way.say } };

/** `cares` are the versions it goes through that meet a caution. */
export const cautionsOf = ({ choice }: FittedRow, cares: readonly Judged[]): readonly Reason[] =>
  choice.chosen === null ? [] : cautionReasons(choice.own, choice.chosen, cares);

/** `day` is the session's. */
export function returnsOf(
  context: BlockContext,
  { choice, target }: FittedRow,
  day: Day | undefined,
): readonly Reason[] {
  return returnReasons(
    day === undefined ? null : returnOf(context, day),
    (choice.chosen?.exercise ?? target).facts.way,
  );
}
