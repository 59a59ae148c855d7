/** Mobility for the side that was seen to reach less, in the warm-up of the sessions that train it. */
import type { Pattern } from '../../../model/exercise.js';
import type { Side } from '../../../model/identity.js';
import type { Reason } from '../../../model/reason.js';
import type { BlockContext } from '../../block-context.js';
import { reasonOf } from '../../reason-of.js';
import type { FittedRow } from '../../rows/fit-rows.js';
import { SEEN_SHORTER_SIDE } from '../../rules/seen-shorter-side.js';
import type { Judged } from '../../versions/judge-version.js';
import { standingSeen } from './standing-seen.js';

export interface SideDrill {
  readonly judged: Judged;
  readonly side: Side;
  readonly reasons: readonly Reason[];
}

/**
 * For each row whose exercise was seen to be shorter on one side: the first of `open` that is mobility, is done on each
 * side and rehearses the row's pattern. None where there is none, and each at most once.
 *
 * @param open what may stand in this session's warm-up, those that do last
 */
export function drillsOfSide(
  context: BlockContext,
  rows: readonly FittedRow[],
  open: readonly Judged[],
  patternOf: (row: FittedRow) => Pattern,
): readonly SideDrill[] {
  const most = context.rules.valueOf(SEEN_SHORTER_SIDE);
  const seen = standingSeen(context);
  const found: SideDrill[] = [];
  for (const row of rows) {
    const exercise = row.chain.judged[row.chain.base]?.exercise;
    if (exercise === undefined) continue;
    const pattern = patternOf(row);
    for (const { phrase, observation } of seen.get(exercise.id)?.phrases ?? []) {
      const { side } = observation;
      if (phrase !== 'shorter on one side' || side === 'both') continue;
      const fitting = open.filter(
        ({ exercise: { facts } }) =>
          facts.way === 'mobility' && facts.sides === 'each' && facts.rehearses.includes(pattern),
      );
      for (const judged of fitting.slice(0, most)) {
        if (found.some((other) => other.judged === judged)) continue;
        const inputs = [
          { name: 'drill for', value: exercise.name, unit: '' },
          { name: 'side', value: side, unit: '' },
        ];
        const reasons = (['client', 'coach'] as const).map((audience) => {
          return reasonOf(SEEN_SHORTER_SIDE, audience, inputs, 'measured');
        });
        found.push({ judged, side, reasons });
      }
    }
  }
  return found;
}
