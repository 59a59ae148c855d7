/** Pain that the coach saw: it is read with the pain that a client marked, by the same bands, and cleared the same way. */
import type { Day } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { PainReport } from '../../../model/log.js';
import { SEEN_PAIN } from '../../rules/seen-pain.js';
import type { Remembering } from '../recall.js';

export interface PainSeen {
  readonly exercise: Exercise;
  readonly report: PainReport;
  readonly day: Day;
}

/** Up to today, in the order of the page. Said of no exercise, it is of every one in the library that asks that part. */
export function painsSeen({ client, exercises, rules, today }: Remembering): readonly PainSeen[] {
  if (rules.valueOf(SEEN_PAIN) === 0) return [];
  return client.observations.flatMap(({ date, exercise: written, side, means }): readonly PainSeen[] => {
    if (means.kind !== 'pain' || date > today) return [];
    const { where, degree } = means;
    const report = { where, degree, ...(side === 'both' ? {} : { side }) };
    const named = written === undefined ? undefined : exercises.get(written);
    const asking = [...new Set(exercises.values())].filter(({ facts }) => facts.asks.some(({ of }) => of === where));
    const all = written === undefined ? asking : named === undefined ? [] : [named];
    return all.map((exercise) => ({ exercise, report, day: date }));
  });
}
