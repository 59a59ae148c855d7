/** What the plan tells its client of the whole block, of a session, or of one row in it. */
import type { WeekText } from '../model/booklet.js';
import type { Finding } from '../model/plan.js';
import { sayReason } from '../words/say-reason.js';
import type { Subject } from './subject.js';

/** Those of exactly this place: of no session for the block, of no row for the session. A sentence for each week. */
export function findingsFor(
  { plan, speech, names }: Subject,
  { session, row }: Pick<Finding, 'session' | 'row'>,
): readonly WeekText[] {
  const said = plan.findings
    .filter((finding) => finding.audience === 'client' && finding.session === session && finding.row === row)
    .flatMap(({ reason, weeks }) => {
      const text = sayReason(reason, 'client', speech, names);
      return text === '' ? [] : (session === undefined ? [0] : weeks).map((week) => ({ week, text }));
    });
  return [...new Map(said.map((one) => [`${one.week} ${one.text}`, one])).values()];
}
