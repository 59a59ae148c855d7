/** Up to which day anything was asked of the client: nobody is silent, or away, from what was not planned. */
import type { Break } from '../../model/client.js';
import { addDays, type Day, day, dayOfIso } from '../../model/day.js';
import { markedGaps } from '../history/marks/gaps.js';
import { DONE_GAP } from '../rules/done-gap.js';
import { type BlockDays, dayIn, daysOf, type Reviewing } from './reviewing.js';

export interface Asking extends Reviewing {
  /** The day the latest edition was withdrawn: from it on nothing is asked. */
  readonly withdrawn?: Day;
}

/** The last day of a block on which anything was asked. */
export function lastAskedOf({ history, withdrawn }: Asking, { planned, last }: BlockDays): Day {
  const { stops } = planned.plan;
  const stop = stops === undefined ? last : dayIn(stops.after, last);
  const gone = withdrawn !== undefined && history.blocks.at(-1)?.block === planned.block;
  return day(Math.min(last, stop, gone ? addDays(withdrawn, -1) : last));
}

/** Days of planned sessions that still were asked for, in order, of whatever block. */
export const plannedDays = (asking: Asking): readonly Day[] =>
  asking.history.blocks
    .flatMap((planned) => {
      const block = daysOf(planned);
      const last = block === null ? null : lastAskedOf(asking, block);
      return planned.queue
        .flatMap(({ session }) => dayOfIso(session.date) ?? [])
        .filter((one) => last === null || one <= last);
    })
    .sort((a, b) => a - b);

/** A day, or the last one before it on which the block under way then asked anything. */
export function askedUpTo(asking: Asking, until: Day): Day {
  const block = asking.history.blocks
    .flatMap((planned) => daysOf(planned) ?? [])
    .findLast(({ first }) => first <= until);
  return block === undefined ? until : day(Math.min(until, lastAskedOf(asking, block)));
}

/** Gaps that the planner takes for breaks of its own accord, as far as anything was asked in them. */
export function askedGaps(asking: Asking): readonly Break[] {
  const planned = plannedDays(asking);
  return markedGaps(asking).flatMap((gap): readonly Break[] => {
    const until = askedUpTo(asking, gap.until);
    const long = until - gap.from + 1 >= asking.rules.valueOf(DONE_GAP);
    return long && planned.some((one) => one >= gap.from && one <= until) ? [{ ...gap, until }] : [];
  });
}
