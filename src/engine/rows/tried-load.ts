/** The load or version that trials done have opened, of those still above where the row begins. */
import type { StrandInput, TriedInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import type { Beginning } from './beginning.js';
import type { WalkFitted } from './fit-rows.js';
import { endedIn, recallOf } from './from-marks.js';

/**
 * The nearest. `before` is what marks older than those at hand had opened. None where the row begins lighter, fell short
 * or comes back from days away: what was done then says nothing of now.
 */
export function triedLoad(
  context: BlockContext,
  fitted: WalkFitted,
  { start, versions, trust }: Beginning,
  before: StrandInput['tried'],
): TriedInput | null {
  if (start === null || trust.kind !== 'whole') return null;
  const { judged, base } = fitted.chain;
  const lighter = [start.version, base].some((version) => recallOf(context, judged[version]).lighter > 0);
  if (lighter || endedIn(context, fitted)?.last.short === true) return null;
  for (let index = start.version; index < versions.length; index += 1) {
    const version = versions[index];
    if (version === undefined) continue;
    const { exercise, loads } = version;
    const { trials } = recallOf(context, judged[index]);
    const found = loads.flatMap(({ grams }): readonly TriedInput[] => {
      if (index === start.version && grams <= start.load) return [];
      const trial = trials.find((one) => one.grams === grams);
      if (trial?.opened === true) return [{ exercise, grams, reps: trial.reps, weeks: trial.weeks }];
      const kept = before?.exercise === exercise && before.grams === grams && trial?.failed !== true;
      return kept && before !== undefined ? [before] : [];
    });
    if (found[0] !== undefined) return found[0];
  }
  return null;
}
