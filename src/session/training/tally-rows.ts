/** Sets as rows of a tally: one for each side, in the order done. */
import type { TallyRow, TallyState } from '../../model/training.js';
import type { SteppedSet } from '../step-session.js';

export function tallyRows(sets: readonly SteppedSet[], stateOf: (set: SteppedSet) => TallyState): readonly TallyRow[] {
  const sides = [...new Set(sets.map(({ set }) => set.side))];
  return sides.map((side): TallyRow => {
    const marks = sets.filter(({ set }) => set.side === side).map((one) => ({ key: one.key, state: stateOf(one) }));
    return side === undefined ? { marks } : { side, marks };
  });
}
